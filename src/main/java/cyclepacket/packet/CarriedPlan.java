package cyclepacket.packet;

import cyclepacket.intake.SourceFile;
import cyclepacket.pdf.Attachment;
import cyclepacket.pdf.Carried;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files that a chart copy carries: those of its issue, and those of the issue it replaces where they differ. */
final class CarriedPlan implements AutoCloseable {
    private static final String OWN = "%s: the %s file this issue was computed from";
    private static final String REPLACED = "%s: the %s file of the issue that this one replaces";
    /** The place comes first and never leaves the folder. */
    private static final Pattern DESCRIPTION = Pattern.compile(
            "((?:(?:patients|protocols|medicines|syringes)/)?[^/\\\\]+\\.yaml): the [a-z]+ file (this|of) .*");

    private static final String TYPE = "application/yaml";
    private static final String BEFORE = "replaced-";

    private final Path folder;
    private final Path plan;
    private final Optional<Path> replaced;

    private CarriedPlan(Path folder, Path plan, Optional<Path> replaced) {
        this.folder = folder;
        this.plan = plan;
        this.replaced = replaced;
    }

    /** What a chart copy must carry so that the same bytes can be made from it alone. */
    static List<Attachment> attachments(List<SourceFile> own, List<SourceFile> replaced) {
        List<Attachment> attachments = new ArrayList<>();
        own.forEach(source -> add(attachments, "", OWN, source));
        for (SourceFile source : replaced) {
            boolean isSame = own.stream()
                    .anyMatch(other -> other.kind().equals(source.kind())
                            && name(other).equals(name(source))
                            && Arrays.equals(other.bytes(), source.bytes()));
            if (!isSame || source.kind().equals("plan")) {
                add(attachments, BEFORE, REPLACED, source);
            }
        }
        return attachments;
    }

    private static void add(List<Attachment> all, String prefix, String description, SourceFile source) {
        String name = prefix + name(source);
        boolean isTaken = all.stream().anyMatch(other -> other.name().equals(name));
        all.add(new Attachment(
                isTaken ? prefix + source.kind() + "-" + name(source) : name,
                TYPE,
                String.format(description, KeptPlan.place(source.kind(), name(source)), source.kind()),
                source.bytes()));
    }

    private static String name(SourceFile source) {
        return Path.of(source.shownPath()).getFileName().toString();
    }

    /** @throws Unclear when the PDF carries no plan */
    static CarriedPlan unpack(Path pdf) throws IOException {
        Map<String, byte[]> own = new LinkedHashMap<>();
        Map<String, byte[]> before = new LinkedHashMap<>();
        boolean hasReplaced = false;
        for (Attachment file : Carried.attachments(Files.readAllBytes(pdf))) {
            Matcher description = DESCRIPTION.matcher(file.description());
            if (description.matches()) {
                boolean isOwn = description.group(2).equals("this");
                (isOwn ? own : before).put(description.group(1), file.content());
                hasReplaced |= !isOwn;
            }
        }
        Path folder = Files.createTempDirectory("cyclepacket-");
        Optional<Path> plan = lay(folder.resolve("own"), own);
        if (plan.isEmpty()) {
            Durable.delete(folder);
            throw new Unclear(pdf + " carries no plan. Only the chart copy does: chart.pdf.");
        }
        return new CarriedPlan(folder, plan.get(), hasReplaced ? layReplaced(folder, own, before) : Optional.empty());
    }

    private static Optional<Path> layReplaced(Path folder, Map<String, byte[]> own, Map<String, byte[]> before)
            throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>(own);
        all.keySet().removeIf(place -> place.startsWith(KeptPlan.place("plan", "")));
        all.putAll(before);
        return lay(folder.resolve("replaced"), all);
    }

    private static Optional<Path> lay(Path folder, Map<String, byte[]> files) throws IOException {
        Optional<Path> plan = Optional.empty();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
            if (file.getKey().startsWith(KeptPlan.place("plan", ""))) {
                plan = Optional.of(path);
            }
        }
        return plan;
    }

    Path plan() {
        return plan;
    }

    Optional<Path> replaced() {
        return replaced;
    }

    @Override
    public void close() throws IOException {
        Durable.delete(folder);
    }
}
