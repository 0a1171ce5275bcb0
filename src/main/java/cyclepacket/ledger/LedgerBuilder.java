package cyclepacket.ledger;

import cyclepacket.course.Course;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.StockVial;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes the ledger of one medicine. */
final class LedgerBuilder {
    private final Medicine medicine;
    private final DoseUnit unit;
    private final HouseRules rules;
    private final DrawBuilder.Drawn drawn;
    private final List<Container> containers;
    private final Timeline line;
    private final List<Boolean> explained;

    LedgerBuilder(PlanFiles files, Course course, Medicine medicine) {
        this.medicine = medicine;
        unit = medicine.unit();
        rules = files.clinic().rules();
        drawn = new DrawBuilder(files, course, medicine).build();
        containers = Container.of(medicine, files.plan().onHand().getOrDefault(medicine.id(), List.of()));
        line = timeline(drawn.draws());
        explained = files.plan().record().stream().map(RecordLine::isExplained).toList();
    }

    private Timeline timeline(List<Draw> draws) {
        int openedDays = medicine.device().pen().map(CartridgePen::openedDays).orElse(0);
        long step = medicine.device()
                .pen()
                .filter(pen -> pen.window() == Window.LEFT)
                .map(pen -> pen.dial().step().milliUnits())
                .orElse(1L);
        return new Timeline(draws, openedDays, rules.inUseDayOne(), step);
    }

    MedicineLedger build() {
        Optional<CartridgePen> pen = medicine.device().pen();
        Optional<StockVial> vial = medicine.device().stockVial();
        if (vial.isPresent()) {
            return ofVials(new VialLedger(vial.get(), rules.inUseDayOne(), containers, drawn.draws()));
        }
        return pen.isPresent() ? ofPen(pen.get()) : ofSingleDoses();
    }

    private MedicineLedger ofVials(VialLedger vials) {
        List<LedgerDay> days = drawn.evenings().stream()
                .map(evening -> new LedgerDay(evening, vials.changesOn(evening.date())))
                .toList();
        return new MedicineLedger(
                medicine,
                days,
                vials.lines(),
                drawn.draws(),
                Covered.of(drawn.evenings(), drawn.draws(), vials.total(), vials.total()),
                List.of(),
                drawn.doubts());
    }

    /** Syringes, mixed vials and what is taken are used up dose by dose; none ends in mid-dose. */
    private MedicineLedger ofSingleDoses() {
        List<LedgerDay> days = drawn.evenings().stream()
                .map(evening -> new LedgerDay(evening, List.of()))
                .toList();
        List<ContainerLine> lines = new ArrayList<>();
        Dose total = Dose.zero(unit);
        for (Container container : containers) {
            total = total.plus(container.least());
            lines.add(new ContainerLine(
                    container,
                    total,
                    total,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of()));
        }
        return new MedicineLedger(
                medicine,
                days,
                lines,
                drawn.draws(),
                Covered.of(drawn.evenings(), drawn.draws(), total, total),
                List.of(),
                drawn.doubts());
    }

    private MedicineLedger ofPen(CartridgePen pen) {
        ContainerSums sums = new ContainerSums(line, containers, pen.dial().step(), explained);
        List<Ends> ends = sums.ends();
        List<RecordDoubt> doubts = new ArrayList<>(drawn.doubts());
        doubts.addAll(sums.doubts());
        Dose leastTotal = ends.isEmpty()
                ? Dose.zero(unit)
                : dose(ends.get(ends.size() - 1).min());
        Dose mostTotal = ends.isEmpty()
                ? Dose.zero(unit)
                : dose(ends.get(ends.size() - 1).max());
        return new MedicineLedger(
                medicine,
                days(ends),
                lines(ends, pen),
                line.draws(),
                Covered.of(drawn.evenings(), line.draws(), leastTotal, mostTotal),
                lookUp(ends, pen),
                doubts);
    }

    private Dose dose(long milliUnits) {
        return new Dose(milliUnits, unit);
    }

    private List<LedgerDay> days(List<Ends> ends) {
        Map<LocalDate, List<DayChange>> changes = new HashMap<>();
        for (int index = 0; index < ends.size(); index++) {
            addChanges(index, ends.get(index), changes);
        }
        return drawn.evenings().stream()
                .map(evening -> new LedgerDay(evening, changes.getOrDefault(evening.date(), List.of())))
                .toList();
    }

    private void addChanges(int index, Ends own, Map<LocalDate, List<DayChange>> changes) {
        boolean certain = own.certainEvening(line).isPresent();
        for (Ends.Outcome outcome : own.outcomes(line)) {
            Draw draw = line.draw(outcome.draw());
            changes.computeIfAbsent(draw.date(), date -> new ArrayList<>())
                    .add(new DayChange(
                            containers.get(index).number(),
                            draw.number(),
                            outcome.draw(),
                            certain,
                            outcome.isLimit() ? DayChange.Cause.IN_USE_LIMIT : DayChange.Cause.EMPTY,
                            outcome.isLimit()
                                    ? Optional.empty()
                                    : Optional.of(owed(draw, outcome.totals(), own.isKnown())),
                            own.isKnown()));
        }
    }

    private Owed owed(Draw draw, Spans totals, boolean isRead) {
        long before = draw.before().milliUnits();
        long whole = before + draw.dialled().milliUnits();
        long after = draw.after().milliUnits();
        // Medicine lost in the same setting may have left the old container or the new one: both ends count.
        long soonest = isRead ? whole : Math.min(whole, after);
        long latest = isRead ? whole : Math.max(whole, after);
        // A record that contradicts itself is stopped elsewhere; here it must only give no amount below nothing.
        long most = Math.max(
                0,
                Math.min(latest - Math.max(totals.min(), before), draw.dialled().milliUnits()));
        long least = Math.max(0, soonest - totals.max());
        // The set of totals ends one thousandth before the setting does: what is owed starts just above zero.
        boolean aboveZero = least <= 1 && most > least;
        return new Owed(aboveZero ? dose(0) : dose(Math.min(least, most)), dose(most), aboveZero);
    }

    private List<ContainerLine> lines(List<Ends> ends, CartridgePen pen) {
        List<ContainerLine> lines = new ArrayList<>();
        Ends before = Ends.start(line);
        for (int index = 0; index < containers.size(); index++) {
            Ends own = ends.get(index);
            Optional<LocalDate> firstOpening = containers.get(index).opened().or(openings(before.min()));
            List<Ends.Outcome> outcomes = own.outcomes(line);
            Optional<LocalDate> firstEnd = outcomes.stream()
                    .map(outcome -> line.draw(outcome.draw()).date())
                    .findFirst();
            Optional<LocalDate> lastEnd = own.surelyEnds(line)
                    ? outcomes.stream()
                            .map(outcome -> line.draw(outcome.draw()).date())
                            .reduce((earlier, later) -> later)
                    : Optional.empty();
            lines.add(new ContainerLine(
                    containers.get(index),
                    dose(own.min()),
                    dose(own.max()),
                    firstOpening,
                    containers.get(index).opened().or(openings(before.max())),
                    firstOpening.map(line::lastUsable),
                    firstEnd,
                    lastEnd,
                    stopsOf(ends, index)));
            before = own;
        }
        return lines;
    }

    private Supplier<Optional<LocalDate>> openings(long total) {
        return () -> Optional.of(line.endOf(total))
                .filter(setting -> setting < line.size())
                .map(setting -> line.draw(setting).date());
    }

    /** The numbers read for one container: readings go to containers in order, one each. */
    private List<Draw.Stop> stopsOf(List<Ends> ends, int index) {
        if (!ends.get(index).isKnown()) {
            return List.of();
        }
        int draw = ends.get(index).readAt().orElseThrow();
        int earlierOnThisDraw = 0;
        for (int other = index - 1; other >= 0; other--) {
            Ends before = ends.get(other);
            if (before.isKnown() && before.readAt().orElseThrow() < draw) {
                break;
            }
            earlierOnThisDraw += before.isKnown() ? 1 : 0;
        }
        return List.of(line.draw(draw).stops().get(earlierOnThisDraw));
    }

    private List<LookUpRow> lookUp(List<Ends> ends, CartridgePen pen) {
        List<LookUpRow> rows = new ArrayList<>();
        for (int index = 0; index < ends.size(); index++) {
            List<Ends.Outcome> coming = ends.get(index).isKnown()
                    ? List.of()
                    : ends.get(index).outcomes(line).stream()
                            .filter(outcome -> !line.draw(outcome.draw()).isRecorded())
                            .toList();
            if (!coming.isEmpty()) {
                for (Ends.Outcome outcome : coming) {
                    if (!outcome.isLimit()) {
                        addRows(index, outcome, pen, rows);
                    }
                }
                return rows;
            }
        }
        return rows;
    }

    private void addRows(int index, Ends.Outcome outcome, CartridgePen pen, List<LookUpRow> rows) {
        Draw draw = line.draw(outcome.draw());
        Marks marks = new Marks(pen.dial(), rules);
        Owed owed = owed(draw, outcome.totals(), false);
        for (Dose fromNext : marks.each(owed)) {
            if (!fromNext.isMoreThan(draw.dialled())) {
                Dose window =
                        pen.window() == Window.OWED ? fromNext : draw.dialled().minus(fromNext);
                rows.add(row(index, outcome.draw(), window, fromNext, pen.dial()));
            }
        }
    }

    /** Works the end after it out exactly as if this number had been written in the record. */
    private LookUpRow row(int index, int at, Dose window, Dose fromNext, Dial dial) {
        Draw draw = line.draw(at);
        Dose total = draw.before().plus(draw.dialled().minus(fromNext));
        List<Draw> supposed = new ArrayList<>(line.draws());
        for (int earlier = 0; earlier < at; earlier++) {
            if (!supposed.get(earlier).isRecorded()) {
                supposed.set(earlier, supposed.get(earlier).provingNoEnd());
            }
        }
        supposed.set(at, draw.stoppingAt(new Draw.Stop(window, total, true)));
        Timeline then = timeline(supposed);
        List<Ends> ends = new ContainerSums(then, containers, dial.step(), explained, index + 2).ends();
        boolean hasNext = index + 1 < containers.size();
        Optional<LookUpRow.NextEnd> next = hasNext ? nextEnd(index + 1, ends.get(index + 1), then) : Optional.empty();
        return new LookUpRow(draw.date(), draw.number(), window, fromNext, next, hasNext);
    }

    private Optional<LookUpRow.NextEnd> nextEnd(int index, Ends ends, Timeline then) {
        List<Ends.Outcome> outcomes = ends.outcomes(then);
        if (outcomes.isEmpty()) {
            return Optional.empty();
        }
        LocalDate earliest = then.draw(outcomes.get(0).draw()).date();
        LocalDate latest = then.draw(outcomes.get(outcomes.size() - 1).draw()).date();
        return Optional.of(new LookUpRow.NextEnd(
                containers.get(index).number(),
                earliest,
                ends.surelyEnds(then) ? Optional.of(latest) : Optional.empty()));
    }
}
