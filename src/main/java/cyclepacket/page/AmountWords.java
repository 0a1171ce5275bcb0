package cyclepacket.page;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import java.util.Locale;

/** Amounts as a patient reads them: digits, commas from 1,000 on, no trailing zero, and a unit that stays on the line. */
final class AmountWords {
    static final char NO_BREAK = '\u00a0';

    private final Wording wording;

    AmountWords(Wording wording) {
        this.wording = wording;
    }

    /** A name at the head of a sentence. */
    static String capital(String name) {
        int first = name.offsetByCodePoints(0, 1);
        return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
    }

    /** For example {@code 187.5 units}, with a no-break space. */
    String amount(Dose dose) {
        return number(dose) + NO_BREAK + unit(dose);
    }

    /** For example {@code 37.5 to 150 units}; one amount when both ends are equal. */
    String range(DoseRange range) {
        return range.isExact()
                ? amount(range.most())
                : wording.text("range")
                        .replace("{least}", number(range.least()))
                        .replace("{most}", amount(range.most()))
                        .replace(' ', NO_BREAK);
    }

    /** The number alone, for example {@code 1,250}. */
    String number(Dose dose) {
        return wording.tongue().number(dose.number());
    }

    /** The word of the unit for this amount: one unit, two units. */
    String unit(Dose dose) {
        return wording.text(wording.form("unit." + dose.unit().word(), dose.number()));
    }

    String unit(DoseUnit unit) {
        return wording.text("unit." + unit.word());
    }
}
