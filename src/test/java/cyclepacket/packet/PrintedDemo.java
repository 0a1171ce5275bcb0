package cyclepacket.packet;

import cyclepacket.TestPlace;
import cyclepacket.finding.FindingText;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Packets of the demo as the program prints them, each printed once in a test run however many tests and processes ask for it. */
public final class PrintedDemo {
    public static final List<String> LANGUAGES = List.of("en", "es");
    public static final List<String> SIZES = List.of("standard", "large");
    public static final List<String> PAPERS = List.of("letter", "A4");

    private static final Path FOLDER = Path.of("target/printed-demo");
    private static final Map<String, Packet> PRINTED = new TreeMap<>();

    private PrintedDemo() {}

    /**
     * One printed packet.
     *
     * @param chart the clinic's own copy
     * @param beside its texts in two languages; empty in the source language
     * @param cards one evening a card, where the plan asks for them
     */
    public record Packet(
            String name, byte[] pdf, byte[] chart, Optional<byte[]> beside, Optional<byte[]> cards, String xhtml) {}

    /** The plans of the demo, in their order. */
    public static List<String> plans() throws IOException {
        return Files.readAllLines(Path.of("plans/examples.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(String::strip)
                .toList();
    }

    /** As its file says, in English. */
    public static Packet of(String plan) throws IOException {
        return of(plan, "en", "standard", "letter");
    }

    public static synchronized Packet of(String plan, String language, String size, String paper) throws IOException {
        return of(plan, language, size, paper, "");
    }

    /** With its evening cards, in standard size on letter paper. */
    public static synchronized Packet withCards(String plan, String language) throws IOException {
        return of(plan, language, "standard", "letter", "with: [evening-cards]\n");
    }

    private static Packet of(String plan, String language, String size, String paper, String with) throws IOException {
        String name = String.join(" ", plan, language, size, paper) + (with.isEmpty() ? "" : " cards");
        if (!PRINTED.containsKey(name)) {
            PRINTED.put(name, once(name, plan, language, size, paper, with));
        }
        return PRINTED.get(name);
    }

    /** Prints it, or reads what the other process of this run printed. */
    private static Packet once(String name, String plan, String language, String size, String paper, String with)
            throws IOException {
        String place = name.replace(' ', '-');
        Path printed = FOLDER.resolve(place + ".printed");
        Files.createDirectories(FOLDER);
        try (FileChannel channel = FileChannel.open(
                FOLDER.resolve(place + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            FileLock held = channel.lock();
            if (!Files.exists(printed) || !Files.readString(printed).startsWith(TestPlace.RUN + "\n")) {
                Path issue = print(name, plan, language, size, paper, with);
                Files.writeString(printed, TestPlace.RUN + "\n" + issue);
            }
            held.release();
        }
        Path issue = Path.of(Files.readAllLines(printed).get(1));
        return new Packet(
                name,
                Files.readAllBytes(issue.resolve("packet.pdf")),
                Files.readAllBytes(issue.resolve("chart.pdf")),
                ifThere(issue.resolve("beside.pdf")),
                ifThere(issue.resolve("cards.pdf")),
                Files.readString(issue.resolve("packet.xhtml"), StandardCharsets.UTF_8));
    }

    private static Path print(String name, String plan, String language, String size, String paper, String with)
            throws IOException {
        Path folder = FOLDER.resolve(name.replace(' ', '-'));
        WordedHome.delete(folder);
        WordedHome home = Home.COPY;
        Path file = home.plan(
                plan,
                "printed-demo",
                text -> (with.isEmpty() ? text : text.replaceAll("(?m)^with: .*\n", "") + with)
                        .replaceAll("(?m)^language: .*$", "language: " + language)
                        .replaceAll("(?m)^text-size: .*$", "text-size: " + size)
                        .replaceAll("(?m)^paper: .*$", "paper: " + paper));
        Outcome outcome = Home.PRESS.print(file, folder, true, Instant.EPOCH);
        return outcome.written()
                .orElseThrow(() -> new AssertionError(name + FindingText.print(outcome.findings())))
                .folder();
    }

    private static Optional<byte[]> ifThere(Path file) throws IOException {
        return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    }

    /** Opened by the first who asks; its threads end with the tests. */
    private static final class Home {
        private static final WordedHome COPY;
        private static final Press PRESS;

        static {
            try {
                Path home = TestPlace.of("printed-demo-home");
                WordedHome.delete(home);
                COPY = new WordedHome(home);
                PRESS = new Press(COPY.path());
            } catch (IOException broken) {
                throw new java.io.UncheckedIOException(broken);
            }
        }
    }
}
