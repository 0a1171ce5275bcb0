package cyclepacket.hostile;

import cyclepacket.hostile.Node.Branch;
import cyclepacket.hostile.Node.Entry;
import cyclepacket.hostile.Node.Leaf;
import cyclepacket.hostile.Node.Row;
import java.util.ArrayList;
import java.util.List;

/** One place in a tree where something can be changed: an item of a list, or a key with its value. */
record Spot(Node parent, int at) {
    static List<Spot> all(Node root) {
        List<Spot> spots = new ArrayList<>();
        collect(root, spots);
        return spots;
    }

    private static void collect(Node node, List<Spot> spots) {
        if (node instanceof Row row) {
            for (int at = 0; at < row.items().size(); at++) {
                spots.add(new Spot(row, at));
                collect(row.items().get(at), spots);
            }
        } else if (node instanceof Branch branch) {
            for (int at = 0; at < branch.entries().size(); at++) {
                spots.add(new Spot(branch, at));
                collect(branch.entries().get(at).value(), spots);
            }
        }
    }

    Node value() {
        return parent instanceof Row row
                ? row.items().get(at)
                : ((Branch) parent).entries().get(at).value();
    }

    /** The key's text, or nothing in a list. */
    String key() {
        return parent instanceof Branch branch ? branch.entries().get(at).key().text() : "";
    }

    boolean isLeaf() {
        return value() instanceof Leaf;
    }

    String text() {
        return ((Leaf) value()).text();
    }

    void put(Node value) {
        if (parent instanceof Row row) {
            row.items().set(at, value);
        } else {
            Branch branch = (Branch) parent;
            branch.entries().set(at, new Entry(branch.entries().get(at).key(), value));
        }
    }

    /** Gives the value another key; an item of a list becomes one itself. */
    void rename(Leaf key) {
        if (parent instanceof Branch branch) {
            branch.entries().set(at, new Entry(key, value()));
        } else {
            put(key);
        }
    }

    void delete() {
        if (parent instanceof Row row) {
            row.items().remove(at);
        } else {
            ((Branch) parent).entries().remove(at);
        }
    }

    void duplicate() {
        if (parent instanceof Row row) {
            row.items().add(at, value().copy());
        } else {
            Branch branch = (Branch) parent;
            branch.entries().add(at, new Entry(branch.entries().get(at).key(), value().copy()));
        }
    }
}
