package cyclepacket.page;

import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Makes what the new-cartridge card of one pen fills in. */
final class CardViews {
    private final PacketFacts facts;
    private final Words words;
    private final MedicineLedger ledger;
    private final CartridgePen pen;
    private final Marks marks;

    CardViews(PacketFacts facts, Words words, MedicineLedger ledger, CartridgePen pen, Marks marks) {
        this.facts = facts;
        this.words = words;
        this.ledger = ledger;
        this.pen = pen;
        this.marks = marks;
    }

    CartridgesView.CardFacts view() {
        HouseRules rules = facts.files().clinic().rules();
        return new CartridgesView.CardFacts(
                words.amounts().unit(ledger.medicine().unit()),
                Long.toString(ledger.medicine().hold().toSeconds()),
                ledger.days().stream()
                        .map(LedgerDay::evening)
                        .anyMatch(evening ->
                                evening.isToCome() && evening.settings().size() > 1),
                example().map(words.amounts()::amount),
                rules.betweenMarks().name().toLowerCase(Locale.ROOT),
                words.amounts().amount(marks.smallest()),
                rules.smallRemainder().rule().name().toLowerCase(Locale.ROOT),
                rules.offTable());
    }

    /** The smallest mark that is no number of this plan, so that nobody can take the example for an order. */
    private Optional<Dose> example() {
        Set<Dose> used = new HashSet<>();
        used.add(marks.smallest());
        ledger.draws().forEach(draw -> used.add(draw.dialled()));
        ledger.lookUp().forEach(row -> used.addAll(List.of(row.window(), row.fromNext())));
        ledger.medicine().sizes().forEach(size -> used.add(size.label()));
        ledger.containers().forEach(line -> line.read().forEach(stop -> used.add(stop.window())));
        for (Dose mark = pen.dial().least();
                !mark.isMoreThan(pen.dial().most());
                mark = mark.plus(pen.dial().step())) {
            if (!used.contains(mark)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }
}
