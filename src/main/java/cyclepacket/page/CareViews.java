package cyclepacket.page;

import cyclepacket.plan.Medicine;
import cyclepacket.quantity.TemperatureRange;
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
                facts.files().medicines().values().stream().map(this::missed).toList(),
                Optional.ofNullable(thresholds.get("weight-gain")).map(limits::plain),
                Optional.ofNullable(thresholds.get("fever")).map(limits::temperature),
                facts.files().medicines().values().stream()
                        .filter(Medicine::exactTime)
                        .map(medicine -> AmountWords.capital(medicine.doorName()))
                        .findFirst(),
                facts.files().medicines().values().stream()
                        .anyMatch(medicine -> medicine.device().pen().isPresent()));
    }

    /** The clinic's line word for word; without one, the packet's own, which is to call first. */
    private TroubleView.Missed missed(Medicine medicine) {
        String line =
                facts.files().clinic().rules().missed().getOrDefault(medicine.id(), words.text("trouble.missed.call"));
        return new TroubleView.Missed(medicine.name(), medicine.doorName(), line);
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

    private String range(TemperatureRange range) {
        return words.fill(
                        "temperature",
                        Map.of(
                                "leastF", Integer.toString(range.leastFahrenheit()),
                                "mostF", Integer.toString(range.mostFahrenheit()),
                                "leastC", Integer.toString(range.leastCelsius()),
                                "mostC", Integer.toString(range.mostCelsius())))
                .replace(" °", AmountWords.NO_BREAK + "°");
    }
}
