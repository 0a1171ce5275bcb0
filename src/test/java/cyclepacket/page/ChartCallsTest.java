package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.course.Course;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.plan.RecordLine.Plunger;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the on-call table prints is what the plan says once the reading is in its record. */
class ChartCallsTest {
    private static final String EVENING = "(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) (\\d+ \\w{3})";
    private static final Pattern ROW = Pattern.compile(EVENING + " (\\d+) ([\\d.,]+) ([\\d.,]+) (?:box (\\d+) "
            + EVENING + " (?:" + EVENING + "|(later))|(no box left|none in this course) none none)");

    private static MedicineLedger pen(PlanFiles files) {
        return CycleLedger.of(files, Course.of(files)).medicines().stream()
                .filter(ledger -> ledger.medicine().device().pen().isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static List<MatchResult> rows(PlanFiles files) {
        String text = ChartLines.text(ChartSamples.pdf(ChartSamples.source(files)));
        String calls =
                text.substring(text.indexOf("The end after the coming one"), text.indexOf("6. Teach-back record"));
        return ROW.matcher(calls).results().toList();
    }

    @TestFactory
    Stream<DynamicTest> findsEveryPrintedNextEndInThePlanWithThatReading() {
        Map<String, PlanFiles> odd = ChartOddPlans.all();
        List<DynamicTest> tests = new ArrayList<>();
        for (int issue = 1; issue <= 3; issue++) {
            PlanFiles files = ChartSamples.demo(issue);
            tests.add(DynamicTest.dynamicTest("demo issue " + issue, () -> findsNextEnds(files)));
        }
        for (String name : List.of(
                "split dose",
                "pen that shows what is left",
                "unknown injection",
                "in-use limit, several openings",
                "seed 3")) {
            tests.add(DynamicTest.dynamicTest(name, () -> findsNextEnds(odd.get(name))));
        }
        return tests.stream();
    }

    private static void findsNextEnds(PlanFiles files) {
        MedicineLedger ledger = pen(files);
        List<MatchResult> rows = rows(files);
        assertFalse(rows.isEmpty());
        assertEquals(ledger.lookUp().size(), rows.size());
        int leaving = ledger.coming().orElseThrow().container().number();
        for (MatchResult row : rows) {
            LocalDate evening =
                    ChartTrailText.day(row.group(1), files.plan().prepared().on());
            Dose window = dose(ledger, row.group(3));
            Dose fromNew = dose(ledger, row.group(4));
            PlanFiles read = recorded(files, ledger, evening, Integer.parseInt(row.group(2)), window);
            List<ContainerLine> containers = pen(read).containers();
            assertEquals(fromNew, stillOwed(pen(read), leaving), row::group);
            assertNextEnd(row, leaving, containers);
        }
    }

    private static Dose dose(MedicineLedger ledger, String number) {
        return Dose.of(number.replace(",", ""), ledger.medicine().unit());
    }

    private static Dose stillOwed(MedicineLedger ledger, int leaving) {
        return ledger.days().stream()
                .flatMap(day -> day.changes().stream())
                .filter(change -> change.leaving() == leaving && change.isRead())
                .findFirst()
                .flatMap(change -> change.owed())
                .orElseThrow()
                .most();
    }

    private static void assertNextEnd(MatchResult row, int leaving, List<ContainerLine> containers) {
        if (row.group(9) != null) {
            assertEquals(row.group(9).equals("no box left"), containers.size() == leaving, row::group);
            assertTrue(
                    containers.size() == leaving
                            || containers.get(leaving).firstEnd().isEmpty(),
                    row::group);
            return;
        }
        ContainerLine next = containers.get(leaving);
        assertEquals(leaving + 1, Integer.parseInt(row.group(5)), row::group);
        assertEquals(row.group(6), printed(next.firstEnd()), row::group);
        assertEquals(row.group(8) == null ? row.group(7) : "none", printed(next.lastEnd()), row::group);
    }

    private static String printed(Optional<LocalDate> date) {
        return date.map(day -> day.getDayOfMonth() + " "
                        + "JanFebMarAprMayJunJulAugSepOctNovDec"
                                .substring(3 * day.getMonthValue() - 3, 3 * day.getMonthValue()))
                .orElse("none");
    }

    /** The plan as the navigator writes it after the call: earlier injections ran through, then this reading. */
    private static PlanFiles recorded(
            PlanFiles files, MedicineLedger ledger, LocalDate evening, int setting, Dose window) {
        List<RecordLine> record = new ArrayList<>(files.plan().record());
        for (LedgerDay day : ledger.days()) {
            Evening own = day.evening();
            for (int number = 1; own.isToCome() && number <= own.settings().size(); number++) {
                boolean isEarlier = own.date().isBefore(evening) || own.date().equals(evening) && number < setting;
                boolean isIt = own.date().equals(evening) && number == setting;
                if (isEarlier || isIt) {
                    record.add(line(ledger, own, number, isIt ? Optional.of(window) : Optional.empty()));
                }
            }
        }
        return with(files, record, evening);
    }

    private static RecordLine line(MedicineLedger ledger, Evening evening, int number, Optional<Dose> window) {
        Medicine medicine = ledger.medicine();
        Dose dose = evening.settings().get(number - 1);
        boolean owed = medicine.device().pen().orElseThrow().window() == Window.OWED;
        List<Dose> windows = window.map(List::of).orElse(owed ? List.of(Dose.zero(medicine.unit())) : List.of());
        return new RecordLine(
                evening.date(),
                medicine.id(),
                number,
                Optional.of(dose),
                new Given.Amount(dose),
                windows,
                window.map(shown -> Plunger.END),
                true,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());
    }

    private static PlanFiles with(PlanFiles files, List<RecordLine> record, LocalDate today) {
        Plan plan = files.plan();
        Plan changed = new Plan(
                plan.id(),
                plan.issue(),
                plan.replaces(),
                plan.patient(),
                plan.language(),
                plan.paper(),
                plan.textSize(),
                plan.avoid(),
                plan.order(),
                plan.protocol(),
                plan.anchors(),
                plan.called(),
                plan.times(),
                plan.doses(),
                plan.onHand(),
                record,
                plan.overrides(),
                new Plan.Prepared(plan.prepared().by(), today),
                plan.countersigned());
        return new PlanFiles(
                changed,
                files.clinic(),
                files.protocol(),
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
    }

    @Test
    void listsEveryNumberOfAnEveningOnceAsFittingOrNot() {
        PlanFiles files = ChartSamples.demo(1);
        ChartView.Calls calls = ChartViews.of(ChartSamples.source(files), Wording.load(ChartSamples.TEMPLATES, "en"))
                .calls()
                .get(0);
        List<String> change = calls.evenings().rows().get(3).cells();
        assertEquals("37.5 to 150: box 1 ends", change.get(4).replace('\u00a0', ' '));
        assertEquals("0, 12.5 to 25, 162.5 to 187.5", change.get(5).replace('\u00a0', ' '));
        List<String> quiet = calls.evenings().rows().get(0).cells();
        assertEquals("0", quiet.get(4));
        assertEquals("12.5 to 187.5", quiet.get(5).replace('\u00a0', ' '));
    }
}
