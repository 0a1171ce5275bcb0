package cyclepacket.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a plan's text says, for tests of other packages: its values without spacing and remarks. */
public final class Said {
    private Said() {}

    /** One line of JSON without some of the top-level keys. */
    public static String of(byte[] plan, String... without) {
        Optional<Tree> tree = TreeReader.read(Source.of("plan", plan), new ArrayList<>());
        return CanonicalJson.of(tree.orElseThrow(), List.of(without)::contains);
    }

    /** The plan's text once for each of its values, with only that value changed. */
    public static List<byte[]> withEachValueChanged(byte[] plan) {
        Tree tree = TreeReader.read(Source.of("plan", plan), new ArrayList<>()).orElseThrow();
        List<byte[]> edits = new ArrayList<>();
        walk(PlanEdit.of(plan), "", tree, edits);
        return edits;
    }

    private static void walk(PlanEdit plan, String pointer, Tree tree, List<byte[]> edits) {
        if (tree instanceof Tree.Mapping group) {
            group.entries().forEach((key, entry) -> walk(plan, pointer + "/" + key, entry.value(), edits));
        } else if (tree instanceof Tree.Sequence list) {
            for (int index = 0; index < list.items().size(); index++) {
                walk(plan, pointer + "/" + index, list.items().get(index), edits);
            }
        } else if (!pointer.startsWith("/countersigned") && !pointer.matches(".*/\\d+")) {
            edits.add(plan.put(pointer, other((Tree.Scalar) tree)).bytes());
        }
    }

    private static String other(Tree.Scalar value) {
        return switch (value.kind()) {
            case TRUTH -> value.written().equals("true") ? "false" : "true";
            case NUMBER -> value.number().add(java.math.BigDecimal.ONE).toPlainString();
            default ->
                value.written().matches("\\d{4}-\\d{2}-\\d{2}")
                        ? java.time.LocalDate.parse(value.written()).plusDays(1).toString()
                        : CanonicalJson.quoted(value.written() + "x");
        };
    }
}
