package cyclepacket.actingout;

import cyclepacket.plan.RecordLine;
import java.util.ArrayList;
import java.util.List;

/** Finds other contents of the boxes with which the same record would have been written. */
final class OtherWorlds {
    private final Case plan;
    private final Chance chance;
    private final Worlds worlds;
    private final List<RecordLine> facts;

    OtherWorlds(Case plan, Chance chance) {
        this.plan = plan;
        this.chance = chance;
        this.worlds = new Worlds(chance, plan.pen(), plan.boxes());
        this.facts = Diary.factsOf(plan.recordOf(plan.live(plan.truth())));
    }

    /** The truth, and each of so many tries that cannot be told from it by the record. */
    List<List<Long>> found(int tries) {
        List<List<Long>> found = new ArrayList<>(List.of(plan.truth()));
        for (int attempt = 0; attempt < tries; attempt++) {
            List<Long> candidate = candidate(found.get(chance.from(0, found.size() - 1)), attempt);
            if (fits(candidate)) {
                found.add(candidate);
            }
        }
        return found;
    }

    private boolean fits(List<Long> candidate) {
        Story story = plan.live(candidate);
        return plan.isPossible(story) && Diary.factsOf(plan.recordOf(story)).equals(facts);
    }

    private List<Long> candidate(List<Long> known, int attempt) {
        return switch (attempt) {
            case 0 -> later(known, true);
            case 1 -> later(known, false);
            default -> chance.in100(40) ? shifted(known) : oneOther(known);
        };
    }

    /** All boxes that were not opened in the past, at their least or their most. */
    private List<Long> later(List<Long> known, boolean most) {
        int opened =
                (int) plan.live(known).openedOn().stream().filter(plan::isPast).count();
        List<Long> contents = new ArrayList<>(known);
        for (int index = opened; index < contents.size(); index++) {
            Box box = plan.boxes().get(index);
            contents.set(index, most ? box.most() : box.least());
        }
        return contents;
    }

    private List<Long> oneOther(List<Long> known) {
        int index = chance.from(0, known.size() - 1);
        Box box = plan.boxes().get(index);
        long content = chance.in100(40)
                ? chance.oneOf(0, 1) == 0 ? box.least() : box.most()
                : chance.from(box.least(), box.most());
        return worlds.withOther(known, index, content);
    }

    /** What one box holds more, its neighbour holds less. */
    private List<Long> shifted(List<Long> known) {
        if (known.size() < 2) {
            return oneOther(known);
        }
        int index = chance.from(0, known.size() - 2);
        Box box = plan.boxes().get(index);
        long more = chance.from(box.least(), box.most()) - known.get(index);
        List<Long> first = worlds.withOther(known, index, known.get(index) + more);
        return worlds.withOther(first, index + 1, known.get(index + 1) - more);
    }
}
