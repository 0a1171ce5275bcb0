package cyclepacket.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where each sign on the page When to call, and the level it stands under, comes from. */
final class ChartFlags {
    private final ChartWords words;
    private final Wording wording;

    ChartFlags(ChartWords words) {
        this.words = words;
        wording = words.wording();
    }

    ChartFacts group() {
        return ChartFacts.of(wording, "flags")
                .add("emergency", sources("calls.emergency", "calls.emergency.collected", "vial.wrong.oil.2"))
                .add("hour", sources("calls.hour", "calls.weight"))
                .add("same-day", sources("calls.same-day", "calls.fever"))
                .add("next", sources("calls.next"))
                .add("always", sources("calls.always", "calls.pain"))
                .build();
    }

    /** One line a sign; a sign that a clinic added to its wording has no source until one is written here. */
    private String sources(String numbered, String... others) {
        List<String> keys =
                new ArrayList<>(wording.find(numbered + ".1").isPresent() ? wording.numbered(numbered) : List.of());
        keys.addAll(List.of(others));
        return keys.stream()
                .map(key -> wording.find("chart.flags.of." + key)
                        .orElseGet(() -> words.fill("flags.none", "sign", wording.text(key))))
                .collect(Collectors.joining("\n"));
    }
}
