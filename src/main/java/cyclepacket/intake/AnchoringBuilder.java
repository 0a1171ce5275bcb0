package cyclepacket.intake;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.Anchoring;
import cyclepacket.plan.DayMark;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Builds what a protocol file says of the days of its anchors. */
final class AnchoringBuilder {
    private final Field top;
    private final Anchors anchors;

    AnchoringBuilder(Field top, Anchors anchors) {
        this.top = top;
        this.anchors = anchors;
    }

    Part<Anchoring> anchoring() {
        Part<Optional<Anchor>> start = top.at("starts-with").ifWritten(anchors::named);
        Set<Anchor> byPhone = new LinkedHashSet<>();
        Set<Anchor> toTheMinute = new LinkedHashSet<>();
        Map<Anchor, DayMark> atLatest = new LinkedHashMap<>();
        boolean complete = start.isPresent();
        for (Map.Entry<String, Field> entry : top.at("anchors").entries().entrySet()) {
            Field facts = entry.getValue();
            if (!entry.getKey().matches("[A-Z]{1,3}1?")) {
                complete = false;
                continue;
            }
            Anchor anchor = new Anchor(entry.getKey());
            if (facts.at("by-phone").isWritten()) {
                byPhone.add(anchor);
            }
            if (facts.at("to-the-minute").isWritten()) {
                toTheMinute.add(anchor);
            }
            Part<Optional<DayMark>> latest = facts.at("at-latest").ifWritten(anchors::day);
            complete &= latest.isPresent();
            latest.value().flatMap(day -> day).ifPresent(day -> atLatest.put(anchor, day));
        }
        return complete
                ? Part.whole(top, () -> new Anchoring(start.get().orElse(Anchor.S1), byPhone, toTheMinute, atLatest))
                : Part.absent();
    }
}
