package cyclepacket.page;

import cyclepacket.course.DatedVisit;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.Device;
import cyclepacket.plan.DisposablePen;
import cyclepacket.plan.ExtraPart;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Protocol;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes the whole packet's view from the computed plan, in the language of one folder of wording. */
public final class PacketViews {
    /** How long the warning signs stay up after a cancelled cycle, in days. */
    private static final int SIGNS_STAY = 14;

    private final PacketFacts facts;
    private final Words words;
    private final boolean translated;

    public PacketViews(PacketFacts facts, Wording wording) {
        this(facts, wording, wording.isTranslated());
    }

    /** @param translated whether pages are divided as for longer words, also where these are the source's own */
    PacketViews(PacketFacts facts, Wording wording, boolean translated) {
        this.facts = facts;
        this.translated = translated;
        this.words = Words.of(
                wording(wording, hasWholePens(facts)),
                wording.isTranslated()
                        ? facts.files().clinic().texts().in(facts.files().plan().language())
                        : Map.of());
    }

    /** The sentences about pens that are thrown away whole, where they are the only pens. */
    static Wording wording(Wording wording, boolean wholePens) {
        return wholePens ? wording.variant("whole-pen") : wording;
    }

    private static boolean hasWholePens(PacketFacts facts) {
        List<Device> pens = facts.files().medicines().values().stream()
                .map(Medicine::device)
                .filter(device -> device.pen().isPresent())
                .toList();
        return !pens.isEmpty() && pens.stream().allMatch(DisposablePen.class::isInstance);
    }

    /** What becomes of eggs in this course, which decides what the signs of trouble are. */
    private String eggs() {
        Protocol protocol = facts.files().protocol();
        if (protocol.anchors().containsKey(new Anchor("R"))) {
            return "collected";
        }
        return protocol.stimulationDays().isPresent() ? "grown" : "none";
    }

    public PacketView view() {
        DoorView door = new DoorViews(facts, words).view();
        List<CartridgesView> cartridges = cartridges();
        List<MedicineView> medicines = new MedicineViews(facts, words).views();
        Optional<TriggerView> trigger = new TriggerViews(facts, words).view();
        SitesViews spots = new SitesViews(facts, words);
        Optional<SitesView> sites = spots.view();
        Optional<ChangedView> changed = new ChangedViews(facts, words).view();
        return new PacketView(
                issue(),
                person(),
                phones(),
                layout(),
                new StartView(tonight(door), visit(), parts(cartridges, medicines, trigger, sites, changed)),
                door,
                new DaysViews(facts, words, sites.filter(SitesView::inDays).isPresent() ? spots.spots() : Map.of())
                        .view(),
                cartridges,
                medicines,
                trigger,
                sites,
                facts.waiting().stream().map(Medicine::doorName).toList(),
                facts.files().protocol().aim().name().toLowerCase(Locale.ROOT),
                eggs(),
                hasWholePens(facts),
                new SupplyViews(facts, words).view(),
                new CareViews(facts, words).trouble(),
                new CareViews(facts, words).storage(),
                LogViews.of(facts.files().plan(), door, linesAboveLog()),
                changed,
                facts.files().clinic().texts().ownLines(),
                has(ExtraPart.HELPER),
                has(ExtraPart.TRAVEL) ? Optional.of(new TravelViews(facts, words).view()) : Optional.empty());
    }

    /** Times of visits are the clinic's. */
    private Optional<StartView.Visit> visit() {
        return facts.course().visits().stream()
                .filter(next -> next.date().isAfter(facts.today()))
                .min(Comparator.comparing(DatedVisit::at))
                .map(next -> new StartView.Visit(
                        words.clock().day(next.date()),
                        words.clock().time(next.at().toLocalTime()),
                        next.what()));
    }

    private boolean has(ExtraPart part) {
        return facts.files().with().contains(part);
    }

    /** A log that follows another says so, and a clinic may add a sentence. */
    private int linesAboveLog() {
        return (facts.files().plan().replaces().isPresent() ? 1 : 0)
                + (facts.files().clinic().texts().ownLines().containsKey("log") ? 2 : 0);
    }

    /** The door page's evenings, one a card. */
    EveningCardsView cards() {
        return new EveningCardViews(facts, words, view()).view();
    }

    /** The one page of a cycle that was cancelled; empty for one that goes on. */
    Optional<StopView> stop() {
        return facts.course()
                .cancelledFrom()
                .map(from -> new StopView(
                        issue(),
                        person(),
                        phones(),
                        layout(),
                        new CareViews(facts, words).trouble(),
                        words.clock().day(from),
                        words.clock().day(from.plusDays(SIGNS_STAY))));
    }

    private List<CartridgesView> cartridges() {
        return facts.daily().stream()
                .flatMap(ledger -> ledger.medicine().device().pen().stream()
                        .map(pen -> new CartridgesViews(facts, words, ledger, pen).view()))
                .toList();
    }

    IssueView issue() {
        Plan plan = facts.files().plan();
        return new IssueView(
                plan.id(),
                Integer.toString(plan.issue()),
                facts.code(),
                facts.draft(),
                facts.course().isStartCalled(),
                facts.files().clinic().name(),
                words.clock().dateAndYear(plan.prepared().on()),
                plan.replaces()
                        .map(number -> new IssueView.Replaced(
                                Integer.toString(number), facts.replacedOn().map(words.clock()::date))));
    }

    PersonView person() {
        Plan.Patient patient = facts.files().plan().patient();
        List<String> identifiers = new ArrayList<>();
        identifiers.add(patient.name());
        patient.born()
                .map(born -> words.fill("born", Map.of("date", words.clock().dateAndYear(born))))
                .or(() -> patient.number().map(number -> words.fill("number", Map.of("number", number))))
                .ifPresent(identifiers::add);
        // A name may begin with a hyphen, before which there is nothing.
        String initials = Arrays.stream(patient.name().trim().split("[\\s-]+"))
                .filter(word -> !word.isEmpty())
                .map(word -> word.substring(0, word.offsetByCodePoints(0, 1)))
                .collect(Collectors.joining())
                .toUpperCase(Locale.ROOT);
        return new PersonView(patient.name(), initials, identifiers);
    }

    private PhonesView phones() {
        Clinic clinic = facts.files().clinic();
        return new PhonesView(
                oneLine(clinic.day().number()),
                words.clock().hours(clinic.day().hours()),
                oneLine(clinic.night().number()),
                words.clock().hours(clinic.night().hours()),
                clinic.emergency());
    }

    private static String oneLine(String number) {
        return number.replace(' ', AmountWords.NO_BREAK);
    }

    LayoutView layout() {
        Plan plan = facts.files().plan();
        return new LayoutView(
                plan.language(),
                translated,
                words.wording().fallen() > 0,
                plan.paper().name().toLowerCase(Locale.ROOT),
                plan.textSize().name().toLowerCase(Locale.ROOT));
    }

    private static Optional<StartView.Tonight> tonight(DoorView door) {
        return evening(door)
                .or(() -> door.exact().stream()
                        .findFirst()
                        .map(exact ->
                                new StartView.Tonight(exact.day(), exact.time(), List.of(exact.doorName()), false)));
    }

    private static Optional<StartView.Tonight> evening(DoorView door) {
        return door.rows().stream().findFirst().map(row -> {
            List<String> names = new ArrayList<>();
            Optional<String> time = door.time();
            for (int column = 0; column < row.cells().size(); column++) {
                if (row.cells().get(column).isPresent()) {
                    names.add(door.columns().get(column).doorName());
                    time = row.cells().get(column).get().time().or(door::time);
                }
            }
            return new StartView.Tonight(row.day(), time.orElse(""), names, row.waits());
        });
    }

    private List<StartView.Part> parts(
            List<CartridgesView> cartridges,
            List<MedicineView> medicines,
            Optional<TriggerView> trigger,
            Optional<SitesView> sites,
            Optional<ChangedView> changed) {
        List<StartView.Part> parts = new ArrayList<>();
        changed.ifPresent(page -> parts.add(new StartView.Part("changed", "changed")));
        List.of("door", "days", "supply").forEach(key -> parts.add(new StartView.Part(key, key)));
        if (!cartridges.isEmpty()) {
            List.of("cartridges", "card").forEach(key -> parts.add(new StartView.Part(key, key)));
        }
        sites.filter(page -> !page.inDays()).ifPresent(page -> parts.add(new StartView.Part("sites", "sites")));
        medicines.stream().findFirst().ifPresent(first -> parts.add(new StartView.Part("medicines", first.anchor())));
        trigger.ifPresent(page -> parts.add(new StartView.Part("trigger", "trigger")));
        if (has(ExtraPart.HELPER)) {
            parts.add(new StartView.Part("helper", "helper"));
        }
        List.of("calls", "trouble", "keeping").forEach(key -> parts.add(new StartView.Part(key, key)));
        if (has(ExtraPart.TRAVEL)) {
            parts.add(new StartView.Part("travel", "travel"));
        }
        parts.add(new StartView.Part("log", "log"));
        return parts;
    }
}
