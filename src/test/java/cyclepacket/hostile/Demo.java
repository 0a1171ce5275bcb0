package cyclepacket.hostile;

import cyclepacket.intake.PlanReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The demo's files in a folder of their own, whole, and which files each plan reads. */
final class Demo {
    private final Map<Path, byte[]> sound = new LinkedHashMap<>();
    private final Map<Path, List<Path>> read = new LinkedHashMap<>();
    private final Map<Path, Node> trees = new LinkedHashMap<>();

    private final Path plans;
    private volatile boolean isWriting;

    private Demo(Path plans) {
        this.plans = plans;
    }

    /** @param folder gets a folder {@code plans} */
    static Demo lay(Path folder) throws IOException {
        Demo demo = new Demo(folder.resolve("plans"));
        Path from = Path.of("plans");
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        for (Path file : files) {
            Path copy = demo.plans.resolve(from.relativize(file));
            Files.createDirectories(copy.getParent());
            byte[] bytes = Files.readAllBytes(file);
            Files.write(copy, bytes);
            demo.sound.put(copy, bytes);
        }
        demo.readEveryPlan();
        return demo;
    }

    private void readEveryPlan() throws IOException {
        for (Path file : sound.keySet()) {
            if (file.getParent().endsWith("patients")) {
                List<Path> own = new ArrayList<>();
                PlanReader.read(file).sources().forEach(source -> own.add(Path.of(source.shownPath())));
                read.put(file, List.copyOf(own));
            }
        }
    }

    Path folder() {
        return plans;
    }

    List<Path> plans() {
        return List.copyOf(read.keySet());
    }

    /** The plan itself first, then its companions. */
    List<Path> filesOf(Path plan) {
        return read.get(plan);
    }

    Node tree(Path file) {
        return trees.computeIfAbsent(
                        file, each -> YamlIn.read(new String(sound.get(each), java.nio.charset.StandardCharsets.UTF_8)))
                .copy();
    }

    void restore(Path file) throws IOException {
        put(file, sound.get(file));
    }

    /** The only writing to the plans that is this harness's own. */
    void put(Path file, byte[] bytes) throws IOException {
        isWriting = true;
        try {
            Files.write(file, bytes);
        } finally {
            isWriting = false;
        }
    }

    boolean isWriting() {
        return isWriting;
    }
}
