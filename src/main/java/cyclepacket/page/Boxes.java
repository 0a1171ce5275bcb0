package cyclepacket.page;

import cyclepacket.ledger.Evening;
import cyclepacket.quantity.Dose;
import java.util.List;
import java.util.Optional;

/** Fills amount boxes. */
final class Boxes {
    private Boxes() {}

    /** One box for each injection to come; without a number on an evening that waits for a call, none on a hold. */
    static List<BoxedAmount> of(Evening evening, Words words) {
        if (evening.isHeld()) {
            return List.of();
        }
        boolean waits = evening.state() == Evening.State.PROVISIONAL;
        List<Dose> settings = evening.settings().isEmpty() ? List.of(evening.ordered()) : evening.settings();
        return settings.stream()
                .map(dose -> waits ? open(dose, words) : known(dose, words))
                .toList();
    }

    static BoxedAmount known(Dose dose, Words words) {
        return new BoxedAmount(
                Optional.of(words.amounts().amount(dose)), words.amounts().unit(dose));
    }

    private static BoxedAmount open(Dose dose, Words words) {
        return new BoxedAmount(Optional.empty(), words.amounts().unit(dose.unit()));
    }
}
