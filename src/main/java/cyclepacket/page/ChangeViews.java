package cyclepacket.page;

import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What each evening says of new cartridges. */
final class ChangeViews {
    private ChangeViews() {}

    /** The changes of one evening to come, those that are sure first; possible ones are told together. */
    static List<ChangeView> of(MedicineLedger ledger, LedgerDay day, Words words) {
        List<ChangeView> views = new ArrayList<>();
        List<String> possible = new ArrayList<>();
        boolean maybe = false;
        for (DayChange change : day.changes()) {
            if (change.isRead()) {
                continue;
            }
            Optional<String> next = next(ledger, change.leaving());
            if (change.cause() == DayChange.Cause.IN_USE_LIMIT) {
                views.add(new ChangeView("limit", next));
            } else if (change.isCertain()) {
                views.add(new ChangeView("expect", next));
            } else {
                maybe = true;
                next.filter(box -> !possible.contains(box)).ifPresent(possible::add);
            }
        }
        if (maybe) {
            views.add(
                    new ChangeView("maybe", Optional.of(words.either(possible)).filter(boxes -> !boxes.isEmpty())));
        }
        return List.copyOf(views.stream().distinct().toList());
    }

    /** How many injections these changes can add. */
    static int extra(List<ChangeView> changes) {
        return (int) changes.stream()
                .filter(change -> !change.kind().equals("limit"))
                .count();
    }

    /** The number of the box to load after this one, if it is at home. */
    static Optional<String> next(MedicineLedger ledger, int leaving) {
        return ledger.containers().stream()
                .map(line -> line.container().number())
                .filter(number -> number > leaving)
                .map(number -> Integer.toString(number))
                .findFirst();
    }
}
