package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.course.Trigger;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Dose;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** Makes the trigger page: a time once it was called and read back, and none before. */
final class TriggerViews {
    /** How long before the injection the first alarm rings. */
    private static final Duration FIRST_ALARM = Duration.ofMinutes(30);

    private final PacketFacts facts;
    private final Words words;

    TriggerViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    /** Empty for a protocol without an injection at an exact minute. */
    Optional<TriggerView> view() {
        List<TriggerView.Take> takes = takesAfter(Duration.ZERO);
        if (takes.isEmpty()) {
            return Optional.empty();
        }
        Optional<TriggerView.Called> called =
                facts.course().anchors().trigger().filter(Trigger::isCalled).map(this::called);
        return Optional.of(new TriggerView(
                takes, called, later(), Integer.toString(facts.exactRows().size()), stops(called.isPresent())));
    }

    private static Duration after(Protocol.Row row) {
        return row.pattern().hoursAfter().orElse(Duration.ZERO);
    }

    private List<TriggerView.Take> takesAfter(Duration hours) {
        return facts.exactRows().stream()
                .filter(row -> after(row).equals(hours))
                .map(this::take)
                .toList();
    }

    private List<TriggerView.Later> later() {
        Optional<Trigger> called = facts.course().anchors().trigger().filter(Trigger::isCalled);
        return called.stream()
                .flatMap(first -> facts.exactRows().stream()
                        .map(TriggerViews::after)
                        .filter(hours -> !hours.isZero())
                        .distinct()
                        .sorted()
                        .map(hours -> later(first.after(hours).at(), hours)))
                .toList();
    }

    private TriggerView.Later later(ZonedDateTime at, Duration hours) {
        return new TriggerView.Later(
                words.clock().day(at.toLocalDate()),
                words.clock().time(at.toLocalTime()),
                clock(at),
                new InstantNotes(facts, words).of(at),
                alarm(at.minus(FIRST_ALARM), at),
                takesAfter(hours));
    }

    private TriggerView.Take take(Protocol.Row row) {
        Optional<Dose> amount = row.amount()
                .or(() -> facts.course().dosesOf(row.medicine()).stream()
                        .map(DatedDose::amount)
                        .findFirst());
        Medicine medicine = facts.files().medicine(row.medicine()).orElseThrow();
        BoxedAmount box = new BoxedAmount(
                amount.map(words.amounts()::amount), words.amounts().unit(medicine.unit()));
        return new TriggerView.Take(
                medicine.name(),
                medicine.doorName(),
                box,
                new MedicineViews(facts, words).others(medicine),
                amount.flatMap(dose -> new MarkWords(facts, words).of(medicine, dose)));
    }

    private TriggerView.Called called(Trigger trigger) {
        ZonedDateTime at = trigger.at();
        return new TriggerView.Called(
                words.clock().day(at.toLocalDate()),
                words.clock().time(at.toLocalTime()),
                clock(at),
                words.clock().zone(at.getZone()),
                new InstantNotes(facts, words).of(at),
                List.of(alarm(at.minus(FIRST_ALARM), at), alarm(at, at)),
                facts.course().anchors().retrieval().map(retrieval -> retrieval(retrieval, at)));
    }

    private EveningCardsView.AtTime clock(ZonedDateTime at) {
        return EveningCardViews.at(words.clock().time(at.toLocalTime()));
    }

    private String alarm(ZonedDateTime rings, ZonedDateTime at) {
        String time = words.clock().time(rings.toLocalTime());
        return rings.toLocalDate().equals(at.toLocalDate())
                ? time
                : words.clock().day(rings.toLocalDate()).full() + ", " + time;
    }

    private TriggerView.Retrieval retrieval(ZonedDateTime retrieval, ZonedDateTime trigger) {
        boolean otherClock = !retrieval.getZone().equals(trigger.getZone());
        return new TriggerView.Retrieval(
                words.clock().day(retrieval.toLocalDate()), words.clock().time(retrieval.toLocalTime()), otherClock);
    }

    private List<TriggerView.Stop> stops(boolean called) {
        return facts.daily().stream()
                .map(medicine -> new TriggerView.Stop(
                        facts.nameOf(medicine.medicine()), called ? lastDay(medicine) : Optional.empty()))
                .toList();
    }

    private Optional<DayName> lastDay(MedicineLedger medicine) {
        return medicine.days().stream()
                .map(day -> day.evening().date())
                .max(LocalDate::compareTo)
                .map(words.clock()::day);
    }
}
