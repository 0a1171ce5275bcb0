package cyclepacket.page;

import cyclepacket.plan.Medicine;
import cyclepacket.quantity.TemperatureRange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the facts for trouble, calls and storage. */
final class CareViews {
    private final PacketFacts facts;
    private final Words words;

    CareViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    TroubleView trouble() {
        Map<String, String> thresholds = facts.files().clinic().rules().callThresholds();
        ThresholdWords limits = new ThresholdWords(words);
        return new TroubleView(
                missed(),
                Optional.ofNullable(thresholds.get("weight-gain")).map(limits::plain),
                Optional.ofNullable(thresholds.get("fever")).map(limits::temperature),
                facts.files().medicines().values().stream()
                        .filter(Medicine::exactTime)
                        .map(medicine -> AmountWords.capital(medicine.doorName()))
                        .findFirst(),
                facts.files().medicines().values().stream()
                        .anyMatch(medicine -> medicine.device().pen().isPresent()));
    }

    /** The clinic's line word for word, once for all medicines that share it; without one, the packet's own. */
    private List<TroubleView.Missed> missed() {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (Medicine medicine : facts.files().medicines().values()) {
            String line = facts.files()
                    .clinic()
                    .rules()
                    .missed()
                    .getOrDefault(medicine.id(), words.text("trouble.missed.call"));
            lines.computeIfAbsent(line, first -> new ArrayList<>())
                    .add(words.fill(
                            "trouble.missed.who", Map.of("door", medicine.doorName(), "name", medicine.name())));
        }
        return lines.entrySet().stream()
                .map(line -> new TroubleView.Missed(String.join(", ", line.getValue()), line.getKey()))
                .toList();
    }

    StorageView storage() {
        return new StorageView(
                facts.files().medicines().values().stream().map(this::stored).toList());
    }

    private StorageView.Row stored(Medicine medicine) {
        return new StorageView.Row(
                facts.nameOf(medicine),
                range(medicine.store().unopened()),
                place(medicine.store().unopened()),
                medicine.store().opened().map(this::range),
                medicine.device().daysOnceOpened().map(days -> Integer.toString(days)),
                medicine.isInjected());
    }

    private static String place(TemperatureRange range) {
        if (range.needsRefrigerator()) {
            return "fridge";
        }
        return range.allowsRefrigerator() ? "either" : "room";
    }

    /** Each scale on one line: of a range cut in two, the first number reads as the limit. */
    private String range(TemperatureRange range) {
        return words.fill(
                        "temperature",
                        Map.of(
                                "leastF", Integer.toString(range.leastFahrenheit()),
                                "mostF", Integer.toString(range.mostFahrenheit()),
                                "leastC", Integer.toString(range.leastCelsius()),
                                "mostC", Integer.toString(range.mostCelsius())))
                .replace(' ', AmountWords.NO_BREAK)
                .replace(AmountWords.NO_BREAK + "(", " (");
    }
}
