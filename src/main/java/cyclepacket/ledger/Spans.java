package cyclepacket.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * A set of totals, as sorted closed stretches that neither overlap nor touch. Unlike one range it keeps the gaps that
 * in-use limits and readings leave.
 *
 * @param grain the distance between two totals that can be, in thousandths: 1 where content is continuous, the dial's
 *     step where a pen only gives whole marks
 */
record Spans(List<Span> list, long grain) {
    static final Spans NONE = new Spans(List.of(), 1);

    /** Both ends belong to it. */
    record Span(long least, long most) {
        Span {
            if (least > most) {
                throw new IllegalArgumentException("least " + least + " is more than most " + most);
            }
        }
    }

    Spans {
        list = List.copyOf(list);
    }

    static Spans of(long least, long most, long grain) {
        return new Spans(List.of(new Span(least, most)), grain);
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    long min() {
        return list.get(0).least();
    }

    long max() {
        return list.get(list.size() - 1).most();
    }

    /** With each of these totals. */
    Spans with(Collection<Long> totals) {
        List<Span> all = new ArrayList<>(list);
        totals.forEach(total -> all.add(new Span(total, total)));
        return merged(all, grain);
    }

    Spans with(Spans other) {
        List<Span> all = new ArrayList<>(list);
        all.addAll(other.list);
        return merged(all, Math.max(grain, other.grain));
    }

    private static Spans merged(List<Span> all, long grain) {
        all.sort(Comparator.comparingLong(Span::least));
        List<Span> merged = new ArrayList<>();
        for (Span next : all) {
            Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && next.least() <= last.most() + grain) {
                merged.set(merged.size() - 1, new Span(last.least(), Math.max(last.most(), next.most())));
            } else {
                merged.add(next);
            }
        }
        return new Spans(merged, grain);
    }

    /** What lies from {@code least} to {@code most}, both included; empty when they cross. */
    Spans between(long least, long most) {
        List<Span> inside = new ArrayList<>();
        for (Span span : list) {
            // A cut between two totals that can be falls on the nearer one inside.
            long from = least <= span.least() ? span.least() : -Math.floorDiv(-least, grain) * grain;
            long to = most >= span.most() ? span.most() : Math.floorDiv(most, grain) * grain;
            if (from <= to) {
                inside.add(new Span(from, to));
            }
        }
        return new Spans(inside, grain);
    }

    /** What is left without {@code least} to {@code most}, both included. */
    Spans without(long least, long most) {
        return least > most ? this : between(Long.MIN_VALUE, least - 1).with(between(most + 1, Long.MAX_VALUE));
    }

    /** Every total of this set plus every amount from {@code least} to {@code most}. */
    Spans plus(long least, long most) {
        List<Span> moved = new ArrayList<>();
        for (Span span : list) {
            moved.add(new Span(span.least() + least, span.most() + most));
        }
        return merged(moved, grain);
    }
}
