package cyclepacket.ledger;

import cyclepacket.ledger.Spans.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where one container can end, given where the one before it can.
 *
 * @param empty every total, of all containers up to and with this one, at which it can run dry
 * @param limits the settings before which it can be past its in-use days and is left
 * @param readAt the setting on which the record says it stopped
 */
record Ends(Spans empty, TreeMap<Integer, Long> limits, OptionalInt readAt) {

    /** No container yet: nothing has been given. */
    static Ends start() {
        return new Ends(Spans.of(0, 0), new TreeMap<>(), OptionalInt.empty());
    }

    /** Every total at which it can end, for either cause. */
    Spans all() {
        Spans all = empty;
        for (long total : limits.values()) {
            all = all.with(total, total);
        }
        return all;
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

    /**
     * The next container, from what this one leaves open. It is opened with the first setting that goes beyond this
     * one's total; past its in-use days it is left and its rest is lost. Both sums rise with every content, so the
     * extremes of the result come from the extremes of the contents.
     *
     * @param least the least it gives
     * @param most the most it gives, in sums that may have counted more than was drawn
     */
    Ends next(long least, long most, Optional<LocalDate> opened, Timeline line) {
        Spans empty = Spans.NONE;
        TreeMap<Integer, Long> limits = new TreeMap<>();
        Spans before = all();
        int index = 0;
        while (index < line.size()) {
            int last = line.lastOfEvening(index);
            Spans openings = before.between(line.start(index), line.endExclusive(last) - 1);
            OptionalInt cut = line.firstPastLimit(opened.orElse(line.draw(index).date()));
            for (Span span : openings.list()) {
                empty = empty.with(emptied(span, least, most, cut, line, limits));
            }
            index = last + 1;
        }
        Spans unopened = before.between(line.total(), Long.MAX_VALUE);
        for (Span span : unopened.list()) {
            empty = empty.with(span.least() + least, span.most() + most);
        }
        return new Ends(empty, limits, OptionalInt.empty());
    }

    private static Spans emptied(
            Span opening, long least, long most, OptionalInt cut, Timeline line, TreeMap<Integer, Long> limits) {
        Spans reach = Spans.of(opening.least() + least, opening.most() + most);
        if (cut.isEmpty()) {
            return reach;
        }
        long limit = line.draw(cut.getAsInt()).before().milliUnits();
        if (reach.max() >= limit) {
            limits.put(cut.getAsInt(), limit);
        }
        return reach.between(Long.MIN_VALUE, limit - 1);
    }

    /** Without the settings in which the record proves that nothing ended. */
    Ends without(List<Integer> proven, Timeline line) {
        Spans rest = empty;
        for (int index : proven) {
            rest = rest.without(line.start(index), line.endExclusive(index) - 1);
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
        List<Outcome> outcomes = new ArrayList<>();
        if (readAt.isPresent()) {
            return List.of(new Outcome(readAt.getAsInt(), false, empty));
        }
        for (int index = 0; index < line.size(); index++) {
            if (limits.containsKey(index)) {
                long total = limits.get(index);
                outcomes.add(new Outcome(index, true, Spans.of(total, total)));
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
