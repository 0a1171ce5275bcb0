package cyclepacket.packet;

import cyclepacket.intake.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The files one issue was made from, kept beside it in the layout that a plan's reader knows. */
final class KeptPlan {
    private static final String INPUTS = "inputs";
    private static final String PLANS = "patients";

    private KeptPlan() {}

    /** Keeps the files of an issue; the same files are not written again. Only for who holds the lock of the plan's folder. */
    static void keep(Path out, String plan, int issue, List<SourceFile> sources) throws IOException {
        Map<String, byte[]> files = layout(sources);
        OutFolder folder = new OutFolder(folder(out, plan, issue));
        Path beside = folder.path().getParent();
        if (Files.isDirectory(beside)) {
            OutFolder.tidy(beside);
        }
        boolean isThere = true;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.path().resolve(file.getKey());
            isThere &= Files.exists(path) && java.util.Arrays.equals(Files.readAllBytes(path), file.getValue());
        }
        if (!isThere) {
            folder.write(files);
        }
    }

    /** The kept plan file of an issue. */
    static Optional<Path> find(Path out, String plan, int issue) throws IOException {
        Path plans = folder(out, plan, issue).resolve(PLANS);
        if (!Files.isDirectory(plans)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(plans)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).findFirst();
        }
    }

    /** Where each file lies below a folder of its own. */
    static Map<String, byte[]> layout(List<SourceFile> sources) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (SourceFile source : sources) {
            files.put(
                    place(
                            source.kind(),
                            Path.of(source.shownPath()).getFileName().toString()),
                    source.bytes());
        }
        return files;
    }

    static String place(String kind, String name) {
        return switch (kind) {
            case "plan" -> PLANS + "/" + name;
            case "clinic" -> name;
            default -> kind + "s/" + name;
        };
    }

    /** Where the files of an issue are kept. */
    static Path folder(Path out, String plan, int issue) {
        return out.resolve(plan).resolve(INPUTS).resolve("issue-" + issue);
    }
}
