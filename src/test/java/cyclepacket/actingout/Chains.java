package cyclepacket.actingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * All ways in which the boxes can have ended, one after the other, that agree with a record: first forward over all
 * contents, then backward so that only what can go on to the last line stays.
 */
final class Chains {
    private final Case plan;
    private final Turns turns;
    private final List<List<Link>> links = new ArrayList<>();
    private int firstThatMayLast;

    /** A range of totals at which a box ends in one setting; {@code stop} is 0 when it is thrown away before it. */
    static final class Link {
        final int box;
        final int turn;
        final int stop;
        final long least;
        final long most;
        /** The parts of the range from which the record can be lived to its end. */
        final List<long[]> lived = new ArrayList<>();

        Link(int box, int turn, int stop, long least, long most) {
            this.box = box;
            this.turn = turn;
            this.stop = stop;
            this.least = least;
            this.most = most;
        }

        void livesFrom(long from, long to) {
            if (Math.max(from, least) <= Math.min(to, most)) {
                lived.add(new long[] {Math.max(from, least), Math.min(to, most)});
            }
        }
    }

    Chains(Case plan) {
        this.plan = plan;
        this.turns = new Turns(plan);
        int boxes = plan.boxes().size();
        firstThatMayLast = boxes + 1;
        Link start = new Link(0, -1, 0, 0, 0);
        links.add(List.of(start));
        for (int box = 1; box <= boxes; box++) {
            List<Link> next = new ArrayList<>();
            links.get(box - 1).forEach(link -> next.addAll(after(link)));
            links.add(next);
        }
        for (int box = boxes; box >= 0; box--) {
            links.get(box).forEach(this::live);
        }
    }

    List<Link> livedLinks(int box) {
        return links.get(box).stream().filter(link -> !link.lived.isEmpty()).toList();
    }

    /** The first box that may not end in the course; one more than there are when all end for certain. */
    int firstThatMayLast() {
        return firstThatMayLast;
    }

    /** Whether some stop in the record may belong to either of two boxes. */
    boolean hasAStopOfTwoBoxes() {
        return links.stream()
                .flatMap(List::stream)
                .filter(link -> link.stop > 0 && !link.lived.isEmpty())
                .filter(link -> turns.get(link.turn).stops().isPresent())
                .collect(Collectors.groupingBy(
                        link -> List.of(link.turn, link.stop),
                        Collectors.mapping(link -> link.box, Collectors.toSet())))
                .values()
                .stream()
                .anyMatch(boxes -> boxes.size() > 1);
    }

    Turns turns() {
        return turns;
    }

    /** The smallest difference between two totals. */
    long unit() {
        return plan.pen().letsOut(1) == 1 ? 1 : plan.pen().step();
    }

    private long leastOf(int box) {
        return plan.pen().letsOut(plan.boxes().get(box - 1).least() - plan.usedOf(box));
    }

    private long mostOf(int box) {
        return plan.pen().letsOut(plan.boxes().get(box - 1).most() - plan.usedOf(box));
    }

    private int openingAfter(Link link) {
        if (link.box == 0) {
            return 0;
        }
        boolean nothingMore = link.stop > 0 && turns.get(link.turn).wasGivenUp() && isLastStop(link);
        return nothingMore ? link.turn + 1 : link.turn;
    }

    private boolean isLastStop(Link link) {
        return turns.get(link.turn).stops().orElse(0) == link.stop;
    }

    private boolean isComplete(Link link) {
        return link.box == 0 || turns.get(link.turn).isComplete(link.stop);
    }

    /** Whether nothing is told between a link and the setting {@code turn} that a later stop would contradict. */
    private boolean reaches(Link link, int turn) {
        return turn == link.turn || isComplete(link) && turns.passWithoutStop(link.turn + 1, turn);
    }

    private List<Link> after(Link link) {
        List<Link> next = new ArrayList<>();
        int opening = openingAfter(link);
        if (opening >= turns.count()) {
            return next;
        }
        int box = link.box + 1;
        long least = link.least + leastOf(box);
        long most = link.most + mostOf(box);
        int limit = turns.firstPastDaysOf(link.box + 1, opening).orElse(turns.count());
        for (int turn = opening; turn < limit; turn++) {
            stopIn(link, turn, least, most).ifPresent(next::add);
        }
        if (limit < turns.count() && most >= turns.get(limit).before() && reaches(link, limit)) {
            next.add(new Link(
                    box, limit, 0, turns.get(limit).before(), turns.get(limit).before()));
        }
        return next;
    }

    private Optional<Link> stopIn(Link link, int turn, long least, long most) {
        Turns.Turn it = turns.get(turn);
        int stop = turn == link.turn ? link.stop + 1 : 1;
        if (!reaches(link, turn) || !it.mayHave(stop)) {
            return Optional.empty();
        }
        boolean known = !it.totals().isEmpty();
        long from = Math.max(least, known ? it.totals().get(stop - 1) : it.before());
        long to = Math.min(most, known ? it.totals().get(stop - 1) : it.after() - unit());
        return from <= to ? Optional.of(new Link(link.box + 1, turn, stop, from, to)) : Optional.empty();
    }

    private void live(Link link) {
        int opening = openingAfter(link);
        if (opening >= turns.count()) {
            if (isComplete(link)) {
                link.livesFrom(link.least, link.most);
                lasts(link.box + 1);
            }
            return;
        }
        if (link.box == plan.boxes().size()) {
            if (opening >= turns.past()) {
                link.livesFrom(link.least, link.most);
            }
            return;
        }
        int limit = turns.firstPastDaysOf(link.box + 1, opening).orElse(turns.count());
        if (limit == turns.count() && reaches(link, turns.count())) {
            int before = link.lived.size();
            link.livesFrom(turns.total() - mostOf(link.box + 1), Long.MAX_VALUE);
            if (link.lived.size() > before) {
                lasts(link.box + 1);
            }
        }
        after(link)
                .forEach(next -> links.get(link.box + 1).stream()
                        .filter(same -> same.turn == next.turn && same.stop == next.stop)
                        .filter(same -> same.least == next.least && same.most == next.most)
                        .findFirst()
                        .ifPresent(same -> same.lived.forEach(part -> liveBefore(link, next, part))));
    }

    private void liveBefore(Link link, Link next, long[] part) {
        long most = next.stop == 0 ? Long.MAX_VALUE : part[1] - leastOf(next.box);
        link.livesFrom(part[0] - mostOf(next.box), most);
    }

    private void lasts(int box) {
        firstThatMayLast = Math.min(firstThatMayLast, box);
    }
}
