package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.VialSketch;
import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Vials of 14 mg at 5 mg in 1 mL: 2.8 mL, of which each dose takes 0.02 mL more than it gives. A dose is never drawn from
 * two vials (common practice, no published source).
 */
class VialLedgerTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
    private static final Dose LABEL = Dose.parse("14 mg");

    private InUseDayOne dayOne = InUseDayOne.FIRST_USE;
    private final List<Container> home = new ArrayList<>();
    private final List<Draw> draws = new ArrayList<>();

    private void vial(int number, Optional<LocalDate> opened) {
        home.add(new Container(number, 0, LABEL, LABEL, LABEL, Optional.empty(), Optional.empty(), opened));
    }

    private void vials(int count) {
        for (int number = 1; number <= count; number++) {
            vial(number, Optional.empty());
        }
    }

    private void daily(int days, String dose) {
        Dose each = Dose.parse(dose);
        for (int day = 0; day < days; day++) {
            draws.add(new Draw(
                    FIRST.plusDays(day),
                    1,
                    each,
                    each.times(day),
                    each.times(day + 1),
                    Optional.empty(),
                    day == 3 ? Optional.of(0) : Optional.empty(),
                    false,
                    List.of(),
                    Dose.zero(DoseUnit.MG)));
        }
    }

    private VialLedger ledger() {
        return new VialLedger(
                VialSketch.leuprolide("marks-100").device().stockVial().orElseThrow(), dayOne, home, draws);
    }

    /** The day from 1, the vial that is left and why: "4: 1 TOO_LITTLE_LEFT". */
    private String changes() {
        VialLedger ledger = ledger();
        return draws.stream()
                .flatMap(draw -> ledger.changesOn(draw.date()).stream()
                        .map(change -> FIRST.until(draw.date()).getDays() + 1 + ": " + change.leaving() + " "
                                + change.cause()))
                .collect(Collectors.joining(", "));
    }

    private List<String> totals() {
        return ledger().lines().stream()
                .map(line -> line.leastTotal().toString())
                .toList();
    }

    /** 4 mg take 0.82 mL: three come out of 2.8 mL, and 0.34 mL are left. */
    @Test
    void leavesAVialThatHoldsLessThanTheWholeNextDose() {
        vials(2);
        daily(5, "4 mg");
        assertEquals("4: 1 TOO_LITTLE_LEFT", changes());
        assertEquals(List.of("12 mg", "20 mg"), totals());
        assertEquals(Dose.parse("20 mg"), ledger().total());
        DayChange change = ledger().changesOn(FIRST.plusDays(3)).get(0);
        assertEquals(3, change.draw());
        assertTrue(change.isCertain());
        assertEquals(Optional.empty(), change.owed());
    }

    @Test
    void runsShortWithTheDoseThatNoVialHoldsWhole() {
        vials(2);
        daily(8, "4 mg");
        assertEquals("4: 1 TOO_LITTLE_LEFT, 7: 2 TOO_LITTLE_LEFT", changes());
        assertEquals(List.of("12 mg", "24 mg"), totals());
        assertEquals(Dose.parse("24 mg"), ledger().total());
        assertTrue(ledger().changesOn(FIRST.plusDays(3)).get(0).isRead());
        assertFalse(ledger().changesOn(FIRST.plusDays(6)).get(0).isRead());
    }

    /** 3.4 mg take 0.7 mL, so that four empty the vial exactly. */
    @Test
    void drawsALastDoseThatFitsExactly() {
        vials(2);
        daily(5, "3.4 mg");
        assertEquals("5: 1 TOO_LITTLE_LEFT", changes());
    }

    @Test
    void countsASpareVialWithItsLabel() {
        vials(3);
        daily(2, "4 mg");
        assertEquals("", changes());
        assertEquals(List.of("8 mg", "22 mg", "36 mg"), totals());
        assertEquals(Dose.parse("36 mg"), ledger().total());
    }

    @Test
    void countsEveryLabelOfACourseWithoutDoses() {
        vials(2);
        assertEquals(List.of("14 mg", "28 mg"), totals());
    }

    @Test
    void hasNothingWithoutAVial() {
        daily(2, "4 mg");
        assertEquals("", changes());
        assertEquals(Dose.zero(DoseUnit.MG), ledger().total());
        assertEquals(List.of(), ledger().lines());
    }

    /** 0.25 mg take 0.07 mL: forty come out, and 28 days end on the 28th or the day after it. */
    @Test
    void leavesAVialAfterItsDays() {
        vials(2);
        daily(30, "0.25 mg");
        assertEquals("29: 1 IN_USE_LIMIT", changes());
        ContainerLine first = ledger().lines().get(0);
        assertEquals(Optional.of(FIRST), first.firstOpening());
        assertEquals(Optional.of(LocalDate.of(2027, 3, 28)), first.lastSafeDay());
        assertEquals(Optional.of(LocalDate.of(2027, 3, 29)), first.firstEnd());
        assertEquals(
                Optional.of(LocalDate.of(2027, 3, 29)), ledger().lines().get(1).firstOpening());
        assertEquals(Optional.empty(), ledger().lines().get(1).firstEnd());
        dayOne = InUseDayOne.DAY_AFTER;
        assertEquals("30: 1 IN_USE_LIMIT", changes());
        assertEquals(
                Optional.of(LocalDate.of(2027, 3, 29)), ledger().lines().get(0).lastSafeDay());
    }

    /** Opened on 10 February, 28 days: 9 March is the last. */
    @Test
    void countsTheDaysOfAVialThatWasOpenBefore() {
        vial(1, Optional.of(LocalDate.of(2027, 2, 10)));
        vial(2, Optional.empty());
        daily(12, "0.25 mg");
        assertEquals("10: 1 IN_USE_LIMIT", changes());
        assertEquals(
                Optional.of(LocalDate.of(2027, 2, 10)), ledger().lines().get(0).firstOpening());
    }

    /** The second vial was opened long ago: its days are over before it is needed, and it gives nothing. */
    @Test
    void passesOverAVialThatIsTooOld() {
        vial(1, Optional.empty());
        vial(2, Optional.of(LocalDate.of(2027, 1, 4)));
        vial(3, Optional.empty());
        daily(5, "4 mg");
        assertEquals("4: 1 TOO_LITTLE_LEFT, 4: 2 IN_USE_LIMIT", changes());
        assertEquals(List.of("12 mg", "12 mg", "20 mg"), totals());
    }

    /** A box that was thrown away keeps its number, so the ones after it keep theirs. */
    @Test
    void callsAVialByTheNumberOnItsBox() {
        vial(2, Optional.empty());
        vial(3, Optional.empty());
        daily(4, "4 mg");
        assertEquals("4: 2 TOO_LITTLE_LEFT", changes());
        assertEquals(Optional.of(FIRST.plusDays(3)), ledger().lines().get(0).firstEnd());
        assertEquals(Optional.empty(), ledger().lines().get(1).firstEnd());
    }
}
