package cyclepacket.page;

import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Makes the cartridge page of one pen from its ledger. */
final class CartridgesViews {
    private final PacketFacts facts;
    private final Words words;
    private final MedicineLedger ledger;
    private final CartridgePen pen;
    private final Marks marks;

    CartridgesViews(PacketFacts facts, Words words, MedicineLedger ledger, CartridgePen pen) {
        this.facts = facts;
        this.words = words;
        this.ledger = ledger;
        this.pen = pen;
        this.marks = new Marks(pen.dial(), facts.files().clinic().rules());
    }

    CartridgesView view() {
        return new CartridgesView(
                ledger.medicine().name(),
                ledger.medicine().doorName(),
                pen.window().name().toLowerCase(Locale.ROOT),
                Integer.toString(pen.openedDays()),
                new CardViews(facts, words, ledger, pen, marks).view(),
                ledger.days().stream().map(this::cell).toList(),
                endings(),
                boxes(),
                new LookUpViews(words, ledger).view());
    }

    private CartridgesView.Cell cell(LedgerDay day) {
        List<String> boxes = new ArrayList<>();
        LocalDate date = day.evening().date();
        for (ContainerLine line : ledger.containers()) {
            boolean opened =
                    line.firstOpening().filter(first -> !first.isAfter(date)).isPresent();
            boolean ended = line.lastEnd().filter(last -> last.isBefore(date)).isPresent();
            if (opened && !ended) {
                boxes.add(Integer.toString(line.container().number()));
            }
        }
        if (boxes.isEmpty() || needsOneMore(date)) {
            boxes.add("?");
        }
        return new CartridgesView.Cell(words.clock().day(date), boxes, mark(day));
    }

    /** Whether the last cartridge at home may have ended by this evening. */
    private boolean needsOneMore(LocalDate date) {
        List<ContainerLine> lines = ledger.containers();
        return !lines.isEmpty()
                && lines.get(lines.size() - 1)
                        .firstEnd()
                        .filter(first -> !first.isAfter(date))
                        .isPresent();
    }

    private String mark(LedgerDay day) {
        if (!day.evening().isToCome()) {
            return "past";
        }
        boolean sure = day.changes().stream().anyMatch(DayChange::isCertain);
        return sure ? "expect" : day.changes().isEmpty() ? "none" : "maybe";
    }

    private List<CartridgesView.Ending> endings() {
        return ledger.changes().stream()
                .filter(line -> !line.hasEnded())
                .map(this::ending)
                .toList();
    }

    private CartridgesView.Ending ending(ContainerLine line) {
        int leaving = line.container().number();
        List<LedgerDay> days = ledger.days().stream()
                .filter(day -> !changesOf(day, leaving).isEmpty())
                .toList();
        List<DayChange> changes =
                days.stream().flatMap(day -> changesOf(day, leaving).stream()).toList();
        boolean coming = ledger.coming().filter(line::equals).isPresent();
        return new CartridgesView.Ending(
                Integer.toString(leaving),
                days.stream()
                        .map(day -> words.clock().day(day.evening().date()))
                        .toList(),
                days.size() == 1 && changes.stream().anyMatch(DayChange::isCertain),
                changes.stream().allMatch(change -> change.cause() == DayChange.Cause.IN_USE_LIMIT),
                ChangeViews.next(ledger, leaving),
                coming ? readings(days, leaving) : List.of(),
                coming && changes.stream().anyMatch(this::leavesAll),
                Optional.of(words.amounts().amount(marks.smallest()))
                        .filter(least -> coming && changes.stream().anyMatch(this::leavesLittle)),
                days.stream().anyMatch(day -> day.evening().state() == Evening.State.PROVISIONAL));
    }

    private static List<DayChange> changesOf(LedgerDay day, int leaving) {
        return day.changes().stream()
                .filter(change -> change.leaving() == leaving)
                .toList();
    }

    private boolean leavesAll(DayChange change) {
        Dose dialled = ledger.draws().get(change.draw()).dialled();
        return change.owed().filter(owed -> owed.contains(dialled)).isPresent();
    }

    private boolean leavesLittle(DayChange change) {
        return change.owed().filter(marks::hasSmall).isPresent();
    }

    /** The numbers of the look-up where there is one, so that page and table cannot disagree. */
    private List<CartridgesView.Reading> readings(List<LedgerDay> days, int leaving) {
        List<CartridgesView.Reading> readings = new ArrayList<>();
        for (LedgerDay day : days) {
            Map<Integer, TreeSet<Dose>> shown = new TreeMap<>();
            for (DayChange change : changesOf(day, leaving)) {
                Dose dialled = ledger.draws().get(change.draw()).dialled();
                change.owed().stream()
                        .flatMap(owed -> marks.each(owed).stream())
                        .map(mark -> pen.window() == Window.OWED ? mark : dialled.minus(mark.min(dialled)))
                        .forEach(mark -> shown.computeIfAbsent(change.setting(), setting -> new TreeSet<>())
                                .add(mark));
            }
            boolean isDivided = day.evening().settings().size() > 1;
            shown.forEach((setting, numbers) -> readings.add(new CartridgesView.Reading(
                    words.clock().day(day.evening().date()),
                    Optional.of(Integer.toString(setting)).filter(number -> isDivided),
                    words.amounts().range(new DoseRange(numbers.first(), numbers.last())))));
        }
        return readings;
    }

    private List<CartridgesView.Box> boxes() {
        return ledger.containers().stream()
                .filter(line -> !line.hasEnded())
                .map(line -> new CartridgesView.Box(
                        Integer.toString(line.container().number()),
                        words.amounts().amount(line.container().label()),
                        line.container().lot(),
                        opened(line).map(words.clock()::day),
                        latestSafe(line).map(words.clock()::day)))
                .toList();
    }

    /** Known only when it lies in the past and could not have been another evening. */
    private Optional<LocalDate> opened(ContainerLine line) {
        return line.container()
                .opened()
                .or(() -> line.firstOpening()
                        .filter(first -> first.isBefore(facts.today()))
                        .filter(first -> line.lastOpening().equals(Optional.of(first))));
    }

    /** The earlier of the in-use limit and the date on the label. */
    private static Optional<LocalDate> latestSafe(ContainerLine line) {
        return Stream.concat(line.lastSafeDay().stream(), line.container().expires().stream())
                .min(LocalDate::compareTo)
                .filter(day -> line.lastSafeDay().isPresent());
    }
}
