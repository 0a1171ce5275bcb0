package cyclepacket.page;

import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
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
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.TemperatureRange;
import cyclepacket.supply.SupplyPlan;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The invented course that the demo shows, in its three issues, built by hand so that pages need no file reader. */
public final class DemoPlan {
    static final Path TEMPLATES = Path.of("templates");
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    public int issue;
    public Plan.Paper paper = Plan.Paper.LETTER;
    public Plan.TextSize textSize = Plan.TextSize.STANDARD;
    public boolean draft;
    public boolean startCalled = true;
    public Device.Window window = Device.Window.OWED;
    public Device.Prime prime = Device.Prime.EACH_NEW_CARTRIDGE;
    public HouseRules.SwabSkin swab = HouseRules.SwabSkin.ALCOHOL;
    public List<String> avoid = List.of();
    public Map<String, String> thresholds = Map.of("weight-gain", "2 lb in 24 h", "fever", "100.4 F");
    public ZoneId patientZone = NEW_YORK;
    public String firstDose = "187.5";
    public String dialMost = "400";
    /** The day this issue was prepared, where it is not the demo's own. */
    public Optional<LocalDate> preparedOn = Optional.empty();
    /** What the record says of the evening before an issue; the whole dose unless a test says otherwise. */
    public Optional<Given> lastEvening = Optional.empty();

    public DemoPlan(int issue) {
        this.issue = issue;
    }

    /** What a packet of this issue is made from. */
    public PacketFacts facts() {
        PlanFiles files = files();
        Course course = Course.of(files);
        CycleLedger ledger = CycleLedger.of(files, course);
        return new PacketFacts(
                files,
                course,
                ledger,
                SupplyPlan.of(files, ledger),
                List.of("7QHX-4TRW", "H3VD-90HN", "W8FP-2XJC").get(issue - 1),
                draft,
                Optional.of(march(issue == 2 ? 3 : 9)).filter(day -> issue > 1));
    }

    public PacketView view() {
        return new PacketViews(facts(), Wording.load(TEMPLATES, "en")).view();
    }

    public PlanFiles files() {
        Map<String, Medicine> medicines = new LinkedHashMap<>();
        List.of(
                        pen(),
                        syringe("antagonist-syringe", "ganirelix", "small syringe"),
                        syringe("trigger-syringe", "choriogonadotropin alfa", "one-time syringe"))
                .forEach(medicine -> medicines.put(medicine.id(), medicine));
        return new PlanFiles(
                plan(), clinic(), protocol(), medicines, "plan.yaml", "clinic.yaml", "protocol.yaml", Map.of());
    }

    private Medicine pen() {
        Device device = new Device.CartridgePen(
                window,
                new Dial(units("12.5"), units("12.5"), units(dialMost)),
                new Device.Needle(30, Length.parse("8 mm")),
                prime,
                28);
        return new Medicine(
                "fsh-pen",
                "follitropin",
                "evening pen",
                "helps several eggs grow at the same time",
                device,
                DoseUnit.UNITS,
                "under the skin",
                Duration.ofSeconds(10),
                List.of(size("300", "360"), size("600", "720"), size("900", "1035")),
                Optional.empty(),
                false,
                Optional.empty(),
                new Medicine.Storage(TemperatureRange.parse("2-8 C"), Optional.of(TemperatureRange.parse("2-25 C"))),
                List.of(),
                "invented for the demo");
    }

    private static Medicine.Size size(String label, String most) {
        return new Medicine.Size(units(label), new DoseRange(units(label), units(most)), Optional.empty());
    }

    private static Medicine syringe(String id, String name, String doorName) {
        boolean trigger = id.startsWith("trigger");
        Dose dose = trigger ? Dose.parse("250 mcg") : Dose.parse("0.25 mg");
        return new Medicine(
                id,
                name,
                doorName,
                trigger ? "makes the eggs ready for retrieval" : "keeps the eggs from being released too early",
                new Device.ReadySyringe(),
                dose.unit(),
                "under the skin",
                Duration.ofSeconds(5),
                List.of(new Medicine.Size(dose, DoseRange.exactly(dose), Optional.empty())),
                Optional.empty(),
                trigger,
                trigger ? Optional.empty() : Optional.of(Duration.ofHours(30)),
                new Medicine.Storage(TemperatureRange.parse(trigger ? "2-8 C" : "2-25 C"), Optional.empty()),
                List.of(),
                "invented for the demo");
    }

    private static Protocol protocol() {
        return new Protocol(
                "antagonist-fixed",
                "Antagonist cycle with a fixed start",
                Map.of(Anchor.S1, "first stimulation injection", Anchor.R, "egg retrieval", Anchor.T, "trigger"),
                Map.of(Anchor.R, Duration.ofHours(36)),
                new Protocol.StimulationDays(8, 10, 13),
                List.of(
                        new Protocol.Row(
                                "fsh-pen", DayMark.parse("S1"), DayMark.parse("T-1"), "evening", Optional.empty()),
                        new Protocol.Row(
                                "antagonist-syringe",
                                DayMark.parse("S6"),
                                DayMark.parse("T-1"),
                                "evening",
                                Optional.of(Dose.parse("0.25 mg"))),
                        new Protocol.Row(
                                "trigger-syringe",
                                DayMark.parse("T"),
                                DayMark.parse("T"),
                                Protocol.Row.EXACT,
                                Optional.of(Dose.parse("250 mcg")))),
                List.of(
                        new Protocol.Visit(DayMark.parse("S5"), LocalTime.of(7, 30), "ultrasound and blood test"),
                        new Protocol.Visit(DayMark.parse("S8"), LocalTime.of(7, 30), "ultrasound and blood test")));
    }

    private Clinic clinic() {
        HouseRules rules = new HouseRules(
                HouseRules.SplitDose.EQUAL,
                HouseRules.BetweenMarks.UP,
                HouseRules.InUseDayOne.FIRST_USE,
                new HouseRules.SmallRemainder(new BigDecimal("12.5"), HouseRules.SmallRemainder.Do.CALL),
                new HouseRules.LeadHours(
                        Duration.ofHours(34), Duration.ofHours(38), Duration.ofHours(30), Duration.ofHours(42)),
                LocalTime.of(18, 0),
                Map.of("fsh-pen", "none"),
                true,
                List.of("nurse", "navigator"),
                LocalTime.of(15, 0),
                thresholds,
                2,
                swab,
                Map.of(
                        "fsh-pen", "Call the clinic before you take it. Never take two doses at once.",
                        "antagonist-syringe", "Call at once, day or night.",
                        "trigger-syringe", "Call at once, day or night."),
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
                "Saltmarsh Fertility Clinic (invented)",
                NEW_YORK,
                "USD",
                "US",
                new Clinic.Phone("+1 207 555 0142", "weekdays 08:00-16:30"),
                new Clinic.Phone("+1 207 555 0177", "every night and weekend"),
                "911",
                Set.of(),
                rules,
                pharmacy,
                new Clinic.Approval(List.of("nurse lead"), LocalDate.of(2028, 6, 30)));
    }

    private Plan plan() {
        Map<Anchor, Plan.Moment> anchors = new LinkedHashMap<>();
        anchors.put(Anchor.S1, new Plan.Moment(march(5), Optional.empty(), Optional.empty()));
        if (issue > 1) {
            anchors.put(Anchor.R, new Plan.Moment(march(15), Optional.of(LocalTime.of(8, 30)), Optional.empty()));
        }
        List<Plan.DoseLine> doses = new ArrayList<>();
        doses.add(new Plan.DoseLine(DayMark.parse("S1"), units(firstDose), Optional.of("ORD-1180")));
        if (issue > 1) {
            doses.add(new Plan.DoseLine(DayMark.parse("2027-03-09"), units("212.5"), Optional.of("ORD-1192")));
        }
        LocalDate prepared = preparedOn.orElse(march(issue == 1 ? 3 : issue == 2 ? 9 : 12));
        return new Plan(
                "SM-04417",
                issue,
                Optional.of(issue - 1).filter(earlier -> earlier > 0),
                new Plan.Patient(
                        "Wren Hollis", Optional.of(LocalDate.of(1990, 4, 17)), Optional.of("7730418"), patientZone),
                "en",
                paper,
                textSize,
                avoid,
                new Plan.Order("M. Arkwright (invented prescriber)", Optional.of("ORD-1180"), prepared),
                "antagonist-fixed",
                anchors,
                calls(),
                Map.of("evening", LocalTime.of(20, 30)),
                Map.of("fsh-pen", doses),
                onHand(),
                record(),
                List.of(),
                new Plan.Prepared("T. Okonjo (invented)", prepared),
                Optional.empty());
    }

    private List<Plan.Call> calls() {
        List<Plan.Call> calls = new ArrayList<>();
        if (startCalled) {
            calls.add(call(Anchor.S1, new Plan.Moment(march(5), Optional.empty(), Optional.empty()), march(3)));
        }
        if (issue == 3) {
            LocalTime home = java.time.ZonedDateTime.of(march(13), LocalTime.of(19, 30), NEW_YORK)
                    .withZoneSameInstant(patientZone)
                    .toLocalTime();
            calls.add(call(Anchor.T, new Plan.Moment(march(13), Optional.of(home), Optional.empty()), march(12)));
        }
        return calls;
    }

    private static Plan.Call call(Anchor anchor, Plan.Moment at, LocalDate on) {
        return new Plan.Call(anchor, at, Optional.of("ORD-1"), "T. Okonjo (invented)", "the patient", on, true);
    }

    private Map<String, List<Plan.Stock>> onHand() {
        List<Plan.Stock> cartridges =
                new ArrayList<>(List.of(stock(units("600"), 1, "FA-2231"), stock(units("900"), 1, "FA-2307")));
        if (issue == 3) {
            cartridges.add(stock(units("300"), 1, "FA-2388"));
        }
        return Map.of(
                "fsh-pen", cartridges,
                "antagonist-syringe", List.of(stock(Dose.parse("0.25 mg"), 5, "GA-1")),
                "trigger-syringe", List.of(stock(Dose.parse("250 mcg"), 1, "CA-1")));
    }

    private static Plan.Stock stock(Dose size, int count, String lot) {
        return new Plan.Stock(
                size,
                count,
                Optional.of(lot),
                Optional.of(LocalDate.of(2028, 2, 28)),
                Optional.empty(),
                Optional.empty());
    }

    private List<RecordLine> record() {
        List<RecordLine> lines = new ArrayList<>();
        int until = preparedOn.map(day -> day.getDayOfMonth() - 1).orElse(issue == 1 ? 4 : issue == 2 ? 8 : 11);
        for (int day = 5; day <= until; day++) {
            boolean change = day == 8;
            boolean told = day == until && lastEvening.isPresent();
            Given given = told ? lastEvening.get() : new Given.Amount(units(day < 9 ? "187.5" : "212.5"));
            List<Dose> windows = told ? List.of() : List.of(units(change ? "87.5" : "0"));
            lines.add(line(day, "fsh-pen", given, windows, change && !told));
            if (day >= 10) {
                lines.add(line(day, "antagonist-syringe", new Given.Amount(Dose.parse("0.25 mg")), List.of(), false));
            }
        }
        return lines;
    }

    private static RecordLine line(int day, String medicine, Given given, List<Dose> windows, boolean end) {
        return new RecordLine(
                march(day),
                medicine,
                1,
                Optional.empty(),
                given,
                windows,
                Optional.of(RecordLine.Plunger.END).filter(plunger -> end),
                end,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());
    }

    static Dose units(String amount) {
        return Dose.ofUnits(amount);
    }

    static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }
}
