package cyclepacket.actingout;

import java.util.ArrayList;
import java.util.List;

/** Chooses true contents for boxes: any, on dial marks, or such that a container ends exactly with an injection. */
record Worlds(Chance chance, Pen pen, List<Box> boxes) {

    List<Long> any(boolean onMarks) {
        return boxes.stream().map(box -> content(box, onMarks)).toList();
    }

    private long content(Box box, boolean onMarks) {
        return switch (chance.from(0, 9)) {
            case 0 -> box.least();
            case 1 -> box.most();
            default ->
                onMarks
                        ? Math.max(box.least(), chance.markFrom(box.least(), box.most(), pen.step()))
                        : chance.from(box.least(), box.most());
        };
    }

    /**
     * Contents of which the first {@code count} boxes together let out exactly {@code total}.
     *
     * @return contents for all boxes; as near as the boxes allow if {@code total} is out of reach
     */
    List<Long> summingTo(int count, long total) {
        List<Long> contents = new ArrayList<>();
        long rest = total;
        for (int index = 0; index < boxes.size(); index++) {
            Box box = boxes.get(index);
            if (index >= count) {
                contents.add(chance.from(box.least(), box.most()));
                continue;
            }
            long least = Math.max(box.least(), rest - lettingOut(index + 1, count, true));
            long most = Math.min(box.most(), rest - lettingOut(index + 1, count, false));
            long content = least >= most ? within(box, least) : chance.from(least, most);
            contents.add(content);
            rest -= pen.letsOut(content);
        }
        return contents;
    }

    private static long within(Box box, long content) {
        return Math.max(box.least(), Math.min(box.most(), content));
    }

    private long lettingOut(int from, int until, boolean most) {
        long sum = 0;
        for (Box box : boxes.subList(Math.min(from, until), until)) {
            sum += pen.letsOut(most ? box.most() : box.least());
        }
        return sum;
    }

    /** The same contents with one box filled anew. */
    List<Long> withOther(List<Long> contents, int index, long content) {
        List<Long> other = new ArrayList<>(contents);
        other.set(index, within(boxes.get(index), content));
        return other;
    }
}
