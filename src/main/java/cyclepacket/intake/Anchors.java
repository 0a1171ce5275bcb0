package cyclepacket.intake;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.quantity.Refusal;
import java.util.Collection;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The anchors of one protocol, and the days that hang on them. */
final class Anchors {
    private final String protocol;
    private static final Pattern STIMULATION_DAY = Pattern.compile("S(\\d{1,3})");

    private final Optional<TreeSet<String>> codes;
    private final boolean fromZero;

    private Anchors(String protocol, Optional<TreeSet<String>> codes, boolean fromZero) {
        this.protocol = protocol;
        this.codes = codes;
        this.fromZero = fromZero;
    }

    /** @param clinic says whether the first stimulation day is S0 or S1, as far as it can be read */
    static Anchors of(Sheet protocol, Optional<Sheet> clinic) {
        boolean fromZero = clinic.flatMap(sheet -> sheet.top()
                        .at("house-rules")
                        .at("first-stimulation-day")
                        .text()
                        .value())
                .filter("S0"::equals)
                .isPresent();
        Collection<String> keys = protocol.top().at("anchors").entries().keySet();
        return new Anchors(
                protocol.top().at("protocol").text().value().orElse("this one"),
                keys.isEmpty() ? Optional.empty() : Optional.of(new TreeSet<>(keys)),
                fromZero);
    }

    /** Without a protocol nothing is known, and every anchor passes: the missing file has a finding of its own. */
    static Anchors unknown() {
        return new Anchors("", Optional.empty(), false);
    }

    /** An anchor's name as a value. */
    Part<Anchor> named(Field field) {
        return new Part<>(
                field.text().value().filter(code -> isKnown(field, code, false)).map(Anchor::new));
    }

    /** An anchor's name as the key of {@code field}. */
    Part<Anchor> keyed(Field field, String code) {
        return isKnown(field, code, true) ? Part.of(new Anchor(code)) : Part.absent();
    }

    Part<DayMark> day(Field field) {
        if (!field.isText()) {
            return Part.absent();
        }
        String text = field.text().get();
        try {
            DayMark day = parse(text);
            if (day.anchor().isEmpty()) {
                return new Part<>(Calendar.date(field).value().map(DayMark.Dated::new));
            }
            return isKnown(field, day.anchor().get().code(), false) ? Part.of(day) : Part.absent();
        } catch (Refusal refusal) {
            boolean isDate = Character.isDigit(text.isEmpty() ? ' ' : text.charAt(0));
            field.stop(isDate ? "DATE-INVALID" : "DAY-INVALID", refusal.getMessage(), refusal.mend());
            return Part.absent();
        }
    }

    private DayMark parse(String text) {
        Matcher counted = STIMULATION_DAY.matcher(text);
        return fromZero && counted.matches()
                ? new DayMark.FromAnchor(Anchor.S1, Integer.parseInt(counted.group(1)))
                : DayMark.parse(text);
    }

    private boolean isKnown(Field field, String code, boolean isKey) {
        if (codes.isEmpty()) {
            return code.matches("[A-Z]{1,3}1?");
        }
        if (codes.get().contains(code)) {
            return true;
        }
        String written = isKey ? code : field.text().value().orElse(code);
        String counted = written.equals(code) ? "" : Characters.quoted(written) + " counts from " + code + ", and ";
        String wrong = counted + "the protocol " + protocol + " has no anchor " + code;
        String mend = NearestName.mend(code, codes.get());
        if (isKey) {
            field.stopAtKey("ANCHOR-UNKNOWN", wrong, mend);
        } else {
            field.stop("ANCHOR-UNKNOWN", wrong, mend);
        }
        return false;
    }
}
