package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Keeps the patient's name, birth date and number out of every finding that is not about that very value. */
final class PatientMask {
    private static final String NAME = "/patient/name";
    private static final List<String> IDENTIFIERS = List.of(NAME, "/patient/born", "/patient/number");
    /** Whatever stands behind a key called name, for a plan whose patient cannot be found or is there twice. */
    private static final Pattern BEHIND_NAME =
            Pattern.compile("\\bname[\"']?\\s*:\\s*(?:\"([^\"\\r\\n]+)|'([^'\\r\\n]+)|([^,}\"'\\s][^,}\\r\\n]*))");

    /** The other two in a plan without a tree; behind braces and commas whatever is left of the word. */
    private static final Pattern BEHIND_IDENTIFIER =
            Pattern.compile("(\\b(?:born|number)[\"']?\\s*:\\s*)([^,}\\r\\n]+)");

    /** A shorter guess would put stars into ordinary words. */
    private static final int SHORTEST_GUESS = 3;

    private final String planPath;
    private final List<String> names;
    private final Map<String, Tree.Scalar> written;
    private final boolean hasTree;

    private PatientMask(String planPath, List<String> names, Map<String, Tree.Scalar> written, boolean hasTree) {
        this.planPath = planPath;
        this.names = names.stream()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
        this.written = Map.copyOf(written);
        this.hasTree = hasTree;
    }

    static PatientMask in(Sheet plan) {
        Map<String, Tree.Scalar> written = new LinkedHashMap<>();
        for (String pointer : IDENTIFIERS) {
            plan.at(pointer)
                    .filter(Tree.Scalar.class::isInstance)
                    .ifPresent(scalar -> written.put(pointer, (Tree.Scalar) scalar));
        }
        Stream<String> name = Optional.ofNullable(written.get(NAME)).map(Tree.Scalar::written).stream();
        Stream<String> guesses = BEHIND_NAME
                .matcher(plan.source().text())
                .results()
                .flatMap(found -> Stream.of(found.group(1), found.group(2), found.group(3))
                        .filter(Objects::nonNull))
                .filter(guess -> guess.length() >= SHORTEST_GUESS);
        List<String> names = Stream.concat(name, guesses).toList();
        return new PatientMask(plan.shownPath(), names, written, plan.root().isPresent());
    }

    Finding masked(Finding finding) {
        if (finding.place().pointer().equals(NAME)) {
            return new Finding(
                    finding.severity(), finding.code(), masked(finding.place()), finding.text(), finding.mend());
        }
        return new Finding(
                finding.severity(),
                finding.code(),
                masked(finding.place()),
                withStars(finding.text()),
                withStars(finding.mend()));
    }

    Place masked(Place place) {
        String line = place.pointer().equals(NAME) ? place.sourceLine() : withStars(place.sourceLine());
        if (place.file().equals(planPath)) {
            for (Map.Entry<String, Tree.Scalar> identifier : written.entrySet()) {
                if (!place.pointer().equals(identifier.getKey())) {
                    line = withoutSpan(line, place.line(), identifier.getValue());
                }
            }
            line = hasTree ? line : withoutIdentifiers(line);
        }
        return new Place(place.file(), place.pointer(), place.line(), place.column(), line);
    }

    private static String withoutIdentifiers(String line) {
        return BEHIND_IDENTIFIER
                .matcher(line)
                .replaceAll(found ->
                        Matcher.quoteReplacement(found.group(1) + found.group(2).replaceAll("[\\p{L}\\p{Nd}]", "*")));
    }

    private String withStars(String text) {
        String masked = text;
        for (String name : names) {
            masked = masked.replace(name, "*".repeat(name.codePointCount(0, name.length())));
        }
        return masked;
    }

    /** A value as it is written in the file may differ from its value by quotes and escapes. */
    private static String withoutSpan(String line, int number, Tree.Scalar value) {
        if (number < value.spot().line() || number > value.end().line()) {
            return line;
        }
        int length = line.codePointCount(0, line.length());
        int from = number == value.spot().line() ? value.spot().column() - 1 : 0;
        int to = number == value.end().line() ? value.end().column() - 1 : length;
        StringBuilder masked = new StringBuilder();
        int[] points = line.codePoints().toArray();
        for (int n = 0; n < points.length; n++) {
            masked.appendCodePoint(n >= from && n < to && Character.isLetterOrDigit(points[n]) ? '*' : points[n]);
        }
        return masked.toString();
    }
}
