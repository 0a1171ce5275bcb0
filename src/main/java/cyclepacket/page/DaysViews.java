package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Makes the list of days: past evenings as they were given, those to come as they are planned. */
final class DaysViews {
    private final PacketFacts facts;
    private final Words words;
    private final Map<LocalDate, Map<Medicine, List<SitesView.Spot>>> spots;

    /** @param spots those that this list names, because no other page does */
    DaysViews(PacketFacts facts, Words words, Map<LocalDate, Map<Medicine, List<SitesView.Spot>>> spots) {
        this.facts = facts;
        this.words = words;
        this.spots = spots;
    }

    DaysView view() {
        TreeSet<LocalDate> dates = new TreeSet<>();
        facts.daily()
                .forEach(medicine ->
                        medicine.days().forEach(day -> dates.add(day.evening().date())));
        facts.course().visits().forEach(visit -> dates.add(visit.date()));
        if (facts.course().isTriggerCalled()) {
            facts.exact().forEach(dose -> dates.add(dose.at().toLocalDate()));
            retrieval().ifPresent(at -> dates.add(at.toLocalDate()));
        }
        return new DaysView(
                facts.sharedTime().filter(time -> !facts.isAroundTheDay()).map(words.clock()::time),
                timeLines(),
                dates.stream().map(this::row).toList(),
                facts.notFinished().map(words.clock()::day),
                Optional.of(facts.files().clinic().rules().noCallBy())
                        .filter(by ->
                                facts.waitsForCall() || facts.notFinished().isPresent())
                        .map(words.clock()::time),
                new ClockChanges(facts, words).sentences());
    }

    /** When the eggs are collected, once the trigger was called. */
    private Optional<ZonedDateTime> retrieval() {
        return facts.course().anchors().retrieval().filter(at -> facts.course().isTriggerCalled());
    }

    private DaysView.Row row(LocalDate date) {
        List<DaysView.Dose> doses = new ArrayList<>();
        List<ChangeView> changes = new ArrayList<>();
        for (MedicineLedger medicine : facts.daily()) {
            medicine.day(date).ifPresent(day -> {
                doses.add(dose(medicine.medicine(), day.evening()));
                if (day.evening().isToCome()) {
                    changes.addAll(ChangeViews.of(medicine, day, words));
                }
            });
        }
        doses.addAll(exact(date));
        List<String> states =
                doses.stream().map(DaysView.Dose::state).distinct().toList();
        return new DaysView.Row(
                words.clock().day(date),
                Optional.of(states).filter(all -> all.size() == 1).map(all -> all.get(0)),
                doses,
                visits(date),
                retrieval()
                        .filter(at -> at.toLocalDate().equals(date))
                        .map(at -> words.clock().time(at.toLocalTime())),
                changes);
    }

    private DaysView.Dose dose(Medicine medicine, Evening evening) {
        List<BoxedAmount> amounts = evening.isToCome()
                ? Boxes.of(evening, medicine, words)
                : evening.given().filter(given -> !given.isZero()).map(given -> Boxes.known(given, words)).stream()
                        .toList();
        return new DaysView.Dose(
                facts.nameOf(medicine),
                amounts,
                time(medicine, evening),
                state(evening),
                mark(medicine, evening),
                spot(medicine, evening.date()));
    }

    private Optional<String> spot(Medicine medicine, LocalDate date) {
        return spots.getOrDefault(date, Map.of()).getOrDefault(medicine, List.of()).stream()
                .map(SitesView.Spot::number)
                .findFirst();
    }

    private List<DaysView.TimeLine> timeLines() {
        return facts.daily().stream()
                .map(MedicineLedger::medicine)
                .filter(medicine ->
                        facts.isAroundTheDay() && !facts.constantTimes(medicine).isEmpty())
                .map(medicine -> new DaysView.TimeLine(
                        facts.nameOf(medicine),
                        facts.constantTimes(medicine).stream()
                                .map(words.clock()::time)
                                .collect(Collectors.collectingAndThen(Collectors.toList(), words::times))))
                .toList();
    }

    /** All its times, where it has several on one day. */
    private Optional<String> time(Medicine medicine, Evening evening) {
        if (facts.isAroundTheDay() && !facts.constantTimes(medicine).isEmpty()) {
            return Optional.empty();
        }
        List<LocalTime> times = facts.timesOn(medicine, evening.date());
        return times.isEmpty()
                ? facts.ownTime(evening).map(words.clock()::time)
                : Optional.of(
                        words.times(times.stream().map(words.clock()::time).toList()));
    }

    private Optional<String> mark(Medicine medicine, Evening evening) {
        return Optional.of(evening)
                .filter(planned -> planned.state() == Evening.State.PLANNED)
                .flatMap(planned -> new MarkWords(facts, words).ofEach(medicine, parts(planned)));
    }

    /** Each part has its own mark: what is given twice a day is never drawn in one. */
    private static List<Dose> parts(Evening evening) {
        return evening.settings().isEmpty() ? List.of(evening.ordered()) : evening.settings();
    }

    private static String state(Evening evening) {
        return switch (evening.state()) {
            case PLANNED -> evening.isHeld() ? "held" : "planned";
            case PROVISIONAL -> "wait";
            case GIVEN -> "done";
            case MISSED -> "missed";
            case PARTIAL -> partial(evening);
        };
    }

    /** What nobody knows is counted as nothing given, so it must not read as a part that was given. */
    private static String partial(Evening evening) {
        Dose given = evening.given().orElse(Dose.zero(evening.ordered().unit()));
        if (given.isZero()) {
            return "unknown";
        }
        return given.isMoreThan(evening.ordered()) ? "more" : "part";
    }

    private List<DaysView.Dose> exact(LocalDate date) {
        if (!facts.course().isTriggerCalled()) {
            return List.of();
        }
        return facts.exact().stream()
                .filter(dose -> dose.at().toLocalDate().equals(date))
                .map(this::exact)
                .toList();
    }

    private DaysView.Dose exact(DatedDose dose) {
        Medicine medicine = facts.files().medicine(dose.medicine()).orElseThrow();
        return new DaysView.Dose(
                facts.nameOf(medicine),
                List.of(Boxes.known(dose.amount(), words)),
                Optional.of(words.clock().time(dose.at().toLocalTime())),
                "planned",
                new MarkWords(facts, words).of(medicine, dose.amount()),
                spot(medicine, dose.at().toLocalDate()));
    }

    private List<DaysView.Visit> visits(LocalDate date) {
        return facts.course().visits().stream()
                .filter(visit -> visit.date().equals(date))
                .map(visit -> new DaysView.Visit(words.clock().time(visit.at().toLocalTime()), visit.what()))
                .toList();
    }
}
