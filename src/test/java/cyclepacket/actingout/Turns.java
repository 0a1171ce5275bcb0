package cyclepacket.actingout;

import cyclepacket.plan.Device.Window;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * All settings in which something was or will be drawn: the past as the record tells it, the rest as planned. For
 * records without losses and without unknown amounts.
 */
final class Turns {
    private final Case plan;
    private final List<Turn> turns = new ArrayList<>();
    private long total;
    private int past;

    /**
     * One setting.
     *
     * @param before thousandths drawn in all before it
     * @param after thousandths drawn in all after it
     * @param stops how many containers stopped in it; empty when the record does not say
     * @param totals what had been drawn at each stop; empty when no number is proven
     */
    record Turn(
            LocalDate date, int setting, long before, long after, long dialled, OptionalInt stops, List<Long> totals) {
        boolean mayHave(int count) {
            return stops.isEmpty() || stops.getAsInt() >= count;
        }

        boolean isComplete(int count) {
            return stops.isEmpty() || stops.getAsInt() == count;
        }

        /** The patient gave nothing more after the last stop. */
        boolean wasGivenUp() {
            return after - before < dialled;
        }
    }

    Turns(Case plan) {
        this.plan = plan;
        plan.recordOf(plan.live(plan.truth())).forEach(this::tell);
        past = turns.size();
        for (Evening evening : plan.evenings()) {
            if (!evening.isPast()) {
                for (int setting = 1; setting <= evening.settings().size(); setting++) {
                    long dialled = evening.settings().get(setting - 1);
                    add(evening.date(), setting, dialled, dialled, OptionalInt.empty(), List.of());
                }
            }
        }
    }

    private void tell(RecordLine line) {
        if (line.given() instanceof Given.Missed) {
            return;
        }
        Evening evening = plan.evenings().stream()
                .filter(it -> it.date().equals(line.date()))
                .findFirst()
                .orElseThrow();
        long dialled = line.dialled()
                .map(Dose::milliUnits)
                .orElseGet(() -> evening.settings().get(line.setting() - 1));
        long given = line.given().known().orElseThrow().milliUnits();
        boolean provenWhole = plan.pen().window() == Window.LEFT
                ? line.windows().isEmpty() && line.dialled().isPresent()
                : line.windows().stream().anyMatch(Dose::isZero);
        boolean stopped = !line.windows().isEmpty() && !provenWhole;
        OptionalInt stops =
                stopped ? OptionalInt.of(line.windows().size()) : provenWhole ? OptionalInt.of(0) : OptionalInt.empty();
        add(
                line.date(),
                line.setting(),
                dialled,
                given,
                stops,
                stopped && line.readBack() ? totals(line, dialled) : List.of());
    }

    private List<Long> totals(RecordLine line, long dialled) {
        List<Long> totals = new ArrayList<>();
        long out = 0;
        for (Dose number : line.windows()) {
            out = plan.pen().window() == Window.LEFT ? out + number.milliUnits() : dialled - number.milliUnits();
            totals.add(total + out);
        }
        return totals;
    }

    private void add(LocalDate date, int setting, long dialled, long drawn, OptionalInt stops, List<Long> totals) {
        if (drawn > 0 || stops.orElse(0) > 0) {
            turns.add(new Turn(date, setting, total, total + drawn, dialled, stops, totals));
            total += drawn;
        }
    }

    Turn get(int turn) {
        return turns.get(turn);
    }

    int count() {
        return turns.size();
    }

    /** How many of them are in the record. */
    int past() {
        return past;
    }

    long total() {
        return total;
    }

    /** Whether the record lets all settings from {@code first} up to before {@code end} pass without a stop. */
    boolean passWithoutStop(int first, int end) {
        return turns.subList(Math.min(first, end), end).stream().allMatch(turn -> turn.isComplete(0));
    }

    /** The first setting that finds a box past its days if it is opened with this one. */
    Optional<Integer> firstPastDaysOf(int box, int opened) {
        LocalDate lastDay = plan.lastDayOf(box, turns.get(opened).date());
        for (int turn = opened; turn < turns.size(); turn++) {
            if (turns.get(turn).date().isAfter(lastDay)) {
                return Optional.of(turn);
            }
        }
        return Optional.empty();
    }
}
