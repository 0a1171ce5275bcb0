package cyclepacket.intake;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The same tree in the form that the format check reads. Built by hand: a parser of its own would double the start-up time. */
final class JsonTree {
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private JsonTree() {}

    static JsonNode of(Tree tree) {
        if (tree instanceof Tree.Mapping mapping) {
            ObjectNode object = MAKE.objectNode();
            mapping.entries().forEach((key, entry) -> object.set(key, of(entry.value())));
            return object;
        }
        if (tree instanceof Tree.Sequence sequence) {
            ArrayNode array = MAKE.arrayNode();
            sequence.items().forEach(item -> array.add(of(item)));
            return array;
        }
        Tree.Scalar scalar = (Tree.Scalar) tree;
        return switch (scalar.kind()) {
            case TEXT -> MAKE.stringNode(scalar.written());
            case NUMBER -> MAKE.numberNode(scalar.number());
            case TRUTH -> MAKE.booleanNode(scalar.written().equals("true"));
            case NOTHING, REFUSED -> MAKE.nullNode();
        };
    }
}
