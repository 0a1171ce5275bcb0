package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Twelve evenings of a plan, lived by many simulated patients: the true contents lie on marks inside each size's range, some
 * doses are missed, every stop is reported, and some numbers are misread. {@code -Dlived=1000} lives a thousand; the
 * figures are written to {@code target/lived-cycles.txt}.
 */
class LivedCyclesTest {
    private static final int PATIENTS = Integer.getInteger("lived", 100);
    private static final int EVENINGS = 12;
    private static final long STEP = 12_500;
    private static final Pen PEN = new Pen(Window.OWED, STEP, STEP, 400_000, 28, false, false);
    private static final long[] LABELS = {300_000, 600_000, 900_000};
    private static final long[] MOST = {350_000, 712_500, 1_025_000};

    private final List<Long> narrowed = new ArrayList<>();
    private final List<Long> narrowedPercent = new ArrayList<>();
    private int reports;
    private int alreadyExact;
    private int misread;
    private int outside;
    private int inside;
    private long largestError;
    private long largestPercent;

    @Test
    void alwaysContainsTheTruthAndCatchesWhatCannotBe() throws IOException {
        for (int seed = 0; seed < PATIENTS; seed++) {
            live(seed);
        }
        assertEquals(misread, outside + inside, "every misread number is one or the other");
        assertTrue(reports > PATIENTS / 2 && outside > 0 && inside > 0, "the study met every case");
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target/lived-cycles.txt"), figures());
    }

    private void live(long seed) {
        Chance chance = Chance.seeded(seed);
        PlanSketch sketch = new PlanSketch();
        sketch.least = "12.5";
        sketch.step = "12.5";
        sketch.most = "400";
        sketch.days = EVENINGS;
        sketch.issue = 2;
        for (int size = 0; size < LABELS.length; size++) {
            sketch.size(units(LABELS[size]), units(LABELS[size]), units(MOST[size]));
        }
        long dose = STEP * chance.from(12, 24);
        sketch.dose(1, units(dose));
        List<Long> contents = new ArrayList<>();
        long need = dose * EVENINGS;
        for (long held = 0; held < need + 900_000; ) {
            int size = chance.from(0, 2);
            long content = chance.markFrom(LABELS[size], MOST[size], STEP);
            sketch.home(units(LABELS[size]));
            contents.add(content);
            held += LABELS[size];
        }
        List<Evening> evenings = new ArrayList<>();
        for (int evening = 1; evening <= EVENINGS; evening++) {
            Deed deed = chance.in100(6) ? missed() : Deed.AS_ORDERED;
            evenings.add(new Evening(sketch.night(evening), List.of(dose), List.of(deed)));
        }
        tell(seed, chance, sketch, Patient.live(PEN, evenings, contents, Optional.empty()), contents);
    }

    private static Deed missed() {
        return new Deed(Deed.Does.MISSED, 0, 0, 0, 0, new Deed.Writes(true, true, true, false));
    }

    private void tell(long seed, Chance chance, PlanSketch sketch, Story story, List<Long> contents) {
        for (int evening = 1; evening <= EVENINGS; evening++) {
            Story.Act act = story.acts().get(evening - 1);
            sketch.prepared = sketch.night(evening).plusDays(1);
            MedicineLedger before = ledger(sketch);
            RecordLine line = line(sketch, evening, act, act.shown());
            if (!act.shown().isEmpty() && chance.in100(50)) {
                misread(seed, chance, sketch, evening, act, before);
            }
            sketch.record.add(line);
            MedicineLedger after = ledger(sketch);
            String where = "seed " + seed + ", evening " + evening;
            assertEquals(List.of(), stops(after), where);
            containsTruth(where, after, contents);
            narrows(where, before, after, !act.shown().isEmpty());
        }
    }

    private static RecordLine line(PlanSketch sketch, int evening, Story.Act act, List<Long> shown) {
        if (act.deed().does() == Deed.Does.MISSED) {
            return sketch.line(evening, new Given.Missed());
        }
        String[] windows = shown.isEmpty()
                ? new String[] {"0"}
                : shown.stream().map(LivedCyclesTest::units).toArray(String[]::new);
        return sketch.line(evening, new Given.Amount(dose(act.dialled())), windows);
    }

    /** Another mark was told than the window showed; half of the slips are to one of the three marks beside it. */
    private void misread(
            long seed, Chance chance, PlanSketch sketch, int evening, Story.Act act, MedicineLedger before) {
        long right = act.shown().get(0);
        long wrong = right;
        while (wrong == right || wrong <= 0 || wrong > act.dialled()) {
            wrong = chance.in100(50) ? right + STEP * chance.from(-3, 3) : chance.markFrom(STEP, act.dialled(), STEP);
        }
        misread++;
        sketch.record.add(line(sketch, evening, act, List.of(wrong)));
        boolean isCaught = !stops(ledger(sketch)).isEmpty();
        sketch.record.remove(sketch.record.size() - 1);
        boolean isPossible = isPossible(before, sketch, evening, wrong);
        assertTrue(isPossible || isCaught, "seed " + seed + ", evening " + evening + ": " + wrong + " for " + right);
        if (isCaught) {
            outside++;
        } else {
            inside++;
            long error = Math.abs(wrong - right);
            largestError = Math.max(largestError, error);
            largestPercent = Math.max(largestPercent, error * 100 / act.dialled());
        }
    }

    /** Inside the range that was forecast for the evening, one step of tolerance on both sides. */
    private static boolean isPossible(MedicineLedger before, PlanSketch sketch, int evening, long number) {
        return before.day(sketch.night(evening)).orElseThrow().changes().stream()
                .filter(change -> !change.isRead())
                .map(DayChange::owed)
                .flatMap(Optional::stream)
                .anyMatch(owed -> isNear(owed, number));
    }

    private static boolean isNear(Owed owed, long number) {
        return number >= owed.least().milliUnits() - STEP
                && number <= owed.most().milliUnits() + STEP;
    }

    private static void containsTruth(String where, MedicineLedger ledger, List<Long> contents) {
        long total = 0;
        for (ContainerLine line : ledger.containers()) {
            total += contents.get(line.container().number() - 1);
            assertTrue(
                    line.leastTotal().milliUnits() <= total
                            && total <= line.mostTotal().milliUnits(),
                    where + ", box " + line.container().number() + ": " + line.leastTotal() + " to " + line.mostTotal()
                            + " without " + total);
        }
    }

    /** How many units the end after the coming one lies apart at most, before and after the report. */
    private void narrows(String where, MedicineLedger before, MedicineLedger after, boolean isStop) {
        for (int index = 0; index < before.containers().size(); index++) {
            assertTrue(
                    width(after.containers().get(index))
                            <= width(before.containers().get(index)),
                    where + ", box " + (index + 1) + " got wider");
        }
        Optional<ContainerLine> next = after.inUse();
        if (isStop && next.isPresent()) {
            int index = next.get().container().number() - 1;
            long was = width(before.containers().get(index));
            long is = width(next.get());
            reports++;
            if (width(before.containers().get(index - 1)) == 0) {
                // Earlier evenings that ran through had left only one content possible; the number confirms it.
                alreadyExact++;
                return;
            }
            assertTrue(is < was, where + ": a number that was read back leaves the next end as wide");
            narrowed.add(was - is);
            narrowedPercent.add((was - is) * 100 / was);
        }
    }

    private static long width(ContainerLine line) {
        return line.mostTotal().milliUnits() - line.leastTotal().milliUnits();
    }

    private static List<RecordDoubt> stops(MedicineLedger ledger) {
        return ledger.doubts().stream()
                .filter(doubt -> doubt.kind() != RecordDoubt.Kind.GAP)
                .toList();
    }

    private static MedicineLedger ledger(PlanSketch sketch) {
        PlanFiles files = sketch.files();
        return CycleLedger.of(files, Course.of(files)).medicines().get(0);
    }

    private static String units(long thousandths) {
        return dose(thousandths).number().toPlainString();
    }

    private static Dose dose(long thousandths) {
        return new Dose(thousandths, DoseUnit.UNITS);
    }

    private String figures() {
        return String.format(
                Locale.ROOT,
                "%d patients, %d evenings each, %d stops reported; the truth was always inside%n"
                        + "%d numbers misread: %d caught, %d (%d%%) inside the possible range and not caught%n"
                        + "largest dose error of one not caught: %s units (%d%% of the dose)%n"
                        + "a report narrows the next end by %s units (%d%%) at the median, %s (%d%%) at the worst; "
                        + "%d reports found it exact already%n",
                PATIENTS,
                EVENINGS,
                reports,
                misread,
                outside,
                inside,
                inside * 100 / misread,
                units(largestError),
                largestPercent,
                units(median(narrowed)),
                median(narrowedPercent),
                units(Collections.min(narrowed)),
                Collections.min(narrowedPercent),
                alreadyExact);
    }

    private static long median(List<Long> values) {
        List<Long> sorted = values.stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }
}
