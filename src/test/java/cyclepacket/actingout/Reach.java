package cyclepacket.actingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every amount that a box can have let out in all when it ends, over all contents at once, for a plan without a past.
 * It lists which ends can happen, and finds for each of them contents that make it happen, so that they can be acted.
 */
final class Reach {
    private final Case plan;
    private final Timeline line;
    private final long unit;
    private final List<List<Span>> spans = new ArrayList<>();

    /**
     * Totals of the boxes up to one that ends.
     *
     * @param least in units of the pen: marks when it shows what is left, else thousandths
     * @param most in the same units, included
     * @param thrownOn the evening that finds it past its days, from 0; empty when it ends by stopping the pen
     */
    record Span(long least, long most, Optional<Integer> thrownOn) {}

    /** An end that can happen, with the span of totals that make it happen. */
    record Possible(int box, int turn, Span totals) {}

    Reach(Case plan) {
        this.plan = plan;
        this.unit = plan.pen().letsOut(1) == 1 ? 1 : plan.pen().step();
        this.line = new Timeline(plan, unit);
        spans.add(List.of(new Span(0, 0, Optional.empty())));
        for (int box = 1; box <= plan.boxes().size(); box++) {
            spans.add(after(box));
        }
    }

    private long least(int box) {
        return (plan.boxes().get(box - 1).least() - plan.usedOf(box)) / unit;
    }

    private long most(int box) {
        return (plan.boxes().get(box - 1).most() - plan.usedOf(box)) / unit;
    }

    private List<Span> after(int box) {
        List<Span> ends = new ArrayList<>();
        for (Possible before : cut(spans.get(box - 1), box - 1)) {
            long least = before.totals().least() + least(box);
            long most = before.totals().most() + most(box);
            Optional<Integer> limit = line.eveningPastDaysOf(box, before.turn());
            long atLimit = limit.map(line::totalBeforeEvening).orElse(Long.MAX_VALUE);
            if (least < atLimit) {
                ends.add(new Span(least, Math.min(most, atLimit - 1), Optional.empty()));
            }
            if (most >= atLimit) {
                ends.add(new Span(atLimit, atLimit, limit));
            }
        }
        return ends.stream().distinct().toList();
    }

    /** Cuts spans where one injection passes into the next; what lies beyond the last injection never ends. */
    private List<Possible> cut(List<Span> whole, int box) {
        List<Possible> parts = new ArrayList<>();
        for (Span span : whole) {
            for (int turn = 0; turn < line.turns(); turn++) {
                long least = Math.max(span.least(), line.totalBefore(turn));
                long most = Math.min(span.most(), line.totalBefore(turn + 1) - 1);
                if (least <= most) {
                    parts.add(new Possible(box, turn, new Span(least, most, span.thrownOn())));
                }
            }
        }
        return parts;
    }

    List<Possible> possibleEnds() {
        List<Possible> ends = new ArrayList<>();
        for (int box = 1; box <= plan.boxes().size(); box++) {
            ends.addAll(cut(spans.get(box), box));
        }
        return ends;
    }

    /** The end that a total within this possible end brings about. */
    End endAt(Possible end, long total) {
        int turn = end.turn();
        boolean thrown = end.totals().thrownOn().isPresent();
        long owed = thrown ? 0 : (line.totalBefore(turn + 1) - total) * unit;
        return new End(end.box(), line.dateOf(turn), line.settingOf(turn), thrown, owed, 0);
    }

    /** Contents of the boxes up to {@code box} with which it ends at {@code total} in the way of {@code span}. */
    List<Long> contentsFor(int box, long total, Optional<Integer> thrownOn, Chance chance) {
        if (box == 0) {
            return new ArrayList<>();
        }
        for (Possible before : cut(spans.get(box - 1), box - 1)) {
            Optional<Integer> limit = line.eveningPastDaysOf(box, before.turn());
            long atLimit = limit.map(line::totalBeforeEvening).orElse(Long.MAX_VALUE);
            boolean fits = thrownOn.isPresent() ? thrownOn.equals(limit) && atLimit == total : total < atLimit;
            long least = Math.max(before.totals().least(), total - most(box));
            long most = thrownOn.isPresent()
                    ? before.totals().most()
                    : Math.min(before.totals().most(), total - least(box));
            if (fits && least <= most) {
                long value = chance.from(least, most);
                List<Long> contents =
                        contentsFor(box - 1, value, before.totals().thrownOn(), chance);
                long content = thrownOn.isPresent()
                        ? chance.from(Math.max(least(box), total - value), most(box))
                        : total - value;
                Box it = plan.boxes().get(box - 1);
                contents.add(Math.max(it.least(), plan.usedOf(box) + content * unit));
                return contents;
            }
        }
        throw new IllegalStateException("no contents end box " + box + " at " + total);
    }
}
