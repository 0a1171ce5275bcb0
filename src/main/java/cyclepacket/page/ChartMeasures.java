package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.Measure;
import cyclepacket.ledger.Measuring;
import cyclepacket.plan.FormRules;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** How each ordered dose is measured: strength, volume and mark, and what a part vial costs that is thrown away. */
final class ChartMeasures {
    private final ChartSource source;
    private final ChartWords words;
    private final FormRules rules;

    ChartMeasures(ChartSource source, ChartWords words) {
        this.source = source;
        this.words = words;
        rules = source.files().clinic().rules().forms();
    }

    /** Empty when nothing is drawn into an empty syringe. */
    Optional<ChartTable> table() {
        ChartTable.Builder table = ChartTable.of(
                words.wording(), "measures", "medicine", "from", "#amount", "vials", "strength", "mark", "rest");
        table.caption(words.text("measures"));
        boolean hasRows = false;
        for (Medicine medicine : source.files().medicines().values()) {
            Optional<Measuring> measuring = Measuring.of(medicine, rules);
            if (measuring.isPresent()) {
                for (Map.Entry<Dose, LocalDate> dose : firstDays(medicine).entrySet()) {
                    Optional<Measure> measure = measuring.get().measure(dose.getKey());
                    if (measure.isPresent()) {
                        table.row(cells(medicine, measuring.get(), measure.get(), dose.getValue()));
                        hasRows = true;
                    }
                }
            }
        }
        return hasRows ? Optional.of(table.build()) : Optional.empty();
    }

    private Map<Dose, LocalDate> firstDays(Medicine medicine) {
        Map<Dose, LocalDate> first = new LinkedHashMap<>();
        for (DatedDose dose : source.course().dosesOf(medicine.id())) {
            first.putIfAbsent(dose.amount(), dose.date());
        }
        return first;
    }

    private String[] cells(Medicine medicine, Measuring measuring, Measure measure, LocalDate from) {
        boolean isMixed = medicine.device().mixedVial().isPresent();
        String rest =
                measure.rest().isZero() ? words.text("none") : words.amount(measure.rest()) + cost(medicine, measure);
        return new String[] {
            ChartInputs.name(source, medicine),
            words.day(from),
            words.amount(measure.dose()),
            isMixed ? Integer.toString(measure.vials()) : words.text("none"),
            ChartWords.unbroken(measuring.strengthFor(measure.dose()).toString()),
            ChartWords.unbroken(measure.drawn().toString()) + "\n"
                    + ChartWords.unbroken(measure.mark().toString()) + "\n("
                    + measuring.syringe().id() + ")",
            rest
        };
    }

    /** What the rest of one injection costs, in hundredths of the currency, half up. */
    private String cost(Medicine medicine, Measure measure) {
        return medicine.sizes()
                .get(0)
                .price()
                .map(price -> "\n" + share(price, measure, medicine) + " "
                        + source.files().clinic().currency())
                .orElse("");
    }

    private static String share(Money price, Measure measure, Medicine medicine) {
        return price.number()
                .multiply(BigDecimal.valueOf(measure.rest().milliUnits()))
                .divide(BigDecimal.valueOf(medicine.sizes().get(0).label().milliUnits()), 2, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
