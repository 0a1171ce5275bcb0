package cyclepacket.page;

import cyclepacket.ledger.MedicineLedger;
import cyclepacket.page.EveningCardsView.AtTime;
import cyclepacket.page.EveningCardsView.Card;
import cyclepacket.page.EveningCardsView.Change;
import cyclepacket.page.EveningCardsView.Shot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Makes the evening cards from the door page's rows: no amount and no time is worked out a second time. */
final class EveningCardViews {
    private static final Pattern CLOCK = Pattern.compile("\\((\\d\\d):(\\d\\d)\\)");

    private final PacketFacts facts;
    private final Words words;
    private final PacketView packet;

    EveningCardViews(PacketFacts facts, Words words, PacketView packet) {
        this.facts = facts;
        this.words = words;
        this.packet = packet;
    }

    EveningCardsView view() {
        List<Card> cards = new ArrayList<>();
        packet.door().rows().forEach(row -> cards.add(evening(row)));
        packet.door().exact().forEach(exact -> cards.add(exact(exact)));
        return new EveningCardsView(
                packet.issue(),
                packet.person(),
                packet.phones(),
                packet.layout(),
                packet.door(),
                packet.wholePens(),
                cards);
    }

    private Card evening(DoorView.Row row) {
        List<Shot> shots = new ArrayList<>();
        for (int column = 0; column < row.cells().size(); column++) {
            DoorView.Column head = packet.door().columns().get(column);
            Optional<DoorView.Cell> cell = row.cells().get(column);
            cell.ifPresent(given -> shots.add(shot(head, given, row, shots.isEmpty())));
        }
        return new Card(
                row.day(),
                shared(shots),
                Optional.of(row),
                Optional.empty(),
                isOneTime(shots) ? shots.stream().map(Shot::atTheCardsTime).toList() : shots,
                changes(row));
    }

    private static boolean isOneTime(List<Shot> shots) {
        return shots.stream().flatMap(shot -> shot.at().stream()).distinct().count() == 1;
    }

    /** The time of the whole card: there only when everything on it has the same. */
    private static Optional<AtTime> shared(List<Shot> shots) {
        return shots.stream().flatMap(shot -> shot.at().stream()).findFirst().filter(time -> isOneTime(shots));
    }

    private Shot shot(DoorView.Column head, DoorView.Cell cell, DoorView.Row row, boolean first) {
        MedicineView medicine = medicine(head.doorName());
        boolean loads = row.changes().stream().anyMatch(change -> change.kind().equals("limit"));
        return new Shot(
                medicine.name(),
                head.doorName(),
                medicine.window(),
                medicine.hold(),
                cell,
                times(head, cell).stream().map(EveningCardViews::at).toList(),
                cell.amounts().isEmpty()
                        ? List.of()
                        : StepPictures.of(medicine, first, isNew(head.doorName(), row.day()), loads));
    }

    /** Its own times, or the one that the door page has for all. */
    private List<String> times(DoorView.Column head, DoorView.Cell cell) {
        List<String> times = new ArrayList<>(cell.times());
        cell.time().ifPresent(times::add);
        if (times.isEmpty() && head.time().isPresent()) {
            ledgers(head.doorName())
                    .flatMap(ledger -> facts.constantTimes(ledger.medicine()).stream())
                    .map(words.clock()::time)
                    .forEach(times::add);
        }
        if (times.isEmpty()) {
            packet.door().time().ifPresent(times::add);
        }
        return times;
    }

    private Stream<MedicineLedger> ledgers(String doorName) {
        return facts.daily().stream()
                .filter(ledger -> ledger.medicine().doorName().equals(doorName));
    }

    private Card exact(DoorView.Exact exact) {
        MedicineView medicine = medicine(exact.doorName());
        DoorView.Cell cell =
                new DoorView.Cell(List.of(exact.amount()), Optional.empty(), List.of(), List.of(), Optional.empty());
        Shot shot = new Shot(
                medicine.name(),
                exact.doorName(),
                medicine.window(),
                medicine.hold(),
                cell,
                List.of(),
                StepPictures.of(medicine, true, true, false));
        return new Card(
                exact.day(),
                Optional.of(at(exact.time())),
                Optional.empty(),
                Optional.of(exact),
                List.of(shot),
                List.of());
    }

    /** A first cartridge is new on the evening it is opened; every later one is loaded by way of the card. */
    private boolean isNew(String doorName, DayName day) {
        return ledgers(doorName)
                .flatMap(ledger -> opening(ledger).stream())
                .anyMatch(date -> words.clock().day(date).equals(day));
    }

    private static Optional<LocalDate> opening(MedicineLedger ledger) {
        return ledger.containers().stream()
                .findFirst()
                .filter(line -> line.container().opened().isEmpty())
                .flatMap(line -> line.firstOpening());
    }

    /** The pens whose cartridge may end in mid-dose that evening. */
    private List<Change> changes(DoorView.Row row) {
        return facts.daily().stream()
                .flatMap(ledger -> ledger.days().stream()
                        .filter(day -> words.clock().day(day.evening().date()).equals(row.day()))
                        .flatMap(day -> ChangeViews.of(ledger, day, words).stream())
                        .filter(StepPictures::isInMidDose)
                        .findFirst()
                        .map(change -> change(ledger.medicine().doorName(), change))
                        .stream())
                .toList();
    }

    private Change change(String doorName, ChangeView change) {
        MedicineView pen = medicine(doorName);
        CartridgesView cartridges = packet.cartridges().stream()
                .filter(view -> view.doorName().equals(doorName))
                .findFirst()
                .orElseThrow();
        return new Change(
                doorName,
                pen.window(),
                pen.hold(),
                change.box(),
                cartridges.lookUp().isPresent(),
                cartridges.card().offTable(),
                StepPictures.change(pen, cartridges.lookUp().isPresent()));
    }

    private MedicineView medicine(String doorName) {
        return packet.medicines().stream()
                .filter(medicine -> medicine.doorName().equals(doorName))
                .findFirst()
                .orElseThrow();
    }

    /** The hands stand at the time that is printed, in half degrees for the short one. */
    static AtTime at(String printed) {
        Matcher clock = CLOCK.matcher(printed);
        if (!clock.find()) {
            throw new IllegalArgumentException("not a time of day: " + printed);
        }
        int hours = Integer.parseInt(clock.group(1)) % 12;
        int minutes = Integer.parseInt(clock.group(2));
        int halves = hours * 60 + minutes;
        return new AtTime(printed, halves / 2 + (halves % 2 == 0 ? "" : ".5"), Integer.toString(minutes * 6));
    }
}
