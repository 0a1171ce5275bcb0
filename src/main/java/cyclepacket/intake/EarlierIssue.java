package cyclepacket.intake;

import cyclepacket.intake.Tree.Kind;
import cyclepacket.intake.Tree.Scalar;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the plan of an earlier issue, which normally lies in the same folder, to tell what changed since. */
public final class EarlierIssue {
    private EarlierIssue() {}

    /**
     * The plan of an earlier issue of the same plan.
     *
     * @return empty when the folder holds no such plan, or more than one
     */
    public static Optional<Path> of(Path planFile, String plan, int issue) throws IOException {
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        List<Path> found = new ArrayList<>();
        for (Path file : plansIn(folder)) {
            boolean isReadable = Files.isReadable(file) && Files.size(file) <= Sheet.LARGEST_FILE;
            // A neighbour's file that cannot be read says nothing of this plan.
            if (isReadable && isIssue(Files.readAllBytes(file), plan, issue)) {
                found.add(file);
            }
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static List<Path> plansIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches("[^.].*\\.yaml"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        }
    }

    private static boolean isIssue(byte[] bytes, String plan, int issue) {
        Source source = Source.of("", bytes);
        // Most files of the folder belong to other people; only those that name the plan are parsed.
        if (!source.text().contains(plan)) {
            return false;
        }
        Optional<Tree> root = TreeReader.read(source, new ArrayList<>());
        return written(root, "/plan").filter(plan::equals).isPresent()
                && written(root, "/issue").filter(text -> isNumber(text, issue)).isPresent();
    }

    private static boolean isNumber(String text, int number) {
        try {
            return new BigDecimal(text).compareTo(BigDecimal.valueOf(number)) == 0;
        } catch (NumberFormatException notANumber) {
            return false;
        }
    }

    private static Optional<String> written(Optional<Tree> root, String pointer) {
        Walk walk = Walk.from(root, pointer);
        return walk.isComplete()
                        && walk.reached().orElse(null) instanceof Scalar scalar
                        && scalar.kind() != Kind.NOTHING
                ? Optional.of(scalar.written())
                : Optional.empty();
    }
}
