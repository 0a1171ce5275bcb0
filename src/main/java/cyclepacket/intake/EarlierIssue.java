package cyclepacket.intake;

import cyclepacket.intake.Tree.Kind;
import cyclepacket.intake.Tree.Scalar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the plan of an earlier issue, which normally lies in the same folder, to name the page that is thrown away. */
public final class EarlierIssue {
    private EarlierIssue() {}

    /**
     * The day an earlier issue of the same plan was prepared.
     *
     * @return empty when the folder holds no such plan, or more than one
     */
    public static Optional<LocalDate> preparedOn(Path planFile, String plan, int issue) throws IOException {
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        List<LocalDate> days = new ArrayList<>();
        for (Path file : plansIn(folder)) {
            if (Files.size(file) <= Sheet.LARGEST_FILE) {
                preparedOn(Files.readAllBytes(file), plan, issue).ifPresent(days::add);
            }
        }
        return days.size() == 1 ? Optional.of(days.get(0)) : Optional.empty();
    }

    private static List<Path> plansIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".yaml"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        }
    }

    private static Optional<LocalDate> preparedOn(byte[] bytes, String plan, int issue) {
        Source source = Source.of("", bytes);
        // Most files of the folder belong to other people; only those that name the plan are parsed.
        if (!source.text().contains(plan)) {
            return Optional.empty();
        }
        Optional<Tree> root = TreeReader.read(source, new ArrayList<>());
        boolean isIt = written(root, "/plan").filter(plan::equals).isPresent()
                && written(root, "/issue").filter(String.valueOf(issue)::equals).isPresent();
        return isIt ? written(root, "/prepared/on").flatMap(EarlierIssue::date) : Optional.empty();
    }

    private static Optional<String> written(Optional<Tree> root, String pointer) {
        Walk walk = Walk.from(root, pointer);
        return walk.isComplete()
                        && walk.reached().orElse(null) instanceof Scalar scalar
                        && scalar.kind() != Kind.NOTHING
                ? Optional.of(scalar.written())
                : Optional.empty();
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException notADate) {
            return Optional.empty();
        }
    }
}
