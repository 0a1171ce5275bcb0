package cyclepacket.page;

import cyclepacket.plan.Medicine;
import cyclepacket.plan.Taken;
import cyclepacket.quantity.Dose;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/** How many tablets or patches an amount is, so that nobody has to work it out. */
final class PieceWords {
    private final Words words;

    PieceWords(Words words) {
        this.words = words;
    }

    /** For example {@code 2 patches}; empty for what is injected, and for what is no whole number of halves. */
    Optional<String> of(Medicine medicine, Dose dose) {
        return medicine.device().taken().flatMap(taken -> of(medicine, taken, dose));
    }

    private Optional<String> of(Medicine medicine, Taken taken, Dose dose) {
        Dose label = medicine.sizes().get(0).label();
        Dose doubled = dose.times(2);
        if (dose.isZero() || !doubled.isMultipleOf(label)) {
            return Optional.empty();
        }
        int halves = doubled.number().divideToIntegralValue(label.number()).intValueExact();
        return Optional.of(line(halves, taken.piece()).replace(' ', AmountWords.NO_BREAK));
    }

    private String line(int halves, Taken.Piece piece) {
        String count = BigDecimal.valueOf(halves / 2).toPlainString();
        if (halves % 2 == 0) {
            return words.fill(halves == 2 ? "pieces.one" : "pieces.whole", named(count, halves == 2, piece));
        }
        return words.fill(halves == 1 ? "pieces.half" : "pieces.and-half", named(count, halves == 1, piece));
    }

    private Map<String, String> named(String count, boolean isOne, Taken.Piece piece) {
        return Map.of("count", count, "piece", isOne ? words.text("piece." + piece.word()) : many(piece));
    }

    /** The word for several, for example {@code patches}. */
    String many(Taken.Piece piece) {
        return words.text("pieces." + piece.word());
    }
}
