package cyclepacket;

import cyclepacket.course.Course;
import cyclepacket.finding.FindingText;
import cyclepacket.intake.Intake;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A copy of the demo's files under {@code target}, with a few words changed or a plan of its own, read as the program does. */
public final class LaidOut {
    private static final Path DEMO = Path.of("plans");
    private static final Path TARGET = TestPlace.of("laid-out");

    private final Path folder;
    private final String plan;

    private LaidOut(Path folder, String plan) {
        this.folder = folder;
        this.plan = plan;
    }

    /** A plan of the demo. */
    public static LaidOut demo(String plan) throws IOException {
        return new LaidOut(copied(plan), plan);
    }

    /**
     * A small plan for one of the demo's protocols, with enough of everything at home.
     *
     * @param anchors as the file writes them
     */
    public static LaidOut plan(String protocol, String anchors) throws IOException {
        return plan(protocol, anchors, "");
    }

    /** @param more further lines of the plan file, such as calls, or its own dose lines */
    public static LaidOut plan(String protocol, String anchors, String more) throws IOException {
        String plan = "X-" + protocol;
        Path folder = copied(plan + Math.abs((anchors + more).hashCode()));
        TreeSet<String> medicines = new TreeSet<>();
        TreeMap<String, String> doses = new TreeMap<>();
        for (String line : Files.readAllLines(folder.resolve("protocols/" + protocol + ".yaml"))) {
            if (line.contains("{medicine: ")) {
                String id = line.replaceAll(".*\\{medicine: ([a-z0-9-]+),.*", "$1");
                medicines.add(id);
                if (!line.contains("amount:")) {
                    doses.put(id, dose(id));
                }
            }
        }
        StringBuilder text = new StringBuilder();
        text.append("plan: ").append(plan).append("\nissue: 1\n");
        text.append("patient: {name: Nobody Invented, born: 1990-01-02, number: \"7\", zone: America/New_York}\n");
        text.append("language: en\npaper: letter\ntext-size: standard\navoid: []\n");
        text.append("order: {by: a prescriber (invented), reference: ORD-1, date: 2027-02-20}\n");
        text.append("protocol: ")
                .append(protocol)
                .append("\nanchors: ")
                .append(anchors)
                .append('\n');
        text.append("times: {morning: \"08:00\", evening: \"20:00\"}\n");
        if (more.contains("doses:")) {
            doses.clear();
        } else {
            text.append("doses:").append(doses.isEmpty() ? " {}\n" : "\n");
        }
        doses.forEach((id, amount) -> text.append("  ")
                .append(id)
                .append(": [{from: ")
                .append(first(folder, protocol, id))
                .append(", amount: ")
                .append(amount)
                .append(", order: ORD-1}]\n"));
        text.append(more);
        text.append("prepared: {by: a nurse (invented), on: 2027-02-21}\n");
        Files.writeString(folder.resolve("patients/" + plan + ".yaml"), text);
        return new LaidOut(folder, plan);
    }

    private static String dose(String medicine) {
        return switch (medicine) {
            case "leuprolide-vial" -> "0.5";
            case "fsh-pen-mcg" -> "11.5";
            case "estradiol-tablet" -> "2";
            case "fsh-kept-vial" -> "225";
            default -> "150";
        };
    }

    private static String first(Path folder, String protocol, String medicine) {
        try (Stream<String> lines = Files.lines(folder.resolve("protocols/" + protocol + ".yaml"))) {
            return lines.filter(line -> line.contains("{medicine: " + medicine + ","))
                    .findFirst()
                    .orElseThrow()
                    .replaceAll(".*?, (from|on): ([A-Z0-9+-]+).*", "$2");
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static Path copied(String name) throws IOException {
        Path folder = TARGET.resolve(name);
        List<Path> files;
        try (Stream<Path> all = Files.walk(DEMO)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Path to = folder.resolve(DEMO.relativize(file).toString());
            Files.createDirectories(to.getParent());
            Files.write(to, Files.readAllBytes(file));
        }
        return folder;
    }

    /** The same with words of one file changed; words that are not there are a mistake of the test. */
    public LaidOut with(String file, String was, String is) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        if (!text.contains(was)) {
            throw new AssertionError(file + " does not say " + was);
        }
        Files.writeString(path, text.replace(was, is));
        return this;
    }

    /** The same with lines of what a later issue changed, told on 9 March 2027; each begins with {@code what:}. */
    public LaidOut revised(String... lines) throws IOException {
        StringBuilder revised = new StringBuilder("overrides: []\nrevised:");
        for (String line : lines) {
            revised.append("\n  - {issue: 2, ")
                    .append(line)
                    .append(
                            ", order: ORD-2, by: a nurse (invented), to: the patient, on: 2027-03-09, read-back: true}");
        }
        return with("patients/" + plan + ".yaml", "overrides: []", revised.toString());
    }

    public Path path() {
        return folder.resolve("patients/" + plan + ".yaml");
    }

    public PlanFiles files() throws IOException {
        Intake intake = PlanReader.read(path());
        return intake.files()
                .value()
                .orElseThrow(() ->
                        new AssertionError(FindingText.print(intake.files().findings())));
    }

    public Course course() throws IOException {
        return Course.of(files());
    }

    public CycleLedger ledger() throws IOException {
        PlanFiles files = files();
        return CycleLedger.of(files, Course.of(files));
    }
}
