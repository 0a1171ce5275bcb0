package cyclepacket.course;

import cyclepacket.plan.Plan;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Which amount holds on a day. */
final class AmountLookup {
    private final Plan plan;
    private final Anchors anchors;

    AmountLookup(Plan plan, Anchors anchors) {
        this.plan = plan;
        this.anchors = anchors;
    }

    /**
     * An amount and where it stands.
     *
     * @param line the plan's dose line, from 0; empty when the row itself gives it
     */
    record Amount(Dose amount, Optional<Integer> line) {}

    /**
     * The line with the latest date not after the day counts, wherever it stands in the file; from the day that a row is
     * halved, an amount that was ordered before that day counts half.
     *
     * @param medicine the product that stands for the row's medicine on that day
     * @throws Refusal if the half has more than three decimals
     */
    Optional<Amount> on(Protocol.Row row, String medicine, LocalDate day) {
        List<Plan.DoseLine> lines = plan.doses().getOrDefault(medicine, List.of());
        // The protocol's own amount is meant for its own product.
        Optional<Amount> best = row.amount()
                .filter(fixed -> medicine.equals(row.medicine()))
                .map(fixed -> new Amount(fixed, Optional.empty()));
        Optional<LocalDate> bestFrom = Optional.empty();
        for (int line = 0; line < lines.size(); line++) {
            Optional<LocalDate> from = anchors.date(lines.get(line).from());
            boolean applies = from.isPresent() && !from.get().isAfter(day);
            if (applies && (bestFrom.isEmpty() || from.get().isAfter(bestFrom.get()))) {
                bestFrom = from;
                best = Optional.of(new Amount(lines.get(line).amount(), Optional.of(line)));
            }
        }
        Optional<LocalDate> half =
                row.pattern().halfFrom().flatMap(anchors::date).filter(date -> !day.isBefore(date));
        boolean isHalved =
                half.isPresent() && (bestFrom.isEmpty() || bestFrom.get().isBefore(half.get()));
        return isHalved ? best.map(whole -> new Amount(whole.amount().half(), whole.line())) : best;
    }
}
