package cyclepacket.ledger;

import cyclepacket.PlanSketch;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Anchoring;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A row of 187.5 units an evening from cartridges of 900, as long as a row may be; everything in it is invented. */
public final class LongPlan {
    /** In thousandths of a unit, like the others. */
    private static final long DOSE = 187_500;

    private static final long LEAST = 900_000;
    /** What each cartridge really holds; it lies on no mark. */
    private static final long TRUE_CONTENT = 1_000_000;

    private static final int STILL_TO_COME = 7;

    /** What is known of the cartridges. */
    public enum Knowledge {
        /** Each gives exactly what its label says. */
        EXACT,
        /** Each gives 900 to 1,125 units, and nothing has happened yet: the doubt grows with every cartridge. */
        PLANNED,
        /** The same, but every evening before the last seven is written down, with the number at each end. */
        RECORDED
    }

    private LongPlan() {}

    /** @param days evenings, from 8 to 400 */
    static PlanFiles files(int days, Knowledge knowledge) {
        PlanSketch sketch = sketch().size("900", "900", knowledge == Knowledge.EXACT ? "900" : "1125");
        for (long given = 0; given < days * DOSE; given += LEAST) {
            sketch.home("900");
        }
        if (knowledge == Knowledge.RECORDED) {
            for (int evening = 1; evening <= days - STILL_TO_COME; evening++) {
                sketch.happened(evening, "187.5", window(evening));
            }
        }
        return withRow(sketch.files(), days);
    }

    /** The same row with nothing at home and three sizes to buy. */
    public static PlanFiles withEmptyRefrigerator(int days) {
        return withRow(
                sketch().size("300", "300", "375")
                        .size("600", "600", "750")
                        .size("900", "900", "1125")
                        .files(),
                days);
    }

    private static PlanSketch sketch() {
        PlanSketch sketch = new PlanSketch();
        sketch.step = "12.5";
        return sketch.dose(1, "187.5");
    }

    /** What the pen still owes when a cartridge ends on this evening; 0 when none does. */
    private static String window(int evening) {
        long before = (evening - 1) * DOSE;
        long after = evening * DOSE;
        long end = (after - 1) / TRUE_CONTENT * TRUE_CONTENT;
        long owed = end >= before && end > 0 ? after - end : 0;
        return new Dose(owed, DoseUnit.UNITS).number().toPlainString();
    }

    /** Stimulation takes 60 evenings at the most, any other row 400 days. */
    private static PlanFiles withRow(PlanFiles files, int days) {
        DayMark last = new DayMark.FromAnchor(Anchor.S1, days - 1);
        Protocol row = new Protocol(
                "long",
                "A long row",
                Map.of(Anchor.S1, "first injection"),
                Map.of(),
                Optional.empty(),
                List.of(new Protocol.Row(PlanSketch.PEN, DayMark.parse("S1"), last, "evening", Optional.empty())),
                List.of(),
                Anchoring.fromS1(),
                Protocol.Aim.TRANSFER);
        return new PlanFiles(
                files.plan(),
                files.clinic(),
                row,
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
    }
}
