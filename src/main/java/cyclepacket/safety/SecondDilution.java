package cyclepacket.safety;

import cyclepacket.plan.DilutedVial;
import cyclepacket.plan.Dilution;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Mark;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The second computation of a diluted dose. It goes the other way round, from the mark to the amount, and uses nothing
 * of the first: not the label's strength, not the volume that was worked out, and no whole thousandths.
 *
 * @param amount the exact amount at the mark, times {@code share}
 * @param share what the amount still has to be divided by
 */
record SecondDilution(BigDecimal amount, BigDecimal share, DoseUnit unit) {
    /** By definition of a syringe whose hundred marks are one millilitre. */
    private static final BigDecimal MARKS_A_MILLILITRE = BigDecimal.valueOf(100);

    static SecondDilution at(Mark mark, DilutedVial vial) {
        Dilution dilution = vial.dilution();
        BigDecimal drawn = vial.syringe().numbers() == Syringe.Numbers.MARKS
                ? mark.number().divide(MARKS_A_MILLILITRE)
                : mark.number();
        BigDecimal whole = dilution.take().millilitres().add(dilution.with().millilitres());
        BigDecimal amount = drawn.multiply(dilution.take().millilitres())
                .multiply(inUnit(
                        dilution.stock().amount(), vial.strength().amount().unit()));
        return new SecondDilution(
                amount,
                whole.multiply(dilution.stock().in().millilitres()),
                vial.strength().amount().unit());
    }

    /** Milligrams are a thousand micrograms; nothing else converts. */
    private static BigDecimal inUnit(Dose stock, DoseUnit unit) {
        if (stock.unit() == unit) {
            return stock.number();
        }
        if (stock.unit() == DoseUnit.MG && unit == DoseUnit.MCG) {
            return stock.number().scaleByPowerOfTen(3);
        }
        if (stock.unit() == DoseUnit.MCG && unit == DoseUnit.MG) {
            return stock.number().scaleByPowerOfTen(-3);
        }
        // Units and grams measure different things: no mark holds an amount that can be named.
        return BigDecimal.ZERO;
    }

    boolean gives(Dose dose) {
        return dose.number().multiply(share).compareTo(amount) == 0;
    }

    /** For a finding: rounded to four figures, because it is only ever shown to be wrong. */
    String words() {
        return amount.divide(share, new MathContext(4)).stripTrailingZeros().toPlainString() + " " + unit.word();
    }
}
