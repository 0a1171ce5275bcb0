package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps the patient's name out of every finding that is not about the name itself. */
final class PatientName {
    private static final String POINTER = "/patient/name";
    /** For a plan that is not YAML: whatever stands behind a key called name, up to where a value can end. */
    private static final Pattern BEHIND_NAME = Pattern.compile("\\bname[\"']?\\s*:\\s*([^,}]*[^,}\\s])");

    private final String planPath;
    private final Optional<String> name;
    private final Optional<Tree.Scalar> written;

    private PatientName(String planPath, Optional<Tree.Scalar> written) {
        this.planPath = planPath;
        this.written = written;
        this.name = written.map(Tree.Scalar::written).map(String::strip).filter(n -> !n.isEmpty());
    }

    static PatientName in(Sheet plan) {
        Optional<Tree.Scalar> scalar =
                plan.at(POINTER).filter(Tree.Scalar.class::isInstance).map(Tree.Scalar.class::cast);
        return new PatientName(plan.shownPath(), scalar);
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
        if (place.file().equals(planPath)) {
            line = written.isPresent() ? withoutSpan(line, place.line(), written.get()) : withoutGuess(line);
        }
        return new Place(place.file(), place.pointer(), place.line(), place.column(), line);
    }

    private String withStars(String text) {
        return name.map(n -> text.replace(n, "*".repeat(n.codePointCount(0, n.length()))))
                .orElse(text);
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

    private static String withoutGuess(String line) {
        Matcher guess = BEHIND_NAME.matcher(line);
        return guess.find()
                ? line.substring(0, guess.start(1))
                        + "*".repeat(guess.end(1) - guess.start(1))
                        + line.substring(guess.end(1))
                : line;
    }
}
