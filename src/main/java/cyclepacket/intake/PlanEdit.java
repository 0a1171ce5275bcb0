package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.quantity.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plan's text under edit. Each step splices one value in at the node's mark and keeps every other byte: comments, line
 * ends, odd spacing. Each result is read back, so that a wrong splice never leaves here.
 */
public final class PlanEdit {
    private final SpliceText text;
    private final boolean hasMark;
    private final Tree.Mapping plan;

    private PlanEdit(SpliceText text, boolean hasMark, Tree.Mapping plan) {
        this.text = text;
        this.hasMark = hasMark;
        this.plan = plan;
    }

    /** @throws Refusal if the bytes are not one YAML mapping */
    public static PlanEdit of(byte[] planBytes) {
        boolean hasMark = new String(planBytes, StandardCharsets.UTF_8).startsWith("\uFEFF");
        return of(Source.of("plan", planBytes), planBytes, hasMark);
    }

    private static PlanEdit of(Source source, byte[] bytes, boolean hasMark) {
        List<Finding> found = new ArrayList<>(SourceCheck.run(source, bytes));
        if (found.isEmpty()
                && TreeReader.read(source, found).orElse(null) instanceof Tree.Mapping mapping
                && found.isEmpty()) {
            return new PlanEdit(new SpliceText(source), hasMark, mapping);
        }
        throw new Refusal("this text is not a plan", "run ./cyclepacket check on it first");
    }

    public byte[] bytes() {
        return ((hasMark ? "\uFEFF" : "") + text.source().text()).getBytes(StandardCharsets.UTF_8);
    }

    boolean isFlow() {
        return plan.isFlow();
    }

    /** How many lines a list has; none when it is not written. */
    public int size(String pointer) {
        return at(pointer) instanceof Tree.Sequence list ? list.items().size() : 0;
    }

    /** Adds an item at the end of a list; the list is made when the plan has none. */
    public PlanEdit append(String pointer, String item) {
        return insert(pointer, size(pointer), item);
    }

    /** Puts an item before the {@code index}-th of a list, counted from 0. */
    public PlanEdit insert(String pointer, int index, String item) {
        Tree added = parsed(item);
        if (!(at(pointer) instanceof Tree.Sequence list)) {
            return put(pointer, "[" + item + "]").withList(pointer);
        }
        SpliceText.Splice splice = list.items().isEmpty() ? firstItem(pointer, list, item) : item(list, index, item);
        return checked(splice, TreeEdit.inserted(plan, pointer, index, added));
    }

    /** A list that was just made reads better with one line an item, where the plan is written so. */
    private PlanEdit withList(String pointer) {
        Walk walk = Walk.from(Optional.of(plan), pointer);
        Tree.Sequence list = (Tree.Sequence) walk.reached().orElseThrow();
        if (plan.isFlow() || !text.isAlone(list)) {
            return this;
        }
        return checked(text.asBlock(list, walk.keySpot()), plan);
    }

    private SpliceText.Splice firstItem(String pointer, Tree.Sequence list, String item) {
        Walk walk = Walk.from(Optional.of(plan), pointer);
        boolean isBlock = !plan.isFlow() && text.isAlone(list);
        return isBlock ? text.firstLine(list, walk.keySpot(), item) : text.afterBracket(list, item);
    }

    private SpliceText.Splice item(Tree.Sequence list, int index, String item) {
        if (text.isFlow(list)) {
            return index == 0
                    ? text.afterBracket(list, item + ", ")
                    : text.after(list.items().get(index - 1), ", " + item);
        }
        String dashed = text.dashOf(list.items().get(0)) + "- " + item;
        return index == 0
                ? text.lineBefore(list.items().get(0), dashed)
                : text.lineAfter(list.items().get(index - 1), dashed);
    }

    /** Writes a value under a key: over the old one, or as the last key of its group. */
    public PlanEdit put(String pointer, String value) {
        return put(pointer, value, "");
    }

    /** @param after the key behind whose line a new key is put; empty for the end of its group */
    public PlanEdit put(String pointer, String value, String after) {
        int slash = pointer.lastIndexOf('/');
        String parent = pointer.substring(0, slash);
        String key = Pointers.names(pointer.substring(slash)).get(0);
        Tree group = at(parent);
        if (!(group instanceof Tree.Mapping mapping)) {
            return put(parent, "{" + key + ": " + value + "}", "");
        }
        Tree changed = TreeEdit.put(plan, pointer, parsed(value));
        Tree.Entry old = mapping.entries().get(key);
        if (old != null) {
            return checked(text.over(old, key, value), changed);
        }
        return checked(text.newKey(mapping, parent.isEmpty(), after, key + ": " + value), changed);
    }

    /** Takes a key of the plan out with its whole line; nothing happens when it is not there. */
    public PlanEdit remove(String key) {
        return plan.entries().containsKey(key) ? checked(text.without(plan, key), TreeEdit.removed(plan, key)) : this;
    }

    /** Empties a list; nothing happens when it is empty or not there. */
    public PlanEdit clear(String pointer) {
        if (size(pointer) == 0) {
            return this;
        }
        Walk walk = Walk.from(Optional.of(plan), pointer);
        Tree.Sequence list = (Tree.Sequence) walk.reached().orElseThrow();
        Tree none = new Tree.Sequence(list.spot(), list.end(), List.of());
        return checked(text.emptied(list, walk.keySpot()), TreeEdit.put(plan, pointer, none));
    }

    private Tree at(String pointer) {
        Walk walk = Walk.from(Optional.of(plan), pointer);
        return walk.isComplete() ? walk.reached().orElse(null) : null;
    }

    private static Tree parsed(String value) {
        // In brackets, because that is where the value will stand.
        Source source = Source.of("value", ("[" + value + "]").getBytes(StandardCharsets.UTF_8));
        List<Finding> found = new ArrayList<>();
        if (TreeReader.read(source, found).orElse(null) instanceof Tree.Sequence one
                && found.isEmpty()
                && one.items().size() == 1) {
            return one.items().get(0);
        }
        throw new Refusal("\"" + value + "\" is not one value", "write it without brackets, commas and line breaks");
    }

    private PlanEdit checked(SpliceText.Splice splice, Tree expected) {
        String after = splice.applied();
        PlanEdit edited;
        try {
            byte[] bytes = after.getBytes(StandardCharsets.UTF_8);
            edited = of(Source.of("plan", bytes), bytes, hasMark);
        } catch (Refusal broken) {
            throw new IllegalStateException("a splice broke the plan's text", broken);
        }
        if (!CanonicalJson.of(edited.plan, key -> false).equals(CanonicalJson.of(expected, key -> false))) {
            throw new IllegalStateException("a splice changed more of the plan than it should");
        }
        return edited;
    }
}
