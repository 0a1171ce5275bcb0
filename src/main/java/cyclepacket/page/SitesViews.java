package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.course.Site;
import cyclepacket.course.SiteRotation;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Makes the list of what is done in which order and where. */
final class SitesViews {
    private final PacketFacts facts;
    private final Words words;

    SitesViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    /** One thing to do: an injection, or something that is taken. */
    private record Deed(LocalDate date, LocalTime time, int row, Medicine medicine, boolean exact) {}

    /** Empty when nothing is injected. */
    Optional<SitesView> view() {
        List<Deed> deeds = deeds();
        List<Medicine> columns = deeds.stream()
                .filter(deed -> deed.medicine().isInjected())
                .filter(this::isAhead)
                .map(Deed::medicine)
                .distinct()
                .toList();
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        boolean muscle = columns.stream().anyMatch(Medicine::isIntoMuscle);
        SortedMap<LocalDate, Map<Medicine, List<SitesView.Spot>>> spots = spots();
        return Optional.of(new SitesView(
                columns.stream().anyMatch(medicine -> !medicine.isIntoMuscle()),
                muscle,
                order(deeds),
                exact(deeds),
                columns.stream().map(Medicine::doorName).toList(),
                rows(spots, columns),
                !muscle && fitsIntoDays(spots)));
    }

    /**
     * Whether the list of days has room for the spots: two injections a day at most, none of a dose in parts, and one pen,
     * whose page draws them. Large print and what is drawn up keep a page for the spots.
     */
    private boolean fitsIntoDays(SortedMap<LocalDate, Map<Medicine, List<SitesView.Spot>>> spots) {
        Collection<Medicine> medicines = facts.files().medicines().values();
        return facts.files().plan().textSize() == Plan.TextSize.STANDARD
                && !facts.isAroundTheDay()
                && medicines.stream()
                                .filter(medicine -> medicine.device().pen().isPresent())
                                .count()
                        == 1
                && medicines.stream()
                        .allMatch(medicine -> medicine.device().emptySyringe().isEmpty())
                && spots.values().stream()
                        .allMatch(
                                day -> day.size() <= 2 && day.values().stream().allMatch(each -> each.size() == 1));
    }

    /** The spots of each injection ahead, by day and medicine, in the order in which they are given. */
    SortedMap<LocalDate, Map<Medicine, List<SitesView.Spot>>> spots() {
        List<Deed> injections =
                deeds().stream().filter(deed -> deed.medicine().isInjected()).toList();
        List<Site> sites = SiteRotation.of(injections.stream()
                .map(deed ->
                        new SiteRotation.Injection(deed.date(), deed.medicine().isIntoMuscle()))
                .toList());
        SortedMap<LocalDate, Map<Medicine, List<SitesView.Spot>>> days = new TreeMap<>();
        for (int index = 0; index < injections.size(); index++) {
            Deed deed = injections.get(index);
            if (isAhead(deed)) {
                days.computeIfAbsent(deed.date(), day -> new LinkedHashMap<>())
                        .computeIfAbsent(deed.medicine(), medicine -> new ArrayList<>())
                        .add(spot(sites.get(index)));
            }
        }
        return days;
    }

    private List<SitesView.Row> rows(
            SortedMap<LocalDate, Map<Medicine, List<SitesView.Spot>>> spots, List<Medicine> columns) {
        return spots.entrySet().stream()
                .map(day -> new SitesView.Row(
                        words.clock().day(day.getKey()),
                        columns.stream()
                                .map(medicine -> Optional.ofNullable(
                                                day.getValue().get(medicine))
                                        .map(SitesView.Spots::new))
                                .toList()))
                .toList();
    }

    private static SitesView.Spot spot(Site site) {
        return new SitesView.Spot(Integer.toString(site.number()), site.isLeft() ? "left" : "right");
    }

    /** Each medicine at each of its times once. */
    private List<SitesView.Step> order(List<Deed> deeds) {
        return deeds.stream()
                .filter(deed -> isAhead(deed) && !deed.exact())
                .sorted(Comparator.comparing(Deed::time)
                        .thenComparing(deed -> deed.medicine().isInjected())
                        .thenComparing(Deed::row))
                .map(deed -> new SitesView.Step(
                        words.clock().time(deed.time()), deed.medicine().doorName()))
                .distinct()
                .toList();
    }

    /** What has a day and a minute of its own is no part of the usual order. */
    private List<SitesView.ExactStep> exact(List<Deed> deeds) {
        return deeds.stream()
                .filter(deed -> isAhead(deed) && deed.exact())
                .map(deed -> new SitesView.ExactStep(
                        words.clock().day(deed.date()),
                        words.clock().time(deed.time()),
                        deed.medicine().doorName()))
                .toList();
    }

    private boolean isAhead(Deed deed) {
        return !deed.date().isBefore(facts.today());
    }

    /** Everything of the course that is told, by day and time; what is taken comes before what is injected. */
    private List<Deed> deeds() {
        List<Deed> deeds = new ArrayList<>();
        for (DatedDose dose : facts.course().doses()) {
            if (dose.isExact() && !facts.course().isTriggerCalled()) {
                continue;
            }
            Medicine medicine = facts.files().medicine(dose.medicine()).orElseThrow();
            for (int part = 0; part < parts(medicine, dose); part++) {
                deeds.add(new Deed(
                        dose.at().toLocalDate(), dose.at().toLocalTime(), dose.row(), medicine, dose.isExact()));
            }
        }
        deeds.sort(Comparator.comparing(Deed::date)
                .thenComparing(Deed::time)
                .thenComparing(deed -> deed.medicine().isInjected())
                .thenComparing(Deed::row));
        return deeds;
    }

    /** A dose above the dial is several injections. */
    private int parts(Medicine medicine, DatedDose dose) {
        if (medicine.device().pen().isEmpty()) {
            return 1;
        }
        return facts.ledger()
                .of(medicine)
                .flatMap(ledger -> ledger.day(dose.date()))
                .map(LedgerDay::evening)
                .filter(evening -> evening.isToCome())
                .map(evening -> Math.max(1, evening.settings().size()))
                .orElse(1);
    }
}
