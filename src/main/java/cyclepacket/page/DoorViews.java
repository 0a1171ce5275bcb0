package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
                facts.isAroundTheDay(),
                columns.stream().map(this::column).toList(),
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
                goesOn(columns, dates),
                exact());
    }

    /** The last day listed, where something on the page is only stopped when the patient is told to. */
    private Optional<DayName> goesOn(List<MedicineLedger> columns, TreeSet<LocalDate> dates) {
        boolean isToldToStop = columns.stream()
                .anyMatch(medicine -> facts.goesOn(medicine.medicine().id()));
        return Optional.of(dates)
                .filter(days -> isToldToStop && !days.isEmpty())
                .map(TreeSet::last)
                .map(words.clock()::day);
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
        int injections = 0;
        for (int column = 0; column < columns.size(); column++) {
            boolean isInjected = columns.get(column).medicine().isInjected();
            injections += cells.get(column)
                    .filter(cell -> isInjected)
                    .map(cell -> cell.amounts().size())
                    .orElse(0);
        }
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
        List<BoxedAmount> boxes = Boxes.of(evening, medicine, words);
        List<LocalTime> times = facts.timesOn(medicine, evening.date());
        boolean isInHead = !facts.constantTimes(medicine).isEmpty() && facts.isAroundTheDay();
        boolean isEach = times.size() == boxes.size() && !isInHead;
        return new DoorView.Cell(
                boxes,
                isEach || isInHead ? Optional.empty() : facts.ownTime(evening).map(words.clock()::time),
                isEach ? times.stream().map(words.clock()::time).toList() : List.of(),
                marks(medicine, evening),
                Optional.of(medicine.device())
                        .filter(device -> evening.state() == Evening.State.PROVISIONAL)
                        .flatMap(DoorViews::toWrite));
    }

    /** Where not everything is given in the evening, each column says its own times, if all its days share them. */
    private DoorView.Column column(MedicineLedger medicine) {
        List<String> times = facts.isAroundTheDay()
                ? facts.constantTimes(medicine.medicine()).stream()
                        .map(words.clock()::time)
                        .toList()
                : List.of();
        return new DoorView.Column(
                medicine.medicine().doorName(),
                window(medicine),
                Optional.of(String.join(", " + words.text("then") + " ", times)).filter(time -> !time.isEmpty()),
                times);
    }

    private List<String> marks(Medicine medicine, Evening evening) {
        if (evening.state() == Evening.State.PROVISIONAL) {
            return List.of();
        }
        MarkWords marks = new MarkWords(facts, words);
        return evening.settings().stream()
                .flatMap(dose -> marks.of(medicine, dose).stream())
                .toList();
    }

    /** What the patient writes beside an amount that is told on the phone. */
    private static Optional<String> toWrite(Device device) {
        if (device.mixedVial().isPresent()) {
            return Optional.of("vials");
        }
        return device.stockVial().map(vial -> "mark");
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
        boolean isLastPart =
                facts.exact().stream().noneMatch(other -> other.at().isAfter(dose.at()));
        boolean last = isLastPart
                && facts.daily().stream()
                        .flatMap(medicine -> medicine.days().stream())
                        .allMatch(day -> day.evening().date().isBefore(date));
        return new DoorView.Exact(
                words.clock().day(date),
                facts.files().medicine(dose.medicine()).orElseThrow().doorName(),
                Boxes.known(dose.amount(), words),
                words.clock().time(dose.at().toLocalTime()),
                notes(dose),
                without(date),
                last,
                facts.course()
                        .anchors()
                        .retrieval()
                        .filter(retrieval ->
                                isLastPart && !retrieval.toLocalDate().isBefore(facts.today()))
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

    private List<String> notes(DatedDose dose) {
        List<String> notes = new ArrayList<>(new InstantNotes(facts, words).night(dose.at()));
        Medicine medicine = facts.files().medicine(dose.medicine()).orElseThrow();
        new MarkWords(facts, words)
                .of(medicine, dose.amount())
                .ifPresent(mark -> notes.add(words.fill("mark.draw", Map.of("mark", mark))));
        return notes;
    }
}
