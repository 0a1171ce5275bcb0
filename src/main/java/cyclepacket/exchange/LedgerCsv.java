package cyclepacket.exchange;

import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.quantity.Dose;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The ledger as comma-separated values (RFC 4180): a line for every evening and container that may end on it, with empty
 * fields on evenings without one. A range that starts just above zero has {@code owed-above} 0.
 */
public final class LedgerCsv {
    private static final String HEAD = "medicine,unit,date,day,dose,state,given,settings,"
            + "leaving,setting,chance,cause,owed-above,owed-least,owed-most";
    private static final String END = "\r\n";

    private LedgerCsv() {}

    public static String of(CycleLedger ledger) {
        StringBuilder text = new StringBuilder(HEAD).append(END);
        for (MedicineLedger medicine : ledger.medicines()) {
            for (LedgerDay day : medicine.days()) {
                if (day.changes().isEmpty()) {
                    text.append(evening(medicine, day.evening()))
                            .append(",,,,,,,")
                            .append(END);
                }
                for (DayChange change : day.changes()) {
                    text.append(evening(medicine, day.evening()))
                            .append(',')
                            .append(change(change))
                            .append(END);
                }
            }
        }
        return text.toString();
    }

    private static String evening(MedicineLedger medicine, Evening evening) {
        return String.join(
                ",",
                medicine.medicine().id(),
                medicine.medicine().unit().word(),
                evening.date().toString(),
                evening.day(),
                number(evening.ordered()),
                evening.state().name().toLowerCase(Locale.ROOT),
                evening.given().map(LedgerCsv::number).orElse(""),
                evening.settings().stream().map(LedgerCsv::number).collect(Collectors.joining(" ")));
    }

    private static String change(DayChange change) {
        Optional<Owed> owed = change.owed();
        return String.join(
                ",",
                List.of(
                        String.valueOf(change.leaving()),
                        String.valueOf(change.setting()),
                        change.isCertain() ? "certain" : "possible",
                        change.cause().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        owed.filter(Owed::isAboveZero).map(range -> "0").orElse(""),
                        owed.filter(range -> !range.isAboveZero())
                                .map(range -> number(range.least()))
                                .orElse(""),
                        owed.map(range -> number(range.most())).orElse("")));
    }

    private static String number(Dose dose) {
        return dose.number().toPlainString();
    }
}
