package cyclepacket.actingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Disagreements by kind; every text names the seed that makes its plan again. */
final class Faults {
    private final Map<String, List<String>> byKind = new TreeMap<>();

    void add(String kind, String text) {
        byKind.computeIfAbsent(kind, first -> new ArrayList<>()).add(text);
    }

    boolean isEmpty() {
        return byKind.isEmpty();
    }

    Map<String, List<String>> byKind() {
        return byKind;
    }

    /** Three of each kind, and how many there are. */
    String inShort() {
        return byKind.entrySet().stream()
                .map(kind -> kind.getKey() + " (" + kind.getValue().size() + ")\n"
                        + kind.getValue().stream().limit(3).collect(Collectors.joining("\n")))
                .collect(Collectors.joining("\n\n"));
    }
}
