package cyclepacket.page;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Tells the patient of each change of the clocks between the first dose and the last date of the course. */
final class ClockChanges {
    private final PacketFacts facts;
    private final Words words;

    ClockChanges(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    List<String> sentences() {
        List<Instant> times = Stream.concat(
                        facts.course().doses().stream().map(dose -> dose.at().toInstant()),
                        facts.course().anchors().retrieval().map(ZonedDateTime::toInstant).stream())
                .sorted()
                .toList();
        List<String> sentences = new ArrayList<>();
        if (times.isEmpty()) {
            return sentences;
        }
        ZoneRules rules = facts.files().plan().patient().zone().getRules();
        Instant last = times.get(times.size() - 1);
        Optional<ZoneOffsetTransition> change = Optional.ofNullable(rules.nextTransition(times.get(0)));
        while (change.filter(next -> next.getInstant().isBefore(last)).isPresent()) {
            sentences.add(sentence(change.get()));
            change = Optional.ofNullable(rules.nextTransition(change.get().getInstant()));
        }
        return sentences;
    }

    private String sentence(ZoneOffsetTransition change) {
        Duration by = change.getDuration().abs();
        String length = by.equals(Duration.ofHours(1))
                ? words.text("days.clocks.hour")
                : words.fill("days.clocks.minutes", Map.of("count", Long.toString(by.toMinutes())));
        return words.fill(
                change.isGap() ? "days.clocks.forward" : "days.clocks.back",
                Map.of(
                        "change",
                        length,
                        "day",
                        words.clock()
                                .day(change.getDateTimeBefore().toLocalDate())
                                .full()));
    }
}
