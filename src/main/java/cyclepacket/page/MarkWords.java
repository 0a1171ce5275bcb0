package cyclepacket.page;

import cyclepacket.ledger.Measure;
import cyclepacket.ledger.Measuring;
import cyclepacket.plan.FormRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Mark;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Marks as a patient reads them; a mark is never an amount and never has a unit of medicine. */
final class MarkWords {
    private final Words words;
    private final PieceWords pieces;
    private final FormRules rules;

    MarkWords(PacketFacts facts, Words words) {
        this.words = words;
        pieces = new PieceWords(words);
        rules = facts.files().clinic().rules().forms();
    }

    /** For example {@code 80 mark} or {@code 0.75 mL mark}. */
    String mark(Syringe syringe, Mark mark) {
        return words.fill(
                        syringe.numbers() == Syringe.Numbers.MARKS ? "mark.marks" : "mark.ml",
                        Map.of("mark", mark.number().toPlainString()))
                .replace(' ', AmountWords.NO_BREAK);
    }

    /**
     * What a dose is drawn to, for example {@code 2 vials, to the 0.75 mL mark}, or how many pieces it is, for example
     * {@code 2 patches}; empty for what is neither drawn nor taken.
     */
    Optional<String> of(Medicine medicine, Dose dose) {
        return pieces.of(medicine, dose).or(() -> drawn(medicine, dose));
    }

    /** The same for all parts of one day; parts that are alike are told once. */
    Optional<String> ofEach(Medicine medicine, List<Dose> parts) {
        List<String> lines = parts.stream()
                .flatMap(part -> of(medicine, part).stream())
                .distinct()
                .toList();
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        boolean isRepeated = parts.size() > 1 && lines.size() == 1;
        return Optional.of(
                isRepeated
                        ? words.fill("mark.each", Map.of("mark", lines.get(0)))
                        : String.join(words.text("mark.then"), lines));
    }

    private Optional<String> drawn(Medicine medicine, Dose dose) {
        return Measuring.of(medicine, rules)
                .flatMap(measuring ->
                        measuring.measure(dose).map(measure -> line(medicine, measuring.syringe(), measure)));
    }

    private String line(Medicine medicine, Syringe syringe, Measure measure) {
        String mark = mark(syringe, measure.mark());
        if (medicine.device().mixedVial().isEmpty()) {
            return words.fill("mark.to", Map.of("mark", mark));
        }
        return words.fill(
                measure.vials() == 1 ? "mark.vial" : "mark.vials",
                Map.of("mark", mark, "vials", Integer.toString(measure.vials())));
    }
}
