package cyclepacket.page;

import cyclepacket.ledger.Measure;
import cyclepacket.ledger.Measuring;
import cyclepacket.plan.FormRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Mark;
import java.util.Map;
import java.util.Optional;

/** Marks as a patient reads them; a mark is never an amount and never has a unit of medicine. */
final class MarkWords {
    private final Words words;
    private final FormRules rules;

    MarkWords(PacketFacts facts, Words words) {
        this.words = words;
        rules = facts.files().clinic().rules().forms();
    }

    /** For example {@code 80 mark} or {@code 0.75 mL mark}. */
    String mark(Syringe syringe, Mark mark) {
        return words.fill(
                        syringe.numbers() == Syringe.Numbers.MARKS ? "mark.marks" : "mark.ml",
                        Map.of("mark", mark.number().toPlainString()))
                .replace(' ', AmountWords.NO_BREAK);
    }

    /** What a dose is drawn to, for example {@code 2 vials, to the 0.75 mL mark}; empty for what is not drawn. */
    Optional<String> of(Medicine medicine, Dose dose) {
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
