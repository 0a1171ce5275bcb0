package cyclepacket.page;

import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.LookUpRow;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the look-up of the coming end: one row for each number that can stand in the window. */
final class LookUpViews {
    /** Up to so many evenings are named one by one; more are given as first and last. */
    private static final int NAMED = 3;

    private final Words words;
    private final MedicineLedger ledger;

    LookUpViews(Words words, MedicineLedger ledger) {
        this.words = words;
        this.ledger = ledger;
    }

    /** Empty when no end is coming. */
    Optional<LookUpView> view() {
        List<LookUpRow> rows = ledger.lookUp();
        if (rows.isEmpty() || ledger.coming().isEmpty()) {
            return Optional.empty();
        }
        Evening first = evening(rows.get(0).date());
        Map<String, List<LookUpRow>> injections = new LinkedHashMap<>();
        rows.forEach(row -> injections
                .computeIfAbsent(row.date() + " " + row.setting(), key -> new ArrayList<>())
                .add(row));
        return Optional.of(new LookUpView(
                whileTrue(first),
                Integer.toString(ledger.coming().get().container().number()),
                injections.values().stream().map(this::injection).toList()));
    }

    /** The next end depends on every dose up to it, so a packet with several doses names none. */
    private String whileTrue(Evening first) {
        boolean isOneDose = ledger.days().stream()
                .map(LedgerDay::evening)
                .filter(evening -> !evening.date().isBefore(first.date()))
                .allMatch(evening -> evening.ordered().equals(first.ordered()));
        return isOneDose
                ? words.fill(
                        "cartridges.look-up.true",
                        Map.of("dose", words.amounts().amount(first.ordered())))
                : words.text("cartridges.look-up.true.packet");
    }

    private Evening evening(LocalDate date) {
        return ledger.day(date).orElseThrow().evening();
    }

    private LookUpView.Evening injection(List<LookUpRow> rows) {
        LookUpRow first = rows.get(0);
        return new LookUpView.Evening(
                words.clock().day(first.date()),
                Optional.of(Integer.toString(first.setting()))
                        .filter(number -> evening(first.date()).settings().size() > 1),
                nextPart(first),
                rows.stream().map(this::row).toList());
    }

    private Optional<String> nextPart(LookUpRow row) {
        List<Dose> settings = evening(row.date()).settings();
        return Optional.of(row.setting())
                .filter(setting -> setting < settings.size())
                .map(setting -> words.amounts().amount(settings.get(setting)));
    }

    private LookUpView.Row row(LookUpRow row) {
        return new LookUpView.Row(
                words.amounts().amount(row.window()), words.amounts().amount(row.fromNext()), next(row));
    }

    private String next(LookUpRow row) {
        if (!row.hasNextContainer()) {
            return words.text("cartridges.look-up.no-box");
        }
        if (row.next().isEmpty()) {
            return words.text("cartridges.look-up.none");
        }
        LookUpRow.NextEnd end = row.next().get();
        LocalDate last = end.latest().orElse(LocalDate.MAX);
        List<String> days = ledger.days().stream()
                .map(day -> day.evening().date())
                .filter(date -> !date.isBefore(end.earliest()) && !date.isAfter(last))
                .map(date -> words.clock().day(date).full())
                .toList();
        if (end.latest().isEmpty()) {
            return words.fill("cartridges.look-up.from", Map.of("first", days.get(0)));
        }
        return days.size() <= NAMED
                ? words.either(days)
                : words.fill(
                        "cartridges.look-up.from-to", Map.of("first", days.get(0), "last", days.get(days.size() - 1)));
    }
}
