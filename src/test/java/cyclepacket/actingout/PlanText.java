package cyclepacket.actingout;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Device;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Pharmacy;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.plan.RecordLine;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.TemperatureRange;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Writes a case as the files that a clinic would have: an invented clinic, one pen, one protocol row, one plan. */
final class PlanText {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final LocalTime EVENING = LocalTime.of(20, 30);

    private PlanText() {}

    static PlanFiles of(Case plan) {
        return new PlanFiles(
                planOf(plan),
                clinic(plan),
                protocol(plan),
                Map.of(Case.MEDICINE, medicine(plan)),
                "plan",
                "clinic",
                "protocol",
                Map.of(Case.MEDICINE, "medicine"));
    }

    private static Plan planOf(Case plan) {
        LocalDate start = CaseMaker.FIRST_EVENING;
        List<RecordLine> record = plan.recordOf(plan.live(plan.truth()));
        int past = plan.pastEvenings();
        LocalDate today = past == 0 ? start.minusDays(2) : start.plusDays(past);
        Plan.Moment atStart = new Plan.Moment(start, Optional.empty(), Optional.empty());
        return new Plan(
                "AO-1",
                past == 0 ? 1 : 2,
                past == 0 ? Optional.empty() : Optional.of(1),
                new Plan.Patient("Invented Person", Optional.empty(), Optional.of("1"), ZONE),
                "en",
                Plan.Paper.A4,
                Plan.TextSize.STANDARD,
                List.of(),
                new Plan.Order("an invented prescriber", Optional.of("O-1"), start.minusDays(3)),
                "acted",
                Map.of(Anchor.S1, atStart),
                List.of(new Plan.Call(
                        Anchor.S1, atStart, Optional.of("O-1"), "a nurse", "the patient", start.minusDays(2), true)),
                Map.of("evening", EVENING),
                Map.of(Case.MEDICINE, doses(plan)),
                Map.of(Case.MEDICINE, stock(plan)),
                record,
                List.of(),
                new Plan.Prepared("a nurse", today),
                Optional.empty());
    }

    private static List<Plan.DoseLine> doses(Case plan) {
        List<Plan.DoseLine> lines = new ArrayList<>();
        long before = 0;
        for (Evening evening : plan.evenings()) {
            if (evening.dose() != before) {
                lines.add(
                        new Plan.DoseLine(new DayMark.Dated(evening.date()), dose(evening.dose()), Optional.of("O-1")));
                before = evening.dose();
            }
        }
        return lines;
    }

    /** Each box is its own size, labelled by its place, so that every box may have its own range. */
    private static List<Plan.Stock> stock(Case plan) {
        return IntStream.range(0, plan.boxes().size())
                .mapToObj(index -> new Plan.Stock(
                        label(index),
                        1,
                        Optional.empty(),
                        Optional.empty(),
                        plan.started().filter(before -> index == 0).map(Started::openedOn),
                        plan.started().filter(before -> index == 0).map(before -> dose(before.used()))))
                .toList();
    }

    private static Medicine medicine(Case plan) {
        Pen pen = plan.pen();
        return new Medicine(
                Case.MEDICINE,
                "an invented medicine",
                "evening pen",
                "invented",
                new Device.CartridgePen(
                        pen.window(),
                        new Dial(dose(pen.dialLeast()), dose(pen.step()), dose(pen.dialMost())),
                        new Device.Needle(30, new Length(8000)),
                        Device.Prime.EACH_NEW_CARTRIDGE,
                        pen.openedDays()),
                DoseUnit.UNITS,
                "under the skin",
                Duration.ofSeconds(10),
                IntStream.range(0, plan.boxes().size())
                        .mapToObj(index -> size(index, plan.boxes().get(index)))
                        .toList(),
                Optional.empty(),
                false,
                Optional.empty(),
                new Medicine.Storage(new TemperatureRange(2, 8), Optional.of(new TemperatureRange(2, 25))),
                List.of(),
                "invented for the acting-out");
    }

    private static Medicine.Size size(int index, Box box) {
        return new Medicine.Size(label(index), new DoseRange(dose(box.least()), dose(box.most())), Optional.empty());
    }

    private static Protocol protocol(Case plan) {
        int evenings = plan.evenings().size();
        return new Protocol(
                "acted",
                "invented",
                Map.of(Anchor.S1, "first evening"),
                Map.of(),
                new Protocol.StimulationDays(1, evenings, evenings),
                List.of(new Protocol.Row(
                        Case.MEDICINE,
                        new DayMark.FromAnchor(Anchor.S1, 0),
                        new DayMark.FromAnchor(Anchor.S1, evenings - 1),
                        "evening",
                        Optional.empty())),
                List.of());
    }

    private static Clinic clinic(Case plan) {
        Clinic.Phone phone = new Clinic.Phone("+1 207 555 0142", "always");
        return new Clinic(
                "an invented clinic",
                ZONE,
                "USD",
                "US",
                phone,
                phone,
                "911",
                Set.of(),
                rules(plan.pen()),
                new Pharmacy(
                        "the pharmacy",
                        LocalTime.of(14, 0),
                        Set.of(DayOfWeek.MONDAY),
                        1,
                        0,
                        Set.of(),
                        Optional.empty()),
                new Clinic.Approval(List.of("nurse lead"), LocalDate.parse("2028-06-30")));
    }

    private static HouseRules rules(Pen pen) {
        return new HouseRules(
                pen.fullDialFirst() ? HouseRules.SplitDose.FULL_DIAL_FIRST : HouseRules.SplitDose.EQUAL,
                HouseRules.BetweenMarks.UP,
                pen.dayAfter() ? HouseRules.InUseDayOne.DAY_AFTER : HouseRules.InUseDayOne.FIRST_USE,
                new HouseRules.SmallRemainder(BigDecimal.ZERO, HouseRules.SmallRemainder.Do.GIVE),
                new HouseRules.LeadHours(
                        Duration.ofHours(34), Duration.ofHours(38), Duration.ofHours(30), Duration.ofHours(42)),
                LocalTime.of(18, 0),
                Map.of(),
                true,
                List.of("nurse"),
                LocalTime.of(15, 0),
                Map.of(),
                2,
                HouseRules.SwabSkin.ALCOHOL,
                Map.of(),
                Optional.empty());
    }

    private static Dose label(int index) {
        return dose((index + 1) * 1000L);
    }

    private static Dose dose(long thousandths) {
        return new Dose(thousandths, DoseUnit.UNITS);
    }
}
