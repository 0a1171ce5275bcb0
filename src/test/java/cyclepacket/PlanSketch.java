package cyclepacket;

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
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.plan.Revision;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.TemperatureRange;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A small plan for one pen, built by hand for a test; everything in it is invented. */
public final class PlanSketch {
    public static final String PEN = "pen";
    public LocalDate start = LocalDate.of(2027, 3, 5);
    public int days = 13;
    public Device.Window window = Device.Window.OWED;
    public String least = "25";
    public String step = "25";
    public String most = "450";
    public int openedDays = 28;
    /** What it is instead of a pen. */
    public Optional<Device> other = Optional.empty();

    public HouseRules.SplitDose split = HouseRules.SplitDose.EQUAL;
    public HouseRules.BetweenMarks between = HouseRules.BetweenMarks.UP;
    public HouseRules.InUseDayOne dayOne = HouseRules.InUseDayOne.FIRST_USE;
    public HouseRules.SmallRemainder small =
            new HouseRules.SmallRemainder(BigDecimal.ZERO, HouseRules.SmallRemainder.Do.CALL);
    public int issue = 1;
    public LocalDate prepared = LocalDate.of(2027, 3, 3);
    public Optional<LocalDateTime> retrieval = Optional.empty();
    public ZoneId clinicZone = ZoneId.of("America/New_York");
    public ZoneId patientZone = ZoneId.of("America/New_York");
    public LocalTime evening = LocalTime.of(20, 30);
    public Map<LocalDate, String> doses = new LinkedHashMap<>();
    public List<Medicine.Size> sizes = new ArrayList<>();
    public List<Plan.Stock> stock = new ArrayList<>();
    public List<RecordLine> record = new ArrayList<>();
    public List<Plan.Call> called = new ArrayList<>();
    public List<Revision> revised = new ArrayList<>();

    /** A size with its least and most content. */
    public PlanSketch size(String label, String leastGiven, String mostGiven) {
        sizes.add(
                new Medicine.Size(units(label), new DoseRange(units(leastGiven), units(mostGiven)), Optional.empty()));
        return this;
    }

    public PlanSketch home(String... labels) {
        Arrays.stream(labels)
                .forEach(label -> stock.add(new Plan.Stock(
                        units(label), 1, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty())));
        return this;
    }

    /** The daily dose from evening {@code number} on, counted from 1. */
    public PlanSketch dose(int number, String amount) {
        doses.put(start.plusDays(number - 1L), amount);
        return this;
    }

    /** What happened on evening {@code number}: given, and the windows read; a stop counts as read back. */
    public PlanSketch happened(int number, String given, String... windows) {
        record.add(line(number, new Given.Amount(units(given)), windows));
        return passed(number);
    }

    public PlanSketch happened(int number, Given given) {
        record.add(line(number, given));
        return passed(number);
    }

    public RecordLine line(int number, Given given, String... windows) {
        List<Dose> read = Arrays.stream(windows).map(PlanSketch::units).toList();
        return new RecordLine(
                night(number),
                PEN,
                1,
                Optional.empty(),
                given,
                read,
                Optional.of(RecordLine.Plunger.END).filter(end -> read.stream().anyMatch(dose -> !dose.isZero())),
                true,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());
    }

    private PlanSketch passed(int number) {
        issue = 2;
        prepared = night(number).plusDays(1);
        return this;
    }

    public LocalDate night(int number) {
        return start.plusDays(number - 1L);
    }

    public static Dose units(String amount) {
        return Dose.ofUnits(amount);
    }

    public Medicine medicine() {
        Device pen = new Device.CartridgePen(
                window,
                new Dial(units(least), units(step), units(most)),
                new Device.Needle(30, Length.parse("8 mm")),
                Device.Prime.EACH_NEW_CARTRIDGE,
                openedDays);
        return new Medicine(
                PEN,
                "follitropin",
                "evening pen",
                "helps several eggs grow",
                other.orElse(pen),
                DoseUnit.UNITS,
                "under the skin",
                Duration.ofSeconds(10),
                sizes,
                Optional.empty(),
                false,
                Optional.empty(),
                new Medicine.Storage(TemperatureRange.parse("2-8 C"), Optional.of(TemperatureRange.parse("2-25 C"))),
                List.of(),
                "invented for a test");
    }

    public Clinic clinic() {
        HouseRules rules = new HouseRules(
                split,
                between,
                dayOne,
                small,
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
        Pharmacy pharmacy = new Pharmacy(
                "the pharmacy",
                LocalTime.of(14, 0),
                Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY),
                1,
                0,
                Set.of(),
                Optional.empty());
        return new Clinic(
                "Invented Clinic",
                clinicZone,
                "USD",
                "US",
                new Clinic.Phone("+1 207 555 0142", "weekdays"),
                new Clinic.Phone("+1 207 555 0177", "nights"),
                "911",
                Set.of(),
                rules,
                pharmacy,
                new Clinic.Approval(List.of("nurse lead"), LocalDate.of(2030, 1, 1)));
    }

    public PlanFiles files() {
        Protocol protocol = new Protocol(
                "sketch",
                "A sketch",
                Map.of(Anchor.S1, "first injection", Anchor.R, "egg retrieval", Anchor.T, "trigger"),
                Map.of(Anchor.R, Duration.ofHours(36)),
                new Protocol.StimulationDays(1, Math.min(10, days), days),
                List.of(new Protocol.Row(PEN, DayMark.parse("S1"), DayMark.parse("T-1"), "evening", Optional.empty())),
                List.of());
        Map<Anchor, Plan.Moment> anchors = new LinkedHashMap<>();
        anchors.put(Anchor.S1, new Plan.Moment(start, Optional.empty(), Optional.empty()));
        retrieval.ifPresent(at -> anchors.put(
                Anchor.R, new Plan.Moment(at.toLocalDate(), Optional.of(at.toLocalTime()), Optional.empty())));
        List<Plan.DoseLine> lines = doses.entrySet().stream()
                .map(line -> new Plan.DoseLine(
                        new DayMark.Dated(line.getKey()), units(line.getValue()), Optional.of("ORD-1")))
                .toList();
        Plan plan = new Plan(
                "SK-1",
                issue,
                Optional.empty(),
                new Plan.Patient(
                        "Invented Person", Optional.of(LocalDate.of(1990, 1, 1)), Optional.of("1"), patientZone),
                "en",
                Plan.Paper.LETTER,
                Plan.TextSize.STANDARD,
                List.of(),
                new Plan.Order("invented prescriber", Optional.of("ORD-1"), prepared),
                "sketch",
                anchors,
                called,
                Map.of("evening", evening),
                Map.of(PEN, lines),
                Map.of(PEN, stock),
                record,
                List.of(),
                new Plan.Prepared("invented navigator", prepared),
                Optional.empty(),
                revised,
                Optional.empty());
        return new PlanFiles(
                plan,
                clinic(),
                protocol,
                Map.of(PEN, medicine()),
                "plan.yaml",
                "clinic.yaml",
                "protocol.yaml",
                Map.of());
    }
}
