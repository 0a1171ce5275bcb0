package cyclepacket.intake;

import cyclepacket.plan.ExtraPart;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code with}, the parts of the packet that are printed on request; each is named once. */
final class ExtraParts {
    private ExtraParts() {}

    /** Nothing where the key is not written; an empty set where it asks for no part. */
    static Part<Optional<Set<ExtraPart>>> read(Field list) {
        return list.ifWritten(ExtraParts::each);
    }

    private static Part<Set<ExtraPart>> each(Field list) {
        Set<ExtraPart> seen = EnumSet.noneOf(ExtraPart.class);
        Part<List<ExtraPart>> parts = list.each(item -> {
            Part<ExtraPart> part = item.word(ExtraPart.class);
            part.value()
                    .filter(named -> !seen.add(named))
                    .ifPresent(named -> item.stop(
                            "PART-TWICE",
                            item.text().value().orElse("") + " stands here twice",
                            "name each part once; it is printed once"));
            return part;
        });
        return new Part<>(parts.value().map(read -> seen));
    }
}
