package cyclepacket.ledger;

import cyclepacket.course.Course;
import cyclepacket.course.DatedDose;
import cyclepacket.course.HeldDose;
import cyclepacket.ledger.Evening.State;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Puts what happened and what is still planned into one row of settings: what happened replaces what was planned. */
final class DrawBuilder {
    private final Plan plan;
    private final Medicine medicine;
    private final PlanFiles files;
    private final Map<LocalDate, List<DatedDose>> ordered = new TreeMap<>();
    private final Map<LocalDate, HeldDose> held = new TreeMap<>();
    private final Map<LocalDate, List<Integer>> lines = new TreeMap<>();
    private final List<Draw> draws = new ArrayList<>();
    private final List<Evening> evenings = new ArrayList<>();
    private final List<RecordDoubt> doubts = new ArrayList<>();
    private Dose total;
    private Optional<RecordLine> loaded = Optional.empty();

    /** What comes out: settings in order, their evenings, and what the record leaves open. */
    record Drawn(List<Draw> draws, List<Evening> evenings, List<RecordDoubt> doubts, Dose total) {}

    DrawBuilder(PlanFiles files, Course course, Medicine medicine) {
        this.files = files;
        this.plan = files.plan();
        this.medicine = medicine;
        total = Dose.zero(medicine.unit());
        for (DatedDose dose : course.dosesOf(medicine.id())) {
            ordered.computeIfAbsent(dose.date(), day -> new ArrayList<>()).add(dose);
        }
        course.heldOf(medicine.id()).forEach(dose -> held.put(dose.date(), dose));
    }

    Drawn build() {
        collectLines();
        Set<LocalDate> days = new TreeSet<>(ordered.keySet());
        days.addAll(held.keySet());
        days.addAll(lines.keySet());
        for (LocalDate day : days) {
            addEvening(day, ordered.getOrDefault(day, List.of()), lines.getOrDefault(day, List.of()));
        }
        return new Drawn(List.copyOf(draws), List.copyOf(evenings), List.copyOf(doubts), total);
    }

    private void collectLines() {
        LocalDate last = LocalDate.MIN;
        for (int index = 0; index < plan.record().size(); index++) {
            RecordLine line = plan.record().get(index);
            if (!line.medicine().equals(medicine.id())) {
                continue;
            }
            if (line.date().isBefore(last)) {
                doubt(RecordDoubt.Kind.OUT_OF_ORDER, index, line.date().toString());
            }
            if (line.date().isAfter(plan.prepared().on())) {
                doubt(RecordDoubt.Kind.IN_FUTURE, index, line.date().toString());
            }
            last = line.date().isAfter(last) ? line.date() : last;
            lines.computeIfAbsent(line.date(), day -> new ArrayList<>()).add(index);
        }
    }

    private void addEvening(LocalDate day, List<DatedDose> doses, List<Integer> ownLines) {
        List<Dose> planned =
                doses.stream().flatMap(dose -> settings(dose.amount()).stream()).toList();
        List<Dose> dialled = new ArrayList<>();
        Tally tally = new Tally();
        loaded = ownLines.stream()
                .map(plan.record()::get)
                .filter(line -> line.isLoadOnly() && !isFirstLoading(line))
                .findFirst()
                .or(() -> loaded);
        for (int index : ownLines) {
            addLine(index, plan.record().get(index), planned, dialled, tally);
        }
        boolean wholeEveningMissed = tally.missed && tally.done.size() == 1;
        for (int number = 1; number <= planned.size(); number++) {
            if (!tally.done.contains(number) && !wholeEveningMissed) {
                addPlanned(day, number, planned.get(number - 1), tally.done.isEmpty());
                dialled.add(planned.get(number - 1));
                tally.open = true;
            }
        }
        Dose sum = doses.stream().map(DatedDose::amount).reduce(Dose.zero(medicine.unit()), Dose::plus);
        evenings.add(new Evening(
                day,
                doses.stream()
                        .map(DatedDose::day)
                        .findFirst()
                        .or(() -> heldOn(day).map(HeldDose::day))
                        .orElse(""),
                doses.stream()
                        .map(DatedDose::at)
                        .findFirst()
                        .or(() -> heldOn(day).map(HeldDose::at)),
                sum,
                state(day, doses, tally, sum),
                tally.done.isEmpty() ? Optional.empty() : Optional.of(tally.given),
                dialled));
    }

    /** What the lines of one evening add up to. */
    private final class Tally {
        private final Set<Integer> done = new HashSet<>();
        private Dose given = Dose.zero(medicine.unit());
        private boolean missed;
        private boolean unknown;
        private boolean open;
    }

    private Optional<HeldDose> heldOn(LocalDate day) {
        return Optional.ofNullable(held.get(day));
    }

    private State state(LocalDate day, List<DatedDose> doses, Tally tally, Dose sum) {
        if (tally.done.isEmpty()) {
            boolean waits = doses.stream().anyMatch(DatedDose::isProvisional)
                    || heldOn(day).filter(HeldDose::isProvisional).isPresent();
            return waits ? State.PROVISIONAL : State.PLANNED;
        }
        if (tally.missed && tally.given.isZero() && !tally.unknown && !tally.open) {
            return State.MISSED;
        }
        return tally.given.equals(sum) && !tally.unknown && !tally.open ? State.GIVEN : State.PARTIAL;
    }

    private List<Dose> settings(Dose dose) {
        if (dose.isZero()) {
            return List.of();
        }
        List<Dose> split = medicine.device()
                .pen()
                .map(pen -> DoseSplit.settings(
                        dose, pen.dial(), files.clinic().rules().splitDose()))
                .orElse(List.of());
        // A dose that no dial can set is refused by a rule of its own; the sums still show what it would need.
        return split.isEmpty() ? List.of(dose) : split;
    }

    private void addPlanned(LocalDate day, int number, Dose amount, boolean wholeEvening) {
        if (plan.issue() > 1 && day.isBefore(plan.prepared().on())) {
            String what = wholeEvening ? day.toString() : day + ", injection " + number;
            if (!wholeEvening || number == 1) {
                doubts.add(new RecordDoubt(RecordDoubt.Kind.GAP, -1, false, what));
            }
        }
        Dose before = total;
        total = total.plus(usedUpBy(amount));
        Dose none = Dose.zero(medicine.unit());
        boolean isNext = loaded.isPresent() && medicine.device().pen().isPresent();
        List<Draw.Stop> stops = isNext ? List.of(new Draw.Stop(none, before, true, isPutAway())) : List.of();
        loaded = Optional.empty();
        draws.add(new Draw(day, number, amount, before, total, Optional.empty(), Optional.empty(), false, stops, none));
    }

    private void addLine(int index, RecordLine line, List<Dose> planned, List<Dose> dialled, Tally tally) {
        if (line.isLossOnly()) {
            total = total.plus(line.lost().orElseThrow());
            return;
        }
        if (line.isLoadOnly()) {
            return;
        }
        if (!tally.done.add(line.setting())) {
            doubt(RecordDoubt.Kind.TWICE, index, line.date() + ", injection " + line.setting());
        }
        if (line.setting() > planned.size()) {
            doubt(RecordDoubt.Kind.OFF_COURSE, index, line.date() + ", injection " + line.setting());
        }
        if (line.given() instanceof Given.Missed) {
            tally.missed = true;
            total = total.plus(line.lost().orElse(Dose.zero(medicine.unit())));
            return;
        }
        Optional<Dose> order =
                line.setting() > planned.size() ? Optional.empty() : Optional.of(planned.get(line.setting() - 1));
        Draw draw = medicine.device()
                .pen()
                .map(pen -> penDraw(index, line, order, pen))
                .orElseGet(() -> syringeDraw(index, line, order));
        draws.add(draw);
        total = draw.after();
        dialled.add(draw.dialled());
        draw.given().ifPresent(amount -> tally.given = tally.given.plus(amount));
        tally.unknown |= draw.given().isEmpty();
    }

    private Draw penDraw(int index, RecordLine line, Optional<Dose> order, CartridgePen pen) {
        RecordedSetting setting = RecordedSetting.of(
                line, order, pen.window(), medicine.unit(), (kind, subject) -> doubt(kind, index, subject));
        List<Draw.Stop> stops = setting.stops(total, pen.window(), line.readBack());
        boolean isLoaded = loaded.isPresent() || (line.loaded().isPresent() && !isFirstLoading(line));
        if (stops.isEmpty() && isLoaded) {
            // The old one ended in this setting and nobody wrote the number; when the whole setting ran through, before
            // it.
            stops = List.of(new Draw.Stop(Dose.zero(medicine.unit()), total, setting.provesNoEnd(), isPutAway()));
        }
        loaded = Optional.empty();
        if (!stops.isEmpty() && !line.readBack() && !setting.provesNoEnd()) {
            doubt(RecordDoubt.Kind.NOT_CONFIRMED, index, stops.get(0).window().toString());
        }
        boolean offDial = pen.window() == Window.LEFT
                && setting.stopWindows().stream()
                        .anyMatch(shown -> !shown.isMultipleOf(pen.dial().step()));
        if (offDial) {
            doubt(
                    RecordDoubt.Kind.WINDOW_OFF_DIAL,
                    index,
                    setting.stopWindows().get(0).toString());
        }
        return new Draw(
                line.date(),
                line.setting(),
                setting.dialled(),
                total,
                total.plus(setting.drawn()),
                setting.given(),
                Optional.of(index),
                setting.provesNoEnd() && stops.isEmpty(),
                stops,
                setting.unknown());
    }

    /** What a dose takes out of the stock: part vials that are mixed, and part pieces that are not halved, count whole. */
    private Dose usedUpBy(Dose amount) {
        boolean isWhole = medicine.device().mixedVial().isPresent()
                || medicine.device().taken().filter(taken -> !taken.halves()).isPresent();
        return isWhole ? amount.toMultipleOf(medicine.sizes().get(0).label(), java.math.RoundingMode.CEILING) : amount;
    }

    /** Before anything was drawn the first box ends none. */
    private boolean isFirstLoading(RecordLine line) {
        return total.isZero()
                && Container.of(medicine, plan.onHand().getOrDefault(medicine.id(), List.of())).stream()
                        .findFirst()
                        .filter(first -> line.loaded()
                                .filter(box -> box == first.number())
                                .isPresent())
                        .isPresent();
    }

    private boolean isPutAway() {
        return loaded.filter(RecordLine::isExplained).isPresent();
    }

    private Draw syringeDraw(int index, RecordLine line, Optional<Dose> order) {
        Dose none = Dose.zero(medicine.unit());
        boolean unknown = line.given() instanceof Given.Unknown;
        Dose amount = line.given().known().or(() -> order).orElse(none);
        if (line.given() instanceof Given.NotWritten) {
            doubt(RecordDoubt.Kind.SAYS_NOTHING, index, amount.toString());
        }
        if (!line.windows().isEmpty()) {
            doubt(RecordDoubt.Kind.WINDOW_OFF_DIAL, index, line.windows().get(0).toString());
        }
        // A syringe that was begun is used up, however little of it reached the patient.
        Dose used = amount.isZero() ? amount : usedUpBy(amount.max(order.orElse(amount)));
        Dose after = total.plus(used).plus(line.lost().orElse(none));
        return new Draw(
                line.date(),
                line.setting(),
                amount,
                total,
                after,
                unknown ? Optional.empty() : Optional.of(amount),
                Optional.of(index),
                false,
                List.of(),
                none);
    }

    private void doubt(RecordDoubt.Kind kind, int line, String subject) {
        doubts.add(new RecordDoubt(kind, line, plan.record().get(line).isExplained(), subject));
    }
}
