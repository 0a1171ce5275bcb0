package cyclepacket.page;

import static cyclepacket.page.AmountWords.NO_BREAK;

import cyclepacket.ledger.Owed;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Amounts, days and sentences as the clinic's staff read them: exact, short, and each on one line. */
final class ChartWords {
    private static final Pattern AMOUNT = Pattern.compile("(\\d) (units?|mcg|micrograms?|mg|mL|hours|days)\\b");

    /** Thousandths: a bound that is one thousandth off a tenth of a unit comes from an open end of a range. */
    private static final long FINEST_PRINTED = 100;

    private final Wording wording;
    private final AmountWords amounts;
    private final ClockWords clock;

    ChartWords(Wording wording) {
        this.wording = wording;
        amounts = new AmountWords(wording);
        clock = new ClockWords(wording);
    }

    Wording wording() {
        return wording;
    }

    AmountWords amounts() {
        return amounts;
    }

    ClockWords clock() {
        return clock;
    }

    String text(String key) {
        return wording.text("chart." + key);
    }

    /** Fills a sentence; {@code gaps} are name, value, name, value. */
    String fill(String key, String... gaps) {
        Map<String, String> values = new java.util.TreeMap<>();
        for (int name = 0; name < gaps.length; name += 2) {
            values.put(gaps[name], gaps[name + 1]);
        }
        return wording.fill("chart." + key, values);
    }

    String number(Dose dose) {
        return amounts.number(dose);
    }

    String amount(Dose dose) {
        return amounts.amount(dose);
    }

    /** Digit by digit, for example {@code two-two-five}. */
    String said(Dose dose) {
        return dose.number()
                .toPlainString()
                .chars()
                .mapToObj(digit -> text(digit == '.' ? "digit.point" : "digit." + (char) digit))
                .collect(Collectors.joining("-"));
    }

    /** For example {@code 37.5 to 150}; one number when both are equal. */
    String numbers(Dose least, Dose most) {
        return least.equals(most)
                ? number(most)
                : unbroken(fill("range", "least", number(least), "most", number(most)));
    }

    String numbers(DoseRange range) {
        return numbers(range.least(), range.most());
    }

    /** For example {@code 30 to 150}, or {@code above 0 to 112.5} for a range that starts just above a number. */
    String owed(Owed owed) {
        boolean isJustAbove = owed.least().milliUnits() % FINEST_PRINTED == 1;
        if (!owed.isAboveZero() && !isJustAbove) {
            return numbers(owed.least(), owed.most());
        }
        Dose bound = new Dose(
                owed.least().milliUnits() - (isJustAbove ? 1 : 0), owed.least().unit());
        return unbroken(fill("above", "least", number(bound), "most", number(owed.most())));
    }

    /** Content is continuous: a most that lies one thousandth below a total means just below it. */
    Optional<Dose> boundAbove(Dose most) {
        Dose bound = new Dose(most.milliUnits() + 1, most.unit());
        return Optional.of(bound).filter(dose -> dose.milliUnits() % FINEST_PRINTED == 0);
    }

    /** For example {@code 8 Mar}. */
    String date(LocalDate date) {
        return date.getDayOfMonth() + "" + NO_BREAK + text("month." + date.getMonthValue());
    }

    String date(Optional<LocalDate> date, String otherwise) {
        return date.map(this::date).orElseGet(() -> text(otherwise));
    }

    /** For example {@code Mon 8 Mar}. */
    String day(LocalDate date) {
        return clock.day(date).shortWeekday() + NO_BREAK + date(date);
    }

    /** For example {@code Monday 8 March 2027}. */
    String fullDay(LocalDate date) {
        return clock.day(date).full() + NO_BREAK + date.getYear();
    }

    String fullDate(LocalDate date) {
        return clock.dateAndYear(date);
    }

    String time(LocalTime time) {
        return clock.time(time);
    }

    /** The instant on every clock that matters, one line each; one line when both zones show the same. */
    String instant(ZonedDateTime at, List<ZoneId> zones) {
        List<String> lines = zones.stream()
                .distinct()
                .map(at::withZoneSameInstant)
                .map(local -> fullDay(local.toLocalDate()) + ", " + time(local.toLocalTime()) + ", "
                        + clock.zone(local.getZone()))
                .toList();
        return String.join("\n", lines);
    }

    /** The same text with a full stop at its end, and each amount kept with its unit. */
    static String sentence(String text) {
        String kept = AMOUNT.matcher(text.strip()).replaceAll("$1" + NO_BREAK + "$2");
        return kept.isEmpty() || ".?!:".indexOf(kept.charAt(kept.length() - 1)) >= 0 ? kept : kept + ".";
    }

    static String unbroken(String text) {
        return text.replace(' ', NO_BREAK);
    }

    /** Joins with commas; the word {@code none} for an empty list. */
    String list(List<String> items) {
        return items.isEmpty() ? text("none") : String.join(", ", items);
    }
}
