package cyclepacket.intake;

import cyclepacket.plan.Protocol;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What plan and protocol must say alike: the names of times, and a row for every medicine that has dose lines. */
final class CrossCheck {
    private final Field plan;
    private final Field protocol;

    CrossCheck(Sheet plan, Sheet protocol) {
        this.plan = plan.top();
        this.protocol = protocol.top();
    }

    void run() {
        timesAreNamed();
        dosesHaveRows();
    }

    private void timesAreNamed() {
        Field times = plan.at("times");
        if (!times.isWritten() || times.isRefused()) {
            return;
        }
        Set<String> needed = new LinkedHashSet<>();
        protocol.at("rows").items().forEach(row -> row.at("at").text().value().ifPresent(needed::add));
        needed.remove(Protocol.Row.EXACT);
        needed.removeAll(times.entries().keySet());
        for (String name : needed) {
            times.stopAtKey(
                    "TIME-NAME-UNKNOWN",
                    "the protocol gives medicine at " + Characters.quoted(name)
                            + ", and times does not say when that is",
                    NearestName.of(name, times.entries().keySet())
                            .map(near -> "write " + name + " for " + near + ", or mend the protocol")
                            .orElse("add " + name + ": and its clock time"));
        }
    }

    private void dosesHaveRows() {
        Set<String> rows = new LinkedHashSet<>();
        protocol.at("rows")
                .items()
                .forEach(row -> row.at("medicine").text().value().ifPresent(rows::add));
        plan.at("revised").items().stream()
                .filter(line ->
                        line.at("what").text().value().filter("swap"::equals).isPresent())
                .forEach(line -> line.at("now").text().value().ifPresent(rows::add));
        for (Map.Entry<String, Field> doses : plan.at("doses").entries().entrySet()) {
            if (!rows.isEmpty()
                    && !rows.contains(doses.getKey())
                    && !doses.getValue().isRefused()) {
                doses.getValue()
                        .stopAtKey(
                                "DOSES-WITHOUT-ROW",
                                "the protocol has no row for " + doses.getKey()
                                        + ", so these doses would never be given",
                                NearestName.mend(doses.getKey(), rows));
            }
        }
    }
}
