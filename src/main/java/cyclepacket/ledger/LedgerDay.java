package cyclepacket.ledger;

import java.util.List;
import java.util.Objects;

/** One evening of one medicine and the containers that may end on it. */
public record LedgerDay(Evening evening, List<DayChange> changes) {
    public LedgerDay {
        Objects.requireNonNull(evening, "evening");
        changes = List.copyOf(changes);
    }
}
