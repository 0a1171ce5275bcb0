package cyclepacket.finding;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * One result of a check.
 *
 * @param code stable, upper case with hyphens, for example {@code DOSE-OFF-DIAL}
 * @param text what is wrong, one sentence without a full stop
 * @param mend what to do about it, one sentence without a full stop
 */
public record Finding(Severity severity, String code, Place place, String text, String mend) {
    private static final Pattern CODE = Pattern.compile("[A-Z][A-Z0-9]*(-[A-Z0-9]+)*");
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::place)
            .thenComparing(Finding::severity)
            .thenComparing(Finding::code)
            .thenComparing(Finding::text);

    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(mend, "mend");
        if (!CODE.matcher(code).matches()) {
            throw new IllegalArgumentException("not a finding code: " + code);
        }
    }

    public static Finding stop(String code, Place place, String text, String mend) {
        return new Finding(Severity.STOP, code, place, text, mend);
    }

    public static Finding warn(String code, Place place, String text, String mend) {
        return new Finding(Severity.WARN, code, place, text, mend);
    }

    public static Finding note(String code, Place place, String text, String mend) {
        return new Finding(Severity.NOTE, code, place, text, mend);
    }

    public boolean isStop() {
        return severity == Severity.STOP;
    }

    public Finding locatedBy(PlaceBook book) {
        return place.isLocated() ? this : new Finding(severity, code, book.locate(place), text, mend);
    }

    /** Sorted by file, line and column, then severity and code. */
    public static List<Finding> sorted(List<Finding> findings) {
        return findings.stream().distinct().sorted(ORDER).toList();
    }
}
