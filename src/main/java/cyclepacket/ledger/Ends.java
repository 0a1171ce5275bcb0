package cyclepacket.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Where one container can end, given where the one before it can.
 *
 * @param empty every total, of all containers up to and with this one, at which it can run dry
 * @param limits the settings before which it can be past its in-use days and is left
 * @param readAt the setting on which the record says it stopped
 */
record Ends(Spans empty, TreeMap<Integer, Long> limits, OptionalInt readAt) {

    /** No container yet: nothing has been given. */
    static Ends start(Timeline line) {
        return new Ends(Spans.of(0, 0, line.grain()), new TreeMap<>(), OptionalInt.empty());
    }

    /** Every total at which it can end, for either cause. */
    Spans all() {
        return limits.isEmpty() ? empty : empty.with(limits.values());
    }

    long min() {
        return all().min();
    }

    long max() {
        return all().max();
    }

    boolean isKnown() {
        return readAt.isPresent();
    }

    /** Without any way to end. */
    static Ends none() {
        return new Ends(Spans.NONE, new TreeMap<>(), OptionalInt.empty());
    }

    boolean isEmpty() {
        return empty.isEmpty() && limits.isEmpty();
    }

    /** Every end of both. */
    Ends or(Ends other) {
        TreeMap<Integer, Long> both = new TreeMap<>(limits);
        both.putAll(other.limits);
        return new Ends(empty.with(other.empty), both, readAt.isPresent() ? readAt : other.readAt);
    }

    /** Only ends before setting {@code index}: run dry earlier, or left before it. */
    Ends before(int index, Timeline line) {
        return new Ends(
                empty.between(Long.MIN_VALUE, line.start(index) - 1),
                new TreeMap<>(limits.headMap(index, true)),
                OptionalInt.empty());
    }

    /** Without the settings in which the record proves that nothing ended. */
    Ends without(BitSet proven, Timeline line) {
        Spans rest = empty;
        if (!empty.isEmpty()) {
            int last = line.endOf(empty.max());
            for (int index = proven.nextSetBit(line.endOf(empty.min()));
                    index >= 0 && index <= last;
                    index = proven.nextSetBit(index + 1)) {
                rest = rest.without(line.start(index), line.endExclusive(index) - 1);
            }
        }
        return new Ends(rest, limits, readAt);
    }

    /** Only totals from {@code least} to {@code most}. */
    Ends within(long least, long most) {
        TreeMap<Integer, Long> kept = new TreeMap<>(limits);
        kept.values().removeIf(total -> total < least || total > most);
        return new Ends(empty.between(least, most), kept, readAt);
    }

    /** One way a container can end: on which setting, for which cause, at which totals. */
    record Outcome(int draw, boolean isLimit, Spans totals) {}

    /** Every way it can end in the course, in order. */
    List<Outcome> outcomes(Timeline line) {
        if (readAt.isPresent()) {
            return List.of(new Outcome(readAt.getAsInt(), false, empty));
        }
        TreeSet<Integer> settings = new TreeSet<>(limits.keySet());
        if (!empty.isEmpty()) {
            int last = Math.min(line.endOf(empty.max()), line.size() - 1);
            IntStream.rangeClosed(line.endOf(empty.min()), last).forEach(settings::add);
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int index : settings) {
            if (limits.containsKey(index)) {
                long total = limits.get(index);
                outcomes.add(new Outcome(index, true, Spans.of(total, total, line.grain())));
            }
            Spans here = empty.between(line.start(index), line.endExclusive(index) - 1);
            if (!here.isEmpty()) {
                outcomes.add(new Outcome(index, false, here));
            }
        }
        return Collections.unmodifiableList(outcomes);
    }

    /** Whether every content ends it in the course. */
    boolean surelyEnds(Timeline line) {
        return isKnown() || empty.isEmpty() || empty.max() < line.total();
    }

    /** The one evening on which every content ends it. */
    Optional<LocalDate> certainEvening(Timeline line) {
        TreeSet<LocalDate> evenings = new TreeSet<>();
        outcomes(line).forEach(outcome -> evenings.add(line.draw(outcome.draw()).date()));
        return surelyEnds(line) && evenings.size() == 1 ? Optional.of(evenings.first()) : Optional.empty();
    }
}
