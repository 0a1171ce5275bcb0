package cyclepacket.hostile;

import java.util.ArrayList;
import java.util.List;

/** A piece of a YAML file that can be bent; unlike the program's own tree it may repeat a key or hold raw text. */
sealed interface Node {
    Node copy();

    /** A value; {@code raw} text is written as it stands, whatever it does to the file. */
    record Leaf(String text, boolean raw) implements Node {
        static Leaf of(String text) {
            return new Leaf(text, false);
        }

        static Leaf raw(String text) {
            return new Leaf(text, true);
        }

        @Override
        public Node copy() {
            return this;
        }
    }

    /** A list. */
    record Row(List<Node> items) implements Node {
        @Override
        public Node copy() {
            List<Node> copies = new ArrayList<>();
            items.forEach(item -> copies.add(item.copy()));
            return new Row(copies);
        }
    }

    /** Keys with values, in their order. */
    record Branch(List<Entry> entries) implements Node {
        @Override
        public Node copy() {
            List<Entry> copies = new ArrayList<>();
            entries.forEach(
                    entry -> copies.add(new Entry(entry.key(), entry.value().copy())));
            return new Branch(copies);
        }
    }

    /** One key with its value. */
    record Entry(Leaf key, Node value) {}
}
