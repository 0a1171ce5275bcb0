package cyclepacket.intake;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Amounts of one medicine: a bare number, or a number with the medicine's own unit. No unit is ever converted. */
final class Amounts {
    /** No example: a number in a mend is a number that somebody may copy. */
    static final String DIGITS = "write the amount in plain digits";

    /** Far above every amount that a file can mean, and so far below what a sum may reach that none overflows. */
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    private final String medicine;
    private final Optional<DoseUnit> unit;

    /**
     * @param unit empty when the medicine file does not say it; then no amount can be read, and that file's own finding
     *     says why
     */
    Amounts(String medicine, Optional<DoseUnit> unit) {
        this.medicine = medicine;
        this.unit = unit;
    }

    Part<Dose> read(Field field) {
        if (unit.isEmpty()) {
            return Part.absent();
        }
        return field.isText() ? withUnit(field) : field.attempt("AMOUNT-INVALID", field.number(), this::amount);
    }

    Part<DoseRange> range(Field field) {
        Part<List<Dose>> ends = field.pair(this::read);
        return Part.whole(
                field, () -> new DoseRange(ends.get().get(0), ends.get().get(1)));
    }

    private Part<Dose> withUnit(Field field) {
        String text = field.text().get();
        int space = text.indexOf(' ');
        String number = space < 0 ? text : text.substring(0, space);
        if (!ScalarKind.isNumber(number)) {
            field.stop("AMOUNT-INVALID", Characters.quoted(text) + " is not an amount", mend(text));
            return Part.absent();
        }
        if (space < 0) {
            field.stop(
                    "AMOUNT-INVALID", Characters.quoted(text) + " is text, not an amount", "write it without quotes");
            return Part.absent();
        }
        String word = text.substring(space + 1);
        if (!word.equals(unit.get().word())) {
            field.stop(
                    "UNIT-CLASH",
                    medicine + " is measured in " + unit.get().word() + ", not in " + Characters.quoted(word),
                    "find out the amount in " + unit.get().word() + " and write that; never convert it");
            return Part.absent();
        }
        return field.attempt("AMOUNT-INVALID", Part.of(new BigDecimal(number)), this::amount);
    }

    private Dose amount(BigDecimal number) {
        if (number.compareTo(MOST) > 0) {
            throw new Refusal(
                    "an amount above 1,000,000 " + unit.get().word() + " cannot be right",
                    "read the order or the leaflet again, and write the amount digit by digit");
        }
        return Dose.of(number, unit.get());
    }

    private static String mend(String text) {
        String pointed = text.replace(',', '.');
        if (ScalarKind.isNumber(pointed)) {
            return "write a point before the decimals";
        }
        boolean isRunTogether =
                !text.isEmpty() && Character.isDigit(text.charAt(0)) && text.matches("[0-9.]+[A-Za-z]+");
        return isRunTogether ? "write the number without the unit" : DIGITS;
    }
}
