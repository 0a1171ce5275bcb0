package cyclepacket.safety;

import cyclepacket.finding.Place;
import cyclepacket.ledger.Measuring;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One ordered amount above zero that is drawn into an empty syringe. */
record MeasuredAmount(OrderedAmount ordered, Measuring measuring) {

    static List<MeasuredAmount> all(ComputedPlan plan) {
        List<MeasuredAmount> all = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.allWithHalves(plan)) {
            Measuring.of(ordered.medicine(), plan.clinic().rules().forms())
                    .filter(measuring -> !ordered.amount().isZero())
                    .ifPresent(measuring -> all.add(new MeasuredAmount(ordered, measuring)));
        }
        return all;
    }

    /** Those that cannot be measured for this reason. */
    static List<MeasuredAmount> with(ComputedPlan plan, Measuring.Hitch hitch) {
        return all(plan).stream()
                .filter(amount -> amount.measuring.hitch(amount.dose()).equals(Optional.of(hitch)))
                .toList();
    }

    Dose dose() {
        return ordered.amount();
    }

    Place place() {
        return ordered.place();
    }

    Syringe syringe() {
        return measuring.syringe();
    }

    /** What this syringe can give at once, as the end of a sentence. */
    String most() {
        return measuring
                .nearestBelow(dose())
                .map(most -> "; this one gives at most " + most + ", and only the prescriber may divide a dose")
                .orElse("");
    }

    /** The choice to put to the prescriber: the doses on the nearest lines, and nothing else is proposed. */
    String question() {
        String near = Stream.concat(measuring.nearestBelow(dose()).stream(), measuring.nearestAbove(dose()).stream())
                .map(Dose::toString)
                .collect(Collectors.joining(" and "));
        return near.isEmpty()
                ? "name a syringe with finer lines, or ask the prescriber"
                : "its lines have " + near + "; ask the prescriber which one";
    }
}
