package cyclepacket.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A command that writes, on the copy of one demo plan, in this process or in one that may be killed or starved.
 *
 * @param answers what is keyed in
 * @param words the command line, in which PLAN and OUT stand for the copies
 */
record Chore(String name, String plan, String answers, List<String> words) {
    private static final String SIGNED = "\ncountersigned:";

    static final Chore PACKET = new Chore("packet", "SM-04417-issue-3", "", List.of("packet", "PLAN", "--out", "OUT"));
    static final Chore RECORD = new Chore(
            "record",
            "SM-04417-issue-2",
            "",
            List.of(
                    "record",
                    "PLAN",
                    "--medicine",
                    "fsh-pen",
                    "--evening",
                    "2027-03-09",
                    "--given",
                    "212.5",
                    "--window",
                    "0"));
    static final Chore REVISE = new Chore(
            "revise",
            "SM-04417-issue-3",
            "",
            List.of(
                    "revise",
                    "PLAN",
                    "--order",
                    "ORD-1202",
                    "--by",
                    "T. Okonjo (invented)",
                    "--to",
                    "the patient",
                    "--on",
                    "2027-03-12",
                    "--read-back",
                    "--out",
                    "OUT",
                    "--hour",
                    "evening=21:00@2027-03-12",
                    "--yes"));
    static final Chore COUNTERSIGN = new Chore(
            "countersign",
            "SM-04417-issue-3",
            "7730418\n2027-03-05\n2027-03-09 212.5\n2027-03-15 08:30\n2027-03-13 19:30\n0\n600 900 300\n5x0.25\n250\n",
            List.of("countersign", "PLAN", "--by", "R. Lindqvist (invented)", "--on", "2027-03-12"));

    /** A fresh copy of the demo below a folder, with nothing printed yet. */
    void lay(Path folder) throws IOException {
        Path file = TypedRun.copyOfPlans(folder).resolve(plan + ".yaml");
        String text = Files.readString(file);
        if (name.equals("countersign")) {
            Files.writeString(file, text.substring(0, text.indexOf(SIGNED) + 1));
        }
    }

    Path file(Path folder) {
        return folder.resolve("plans/patients").resolve(plan + ".yaml");
    }

    private List<String> typed(Path folder) {
        return words.stream()
                .map(word -> word.equals("PLAN") ? file(folder).toString() : word)
                .map(word -> word.equals("OUT") ? folder.resolve("out").toString() : word)
                .toList();
    }

    TypedRun here(Path folder) {
        return TypedRun.answering(answers, typed(folder).toArray(String[]::new));
    }

    /** @param before words before the command, for example a shell that sets a limit */
    Process elsewhere(Path folder, List<String> before) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Djava.awt.headless=true",
                "-Dcyclepacket.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "cyclepacket.cli.Main"));
        command.addAll(typed(folder));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        try (OutputStream keys = process.getOutputStream()) {
            keys.write(answers.getBytes(StandardCharsets.UTF_8));
        } catch (IOException gone) {
            // A process that was killed or never asks has closed its end.
            process.descendants().forEach(ProcessHandle::destroyForcibly);
        }
        return process;
    }

    /** Every file below a folder with what it holds; locks are left out, they hold nothing. */
    static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    if (!file.endsWith(".lock")) {
                        files.put(
                                folder.relativize(file).toString(),
                                new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                    }
                }
            }
        }
        return files;
    }
}
