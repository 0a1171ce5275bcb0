package cyclepacket.hostile;

import cyclepacket.hostile.Node.Branch;
import cyclepacket.hostile.Node.Entry;
import cyclepacket.hostile.Node.Leaf;
import cyclepacket.hostile.Node.Row;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A sound file to the tree that is bent. */
final class YamlIn {
    private YamlIn() {}

    static Node read(String yaml) {
        LoadSettings settings = LoadSettings.builder().build();
        return node(new Compose(settings).composeString(yaml).orElseThrow());
    }

    private static Node node(org.snakeyaml.engine.v2.nodes.Node read) {
        if (read instanceof MappingNode mapping) {
            List<Entry> entries = new ArrayList<>();
            for (NodeTuple pair : mapping.getValue()) {
                entries.add(new Entry((Leaf) node(pair.getKeyNode()), node(pair.getValueNode())));
            }
            return new Branch(entries);
        }
        if (read instanceof SequenceNode sequence) {
            List<Node> items = new ArrayList<>();
            sequence.getValue().forEach(item -> items.add(node(item)));
            return new Row(items);
        }
        ScalarNode scalar = (ScalarNode) read;
        boolean isPlain = scalar.getScalarStyle() == ScalarStyle.PLAIN;
        return isPlain && YamlOut.isPlain(scalar.getValue()) ? Leaf.raw(scalar.getValue()) : Leaf.of(scalar.getValue());
    }
}
