package cyclepacket.page;

import cyclepacket.ledger.Covered;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The ledger as a table for a screen: one line an evening, the new-cartridge evenings said in words. */
public final class LedgerTable {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final List<String> HEAD = List.of("evening", "day", "dose", "dial", "state", "new cartridge");

    private LedgerTable() {}

    /** The tables of all medicines, each with its own heading and its reach. */
    public static String of(CycleLedger ledger) {
        return ledger.medicines().stream().map(LedgerTable::of).collect(Collectors.joining("\n"));
    }

    private static String of(MedicineLedger ledger) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEAD);
        ledger.days().forEach(day -> rows.addAll(rows(day)));
        return ledger.medicine().id() + " (" + ledger.medicine().name() + ", in "
                + ledger.medicine().unit().word() + ")\n" + table(rows) + reach(ledger);
    }

    private static List<List<String>> rows(LedgerDay day) {
        Evening evening = day.evening();
        List<List<String>> rows = new ArrayList<>();
        List<String> first = new ArrayList<>(List.of(
                DAY.format(evening.date()),
                evening.day(),
                evening.ordered().number().toPlainString(),
                dial(evening),
                evening.state().name().toLowerCase(Locale.ROOT)));
        for (DayChange change : day.changes()) {
            List<String> row = rows.isEmpty() ? first : new ArrayList<>(List.of("", "", "", "", ""));
            row.add(words(change, evening.settings().size() > 1));
            rows.add(row);
        }
        if (rows.isEmpty()) {
            first.add("");
            rows.add(first);
        }
        return rows;
    }

    private static String dial(Evening evening) {
        if (evening.given().isPresent() && !evening.given().get().equals(evening.ordered())) {
            return "given " + evening.given().get().number().toPlainString();
        }
        return evening.settings().size() < 2
                ? ""
                : evening.settings().stream()
                        .map(setting -> setting.number().toPlainString())
                        .collect(Collectors.joining(" then "));
    }

    private static String words(DayChange change, boolean isSplit) {
        String chance = change.isRead() ? "ended" : change.isCertain() ? "expect" : "maybe";
        String where = isSplit ? ", injection " + change.setting() : "";
        String owed = change.owed()
                .map(LedgerTable::owed)
                .orElse(
                        change.cause() == DayChange.Cause.TOO_LITTLE_LEFT
                                ? "holds less than this dose, left with its rest"
                                : "past its in-use days, left with its rest");
        return "box " + change.leaving() + " " + chance + where + ": " + owed;
    }

    private static String owed(Owed owed) {
        if (owed.isExact()) {
            return number(owed.most()) + " owed";
        }
        return (owed.isAboveZero() ? "above 0" : number(owed.least())) + " to " + number(owed.most()) + " owed";
    }

    private static String number(Dose dose) {
        return dose.number().toPlainString();
    }

    private static String table(List<List<String>> rows) {
        int[] widths = new int[HEAD.size()];
        rows.forEach(row -> {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
        });
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder("  ");
            for (int column = 0; column < widths.length; column++) {
                boolean isNumber = column == 2;
                String cell = row.get(column);
                String gap = " ".repeat(widths[column] - cell.length());
                line.append(isNumber ? gap + cell : cell + gap).append("  ");
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private static String reach(MedicineLedger ledger) {
        Covered covered = ledger.covered();
        String sure = covered.surelyUntil()
                .map(day -> "enough for sure until " + DAY.format(day))
                .orElse("not enough for the first dose");
        if (covered.firstShort().isEmpty()) {
            return "  " + sure + ", the last evening of the course\n";
        }
        String possibly = covered.possiblyUntil().map(LedgerTable::possibly).orElse("");
        return "  " + sure + possibly + "; short by at most " + number(covered.shortAtMost()) + " "
                + ledger.medicine().unit().word() + "\n";
    }

    private static String possibly(LocalDate day) {
        return ", perhaps until " + DAY.format(day);
    }
}
