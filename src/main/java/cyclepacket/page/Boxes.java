package cyclepacket.page;

import cyclepacket.ledger.Evening;
import cyclepacket.plan.Device;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.util.List;
import java.util.Optional;

/** Fills amount boxes. */
final class Boxes {
    private Boxes() {}

    /** One box for each injection to come; without a number on an evening that waits for a call, none on a hold. */
    static List<BoxedAmount> of(Evening evening, Medicine medicine, Words words) {
        if (evening.isHeld()) {
            return List.of();
        }
        boolean waits = evening.state() == Evening.State.PROVISIONAL;
        List<Dose> settings = evening.settings().isEmpty() ? List.of(evening.ordered()) : evening.settings();
        return settings.stream()
                .map(dose -> waits ? open(dose, medicine, words) : known(dose, words))
                .toList();
    }

    static BoxedAmount known(Dose dose, Words words) {
        return new BoxedAmount(
                Optional.of(words.amounts().amount(dose)), words.amounts().unit(dose));
    }

    /** What is counted by hand is written as a count, so that nobody writes or divides a decimal from the phone. */
    private static BoxedAmount open(Dose dose, Medicine medicine, Words words) {
        if (medicine.device() instanceof Device.ReadySyringe) {
            return new BoxedAmount(Optional.empty(), words.text("unit.syringe"));
        }
        return new BoxedAmount(
                Optional.empty(),
                medicine.device()
                        .taken()
                        .map(taken -> new PieceWords(words).many(taken.piece()))
                        .orElseGet(() -> words.amounts().unit(dose.unit())));
    }
}
