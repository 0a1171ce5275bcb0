package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Compares two issues as a patient reads them: medicine, amount, time, new-cartridge evening and the numbers it may show. */
final class ChangedViews {
    private final PacketFacts now;
    private final Words words;

    ChangedViews(PacketFacts now, Words words) {
        this.now = now;
        this.words = words;
    }

    /** Empty for an issue that replaces none. */
    Optional<ChangedView> view() {
        return now.files()
                .plan()
                .replaces()
                .map(issue -> new ChangedView(
                        Integer.toString(issue),
                        now.replacedOn().map(words.clock()::date),
                        now.earlier().isPresent(),
                        now.earlier().map(earlier -> rows(earlier, now.today())).orElse(List.of()),
                        ChangedView.swaps(now.files())));
    }

    /** Every day from {@code first} on that differs. */
    List<ChangedView.Row> rows(PacketFacts earlier, LocalDate first) {
        Map<LocalDate, Map<String, ChangedView.Line>> before = new Reading(earlier).days();
        Map<LocalDate, Map<String, ChangedView.Line>> after = new Reading(now).days();
        TreeSet<LocalDate> dates = new TreeSet<>(before.keySet());
        dates.addAll(after.keySet());
        List<Change> changes = dates.stream()
                .filter(date -> !date.isBefore(first))
                .map(date ->
                        change(date, earlier, before.getOrDefault(date, Map.of()), after.getOrDefault(date, Map.of())))
                .flatMap(Optional::stream)
                .toList();
        return inStretches(changes);
    }

    /** Days in a row that changed alike become one row: nobody reads ten lines that say the same. */
    private List<ChangedView.Row> inStretches(List<Change> changes) {
        List<ChangedView.Row> rows = new ArrayList<>();
        int from = 0;
        for (int next = 1; next <= changes.size(); next++) {
            if (next == changes.size() || !changes.get(next).follows(changes.get(next - 1))) {
                rows.add(row(changes.get(from), changes.get(next - 1)));
                from = next;
            }
        }
        return rows;
    }

    private ChangedView.Row row(Change first, Change last) {
        DayName day = words.clock().day(first.date());
        Optional<String> span = Optional.of(last)
                .filter(change -> !change.equals(first))
                .map(change -> words.fill(
                        "range",
                        Map.of(
                                "least", day.date(),
                                "most", words.clock().day(change.date()).date())));
        return new ChangedView.Row(day, span, first.before(), first.after());
    }

    /** One day that differs. */
    private record Change(LocalDate date, List<ChangedView.Line> before, List<ChangedView.Line> after) {
        private boolean follows(Change other) {
            return date.equals(other.date.plusDays(1)) && before.equals(other.before) && after.equals(other.after);
        }
    }

    private Optional<Change> change(
            LocalDate date,
            PacketFacts earlier,
            Map<String, ChangedView.Line> before,
            Map<String, ChangedView.Line> after) {
        TreeSet<String> medicines = new TreeSet<>(before.keySet());
        medicines.addAll(after.keySet());
        List<ChangedView.Line> old = new ArrayList<>();
        List<ChangedView.Line> own = new ArrayList<>();
        for (String medicine : medicines) {
            String name = (before.containsKey(medicine) ? before : after)
                    .get(medicine)
                    .medicine();
            ChangedView.Line was = before.getOrDefault(medicine, absent(earlier, date, medicine, name));
            ChangedView.Line is = after.getOrDefault(medicine, absent(now, date, medicine, name));
            boolean isListed = before.containsKey(medicine) && after.containsKey(medicine);
            // What an issue foresaw for an evening that the other does not list is no change to what the patient does.
            if (isListed ? !was.equals(is) : !was.text().equals(is.text())) {
                old.add(was);
                own.add(is);
            }
        }
        return old.isEmpty() ? Optional.empty() : Optional.of(new Change(date, old, own));
    }

    /**
     * How an issue reads on a day that it does not list: nothing, or, past its last evening while nobody has called the
     * trigger, wait. A planned trigger must not read as an end to somebody who has more evenings to give.
     */
    private ChangedView.Line absent(PacketFacts facts, LocalDate date, String medicine, String name) {
        if (facts.goesOn(medicine) && isPastItsList(facts, date, medicine)) {
            return new ChangedView.Line(name, words.text("changed.beyond"), List.of());
        }
        boolean goesOn = facts.notFinished().filter(day -> !date.isBefore(day)).isPresent()
                && facts.daily().stream()
                        .anyMatch(ledger -> ledger.medicine().id().equals(medicine));
        return new ChangedView.Line(name, words.text(goesOn ? "changed.wait" : "changed.nothing"), List.of());
    }

    private static boolean isPastItsList(PacketFacts facts, LocalDate date, String medicine) {
        return facts.ledger().of(medicine).stream()
                .flatMap(ledger -> ledger.days().stream())
                .map(day -> day.evening().date())
                .max(LocalDate::compareTo)
                .filter(date::isAfter)
                .isPresent();
    }

    /** One issue as it reads, by day and medicine. */
    private final class Reading {
        private final PacketFacts facts;
        private final Map<LocalDate, Map<String, ChangedView.Line>> days = new TreeMap<>();

        private Reading(PacketFacts facts) {
            this.facts = facts;
        }

        private Map<LocalDate, Map<String, ChangedView.Line>> days() {
            facts.daily()
                    .forEach(ledger -> ledger.days()
                            .forEach(day -> add(
                                    day.evening().date(),
                                    ledger.medicine(),
                                    new ChangedView.Line(
                                            facts.nameOf(ledger.medicine()),
                                            text(day.evening(), ledger.medicine()),
                                            notes(ledger, day)))));
            if (facts.course().isTriggerCalled()) {
                facts.exact().forEach(this::exact);
            }
            return days;
        }

        private void add(LocalDate date, Medicine medicine, ChangedView.Line line) {
            days.computeIfAbsent(date, day -> new TreeMap<>()).put(medicine.id(), line);
        }

        private void exact(DatedDose dose) {
            Medicine medicine = facts.files().medicine(dose.medicine()).orElseThrow();
            String text = words.fill(
                    "changed.exactly",
                    Map.of(
                            "amount", words.amounts().amount(dose.amount()),
                            "time", words.clock().time(dose.at().toLocalTime())));
            add(dose.at().toLocalDate(), medicine, new ChangedView.Line(facts.nameOf(medicine), text, List.of()));
        }

        private String text(Evening evening, Medicine medicine) {
            if (!evening.isToCome()) {
                return evening.given()
                        .filter(given -> !given.isZero())
                        .map(given -> words.fill(
                                "changed.given",
                                Map.of("amount", words.amounts().amount(given))))
                        .orElse(words.text("changed.not-given"));
            }
            if (evening.isHeld()) {
                return words.text("changed.held");
            }
            if (evening.state() == Evening.State.PROVISIONAL) {
                return words.text("changed.wait");
            }
            List<String> amounts = Boxes.of(evening, medicine, words).stream()
                    .flatMap(box -> box.text().stream())
                    .toList();
            List<LocalTime> times = facts.timesOn(medicine, evening.date());
            if (times.size() > 1 && times.size() == amounts.size()) {
                // Two amounts at the first hour would be a double dose.
                return IntStream.range(0, times.size())
                        .mapToObj(each -> take(amounts.get(each), times.get(each)))
                        .collect(Collectors.joining(" "));
            }
            String amount = String.join(" " + words.text("then") + " ", amounts);
            return evening.at()
                    .map(ZonedDateTime::toLocalTime)
                    .map(time -> take(amount, time))
                    .orElse(amount);
        }

        private String take(String amount, LocalTime time) {
            return words.fill(
                    "changed.take",
                    Map.of("amount", amount, "time", words.clock().time(time)));
        }

        private List<String> notes(MedicineLedger ledger, LedgerDay day) {
            List<String> notes = new ArrayList<>();
            if (!day.evening().isToCome()) {
                return notes;
            }
            ChangeViews.of(ledger, day, words)
                    .forEach(change -> notes.add(words.fill(
                            "changed.end." + change.kind() + (change.box().isPresent() ? "" : ".none"),
                            Map.of("box", change.box().orElse("")))));
            ledger.medicine()
                    .device()
                    .pen()
                    .ifPresent(pen -> day.changes().stream()
                            .filter(change -> !change.isRead())
                            .flatMap(change -> range(change, pen).stream())
                            .distinct()
                            .forEach(notes::add));
            return notes;
        }

        private Optional<String> range(DayChange change, CartridgePen pen) {
            Marks marks = new Marks(pen.dial(), facts.files().clinic().rules());
            String key = pen.window() == Window.OWED ? "changed.range.owed" : "changed.range.left";
            return change.owed()
                    .flatMap(marks::printed)
                    .map(range ->
                            words.fill(key, Map.of("range", words.amounts().range(range))));
        }
    }
}
