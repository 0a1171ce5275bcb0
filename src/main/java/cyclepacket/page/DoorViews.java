package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/** Makes the door page from the ledger: one row for each evening from today on. */
final class DoorViews {
    private final PacketFacts facts;
    private final Words words;

    DoorViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    DoorView view() {
        List<MedicineLedger> columns = facts.daily().stream()
                .filter(medicine -> medicine.days().stream().anyMatch(this::isAhead))
                .toList();
        TreeSet<LocalDate> dates = new TreeSet<>();
        columns.forEach(medicine -> medicine.days().stream()
                .filter(this::isAhead)
                .forEach(day -> dates.add(day.evening().date())));
        return new DoorView(
                facts.sharedTime().map(words.clock()::time),
                columns.stream()
                        .map(medicine -> new DoorView.Column(medicine.medicine().doorName(), window(medicine)))
                        .toList(),
                columns.stream()
                        .filter(DoorViews::isPen)
                        .map(medicine -> AmountWords.capital(medicine.medicine().doorName()))
                        .findFirst(),
                window(columns),
                dates.stream().map(date -> row(date, columns)).toList(),
                Optional.of(facts.files().clinic().rules().noCallBy())
                        .filter(by ->
                                facts.waitsForCall() || facts.notFinished().isPresent())
                        .map(words.clock()::time),
                facts.notFinished().map(words.clock()::day),
                exact());
    }

    private boolean isAhead(LedgerDay day) {
        return day.evening().isToCome() && !day.evening().date().isBefore(facts.today());
    }

    private static boolean isPen(MedicineLedger medicine) {
        return medicine.medicine().device().pen().isPresent();
    }

    private static String window(MedicineLedger medicine) {
        return medicine.medicine()
                .device()
                .pen()
                .map(pen -> pen.window().name().toLowerCase(Locale.ROOT))
                .orElse("none");
    }

    /** That of the first pen; two opposite pens in one plan are a finding of their own. */
    private static String window(List<MedicineLedger> columns) {
        return columns.stream()
                .filter(DoorViews::isPen)
                .map(DoorViews::window)
                .findFirst()
                .orElse("none");
    }

    private DoorView.Row row(LocalDate date, List<MedicineLedger> columns) {
        List<Optional<DoorView.Cell>> cells = new ArrayList<>();
        List<ChangeView> changes = new ArrayList<>();
        boolean waits = false;
        int readings = 0;
        for (MedicineLedger medicine : columns) {
            Optional<LedgerDay> day = medicine.day(date).filter(this::isAhead);
            cells.add(day.map(ahead -> cell(medicine.medicine(), ahead.evening())));
            waits |= day.map(ahead -> ahead.evening().state() == Evening.State.PROVISIONAL)
                    .orElse(false);
            if (day.isPresent() && isPen(medicine)) {
                readings += Boxes.of(day.get().evening(), medicine.medicine(), words)
                        .size();
            }
            day.ifPresent(ahead -> changes.addAll(ChangeViews.of(medicine, ahead, words)));
        }
        int injections = cells.stream()
                .flatMap(Optional::stream)
                .mapToInt(cell -> cell.amounts().size())
                .sum();
        int extra = ChangeViews.extra(changes);
        return new DoorView.Row(
                words.clock().day(date),
                waits,
                cells,
                Collections.nCopies(readings, ""),
                changes,
                Integer.toString(injections),
                Integer.toString(injections + extra),
                Collections.nCopies(extra, ""));
    }

    private DoorView.Cell cell(Medicine medicine, Evening evening) {
        return new DoorView.Cell(
                Boxes.of(evening, medicine, words), facts.ownTime(evening).map(words.clock()::time));
    }

    private List<DoorView.Exact> exact() {
        if (!facts.course().isTriggerCalled()) {
            return List.of();
        }
        return facts.exact().stream()
                .filter(dose -> !dose.date().isBefore(facts.today()))
                .map(this::exact)
                .toList();
    }

    private DoorView.Exact exact(DatedDose dose) {
        LocalDate date = dose.at().toLocalDate();
        boolean last = facts.daily().stream()
                .flatMap(medicine -> medicine.days().stream())
                .allMatch(day -> day.evening().date().isBefore(date));
        return new DoorView.Exact(
                words.clock().day(date),
                facts.files().medicine(dose.medicine()).orElseThrow().doorName(),
                Boxes.known(dose.amount(), words),
                words.clock().time(dose.at().toLocalTime()),
                new InstantNotes(facts, words).night(dose.at()),
                without(date),
                last,
                facts.course()
                        .anchors()
                        .retrieval()
                        .filter(retrieval -> !retrieval.toLocalDate().isBefore(facts.today()))
                        .map(retrieval -> new DoorView.Appointment(
                                words.clock().day(retrieval.toLocalDate()),
                                words.clock().time(retrieval.toLocalTime()))));
    }

    /** A tired reader must not give the evening's usual injections on the day of the exact one. */
    private List<String> without(LocalDate date) {
        return facts.daily().stream()
                .filter(medicine -> medicine.day(date).isEmpty())
                .map(medicine -> medicine.medicine().doorName())
                .toList();
    }
}
