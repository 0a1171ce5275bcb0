package cyclepacket.packet;

import cyclepacket.finding.FindingText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Packets of the demo as the program prints them, each printed once however many tests ask for it. */
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
     * @param beside its texts in two languages; empty in the source language
     */
    public record Packet(String name, byte[] pdf, Optional<byte[]> beside, String xhtml) {}

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
        String name = String.join(" ", plan, language, size, paper);
        if (!PRINTED.containsKey(name)) {
            PRINTED.put(name, print(name, plan, language, size, paper));
        }
        return PRINTED.get(name);
    }

    private static Packet print(String name, String plan, String language, String size, String paper)
            throws IOException {
        Path folder = FOLDER.resolve(name.replace(' ', '-'));
        WordedHome.delete(folder);
        WordedHome home = Home.COPY;
        Path file = home.plan(
                plan,
                "printed-demo",
                text -> text.replaceAll("(?m)^language: .*$", "language: " + language)
                        .replaceAll("(?m)^text-size: .*$", "text-size: " + size)
                        .replaceAll("(?m)^paper: .*$", "paper: " + paper));
        Outcome outcome = Home.PRESS.print(file, folder, true, Instant.EPOCH);
        Path issue = outcome.written()
                .orElseThrow(() -> new AssertionError(name + FindingText.print(outcome.findings())))
                .folder();
        Path beside = issue.resolve("beside.pdf");
        return new Packet(
                name,
                Files.readAllBytes(issue.resolve("packet.pdf")),
                Files.exists(beside) ? Optional.of(Files.readAllBytes(beside)) : Optional.empty(),
                Files.readString(issue.resolve("packet.xhtml"), StandardCharsets.UTF_8));
    }

    /** Opened by the first who asks; its threads end with the tests. */
    private static final class Home {
        private static final WordedHome COPY;
        private static final Press PRESS;

        static {
            try {
                WordedHome.delete(FOLDER);
                COPY = new WordedHome(FOLDER.resolve("home"));
                PRESS = new Press(COPY.path());
            } catch (IOException broken) {
                throw new java.io.UncheckedIOException(broken);
            }
        }
    }
}
