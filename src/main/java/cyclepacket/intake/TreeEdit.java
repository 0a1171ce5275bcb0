package cyclepacket.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What a tree must say after an edit, worked out on the tree alone to compare a spliced text with. */
final class TreeEdit {
    private TreeEdit() {}

    static Tree put(Tree.Mapping plan, String pointer, Tree value) {
        int slash = pointer.lastIndexOf('/');
        String key = Pointers.names(pointer.substring(slash)).get(0);
        return changed(plan, Pointers.names(pointer.substring(0, slash)), parent -> {
            Tree.Mapping group = (Tree.Mapping) parent;
            Map<String, Tree.Entry> entries = new LinkedHashMap<>(group.entries());
            entries.put(key, new Tree.Entry(group.spot(), value));
            return new Tree.Mapping(group.spot(), group.end(), group.isFlow(), entries);
        });
    }

    static Tree removed(Tree.Mapping plan, String key) {
        Map<String, Tree.Entry> entries = new LinkedHashMap<>(plan.entries());
        entries.remove(key);
        return new Tree.Mapping(plan.spot(), plan.end(), plan.isFlow(), entries);
    }

    static Tree inserted(Tree.Mapping plan, String pointer, int index, Tree item) {
        return changed(plan, Pointers.names(pointer), old -> {
            List<Tree> items = new ArrayList<>(((Tree.Sequence) old).items());
            items.add(index, item);
            return new Tree.Sequence(old.spot(), old.end(), items);
        });
    }

    private static Tree changed(Tree tree, List<String> names, UnaryOperator<Tree> change) {
        if (names.isEmpty()) {
            return change.apply(tree);
        }
        List<String> rest = names.subList(1, names.size());
        if (tree instanceof Tree.Sequence list) {
            List<Tree> items = new ArrayList<>(list.items());
            int index = Integer.parseInt(names.get(0));
            items.set(index, changed(items.get(index), rest, change));
            return new Tree.Sequence(list.spot(), list.end(), items);
        }
        Tree.Mapping group = (Tree.Mapping) tree;
        Map<String, Tree.Entry> entries = new LinkedHashMap<>(group.entries());
        Tree.Entry old = entries.get(names.get(0));
        entries.put(names.get(0), new Tree.Entry(old.key(), changed(old.value(), rest, change)));
        return new Tree.Mapping(group.spot(), group.end(), group.isFlow(), entries);
    }
}
