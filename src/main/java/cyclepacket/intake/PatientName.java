package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Keeps the patient's name out of every finding that is not about the name itself. */
final class PatientName {
    private static final String POINTER = "/patient/name";
    /** Whatever stands behind a key called name, for a plan whose patient cannot be found or is there twice. */
    private static final Pattern BEHIND_NAME =
            Pattern.compile("\\bname[\"']?\\s*:\\s*(?:\"([^\"\\r\\n]+)|'([^'\\r\\n]+)|([^,}\"'\\s][^,}\\r\\n]*))");

    /** A shorter guess would put stars into ordinary words. */
    private static final int SHORTEST_GUESS = 3;

    private final String planPath;
    private final List<String> names;
    private final Optional<Tree.Scalar> written;

    private PatientName(String planPath, List<String> names, Optional<Tree.Scalar> written) {
        this.planPath = planPath;
        this.names = names.stream()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
        this.written = written;
    }

    static PatientName in(Sheet plan) {
        Optional<Tree.Scalar> scalar =
                plan.at(POINTER).filter(Tree.Scalar.class::isInstance).map(Tree.Scalar.class::cast);
        Stream<String> guesses = BEHIND_NAME
                .matcher(plan.source().text())
                .results()
                .flatMap(found -> Stream.of(found.group(1), found.group(2), found.group(3))
                        .filter(Objects::nonNull))
                .filter(guess -> guess.length() >= SHORTEST_GUESS);
        List<String> names = Stream.concat(scalar.map(Tree.Scalar::written).stream(), guesses)
                .toList();
        return new PatientName(plan.shownPath(), names, scalar);
    }

    Finding masked(Finding finding) {
        if (finding.place().pointer().equals(POINTER)) {
            return finding;
        }
        return new Finding(
                finding.severity(),
                finding.code(),
                masked(finding.place()),
                withStars(finding.text()),
                withStars(finding.mend()));
    }

    Place masked(Place place) {
        if (place.pointer().equals(POINTER)) {
            return place;
        }
        String line = withStars(place.sourceLine());
        if (written.isPresent() && place.file().equals(planPath)) {
            line = withoutSpan(line, place.line(), written.get());
        }
        return new Place(place.file(), place.pointer(), place.line(), place.column(), line);
    }

    private String withStars(String text) {
        String masked = text;
        for (String name : names) {
            masked = masked.replace(name, "*".repeat(name.codePointCount(0, name.length())));
        }
        return masked;
    }

    /** The name as it is written in the file may differ from its value by quotes and escapes. */
    private static String withoutSpan(String line, int number, Tree.Scalar name) {
        if (number < name.spot().line() || number > name.end().line()) {
            return line;
        }
        int length = line.codePointCount(0, line.length());
        int from = number == name.spot().line() ? name.spot().column() - 1 : 0;
        int to = number == name.end().line() ? name.end().column() - 1 : length;
        StringBuilder masked = new StringBuilder();
        int[] points = line.codePoints().toArray();
        for (int n = 0; n < points.length; n++) {
            masked.appendCodePoint(n >= from && n < to && Character.isLetterOrDigit(points[n]) ? '*' : points[n]);
        }
        return masked.toString();
    }
}
