package cyclepacket.intake;

import cyclepacket.plan.SupplyRules;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Builds what a clinic file says about supplies; every line of it may be left out. */
final class SupplyRulesBuilder {
    private final Field top;

    SupplyRulesBuilder(Field top) {
        this.top = top;
    }

    Part<SupplyRules> rules() {
        Part<Map<String, Map<Integer, Integer>>> odds = top.at("length-odds").byName(SupplyRulesBuilder::odds);
        Part<Map<String, Integer>> boxes = top.at("boxes").byName(Field::count);
        Part<Integer> gauze = top.at("gauze-an-injection").isWritten()
                ? top.at("gauze-an-injection").count()
                : Part.of(0);
        Part<List<SupplyRules.SharpsContainer>> sharps =
                top.at("sharps-containers").each(SupplyRulesBuilder::sharps);
        return Part.whole(top, () -> new SupplyRules(odds.get(), boxes.get(), gauze.get(), sharps.get()));
    }

    private static Part<Map<Integer, Integer>> odds(Field protocol) {
        Map<Integer, Integer> byDays = new TreeMap<>();
        for (Map.Entry<String, Field> line : protocol.entries().entrySet()) {
            Part<Integer> weight = line.getValue().count();
            // A key that is no number has its own finding already.
            if (!weight.isPresent() || !line.getKey().matches("[1-9][0-9]?")) {
                return Part.absent();
            }
            byDays.put(Integer.valueOf(line.getKey()), weight.get());
        }
        return Part.of(byDays);
    }

    private static Part<SupplyRules.SharpsContainer> sharps(Field line) {
        Part<String> size = line.at("size").text();
        Part<Integer> holds = line.at("holds").count();
        return Part.whole(line, () -> new SupplyRules.SharpsContainer(size.get(), holds.get()));
    }
}
