package cyclepacket.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The trail of one pen, read from the text of a finished PDF and from nothing else. Totals are in thousandths. */
record ChartTrailText(
        List<Cartridge> cartridges,
        List<Injection> injections,
        List<Change> changes,
        boolean showsLeft,
        long step,
        int inUseDays,
        boolean openingIsDayOne) {
    private static final String MONTHS = "Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec";
    private static final String DAY = "(\\d{1,2} (?:" + MONTHS + "))";
    private static final String EVENING = "(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) " + DAY;
    private static final String NUMBER = "(\\d[\\d,]*(?:\\.\\d+)?)";
    private static final String DATES =
            "(\\d+ \\w{3}|none) (\\d+ \\w{3}|none) (\\d+ \\w{3}|none) (\\d+ \\w{3}|none|later)";
    private static final Pattern CARTRIDGE =
            Pattern.compile("(\\d+) " + (NUMBER + " ").repeat(4) + "(below |)" + NUMBER + " " + DATES);
    /** B stands on two lines where it is a bound: the word in the row, the number below it. */
    private static final Pattern BELOW = Pattern.compile("below (" + DATES + ") (\\d[\\d,]*+(?:\\.\\d+)?+)");

    private static final Pattern INJECTION =
            Pattern.compile(EVENING + " (\\S+) (none|\\d+) " + NUMBER + " " + NUMBER + " " + NUMBER + " ");
    private static final Pattern CHANGE = Pattern.compile("(\\d+) " + EVENING
            + " (\\S+) (\\d+) (recorded|certain|possible) (in-use limit|above " + NUMBER + " to " + NUMBER + "|"
            + NUMBER + " to " + NUMBER + "|" + NUMBER + ") (as read|none|[\\d.,]+(?: to [\\d.,]+)?)");
    private static final Pattern STOP = Pattern.compile("box (\\d+) stopped at " + NUMBER);
    private static final Pattern UNKNOWN = Pattern.compile("not known up to " + NUMBER);
    private static final Pattern IN_USE =
            Pattern.compile("used for (\\d+) days, and the evening (it is|after it is) opened is day 1");
    private static final Pattern STEPS = Pattern.compile("S comes in steps of " + NUMBER);
    private static final Pattern FIRST_DAY = Pattern.compile("Amounts in \\w+, (\\d+) (\\w{3})\\w* (\\d{4}) to");

    /** One row of the cartridges; dates are texts where the row says none or later. */
    record Cartridge(
            int number,
            long least,
            long most,
            long a,
            long b,
            Optional<LocalDate> opened,
            String earliest,
            String latest) {}

    /** One row of the injections; rows without an injection are left out. */
    record Injection(
            LocalDate date,
            int number,
            long dialled,
            long before,
            long after,
            boolean ranThrough,
            boolean inFull,
            List<Stop> stops,
            boolean confirmed,
            long unknown) {}

    /** One number that was read and the box it belongs to. */
    record Stop(int box, long number) {}

    /** One row of the new-cartridge evenings. */
    record Change(int leaving, LocalDate date, int injection, String chance, String owed) {}

    /** Every pen of a chart copy. */
    static List<ChartTrailText> read(byte[] pdf) {
        String text = ChartLines.text(pdf);
        String trail =
                text.substring(text.indexOf("3. Trail of the computation"), text.indexOf("How far the stock reaches"));
        List<ChartTrailText> trails = new ArrayList<>();
        String[] pens = trail.split("Cartridges: ");
        for (int pen = 1; pen < pens.length; pen++) {
            trails.add(pen(pens[pen]));
        }
        return trails;
    }

    private static ChartTrailText pen(String text) {
        String containers = text.substring(0, text.indexOf("Injections: "));
        String injections = text.substring(text.indexOf("Injections: "), text.indexOf("How to work it out"));
        String how = text.substring(text.indexOf("How to work it out"), text.indexOf("New-cartridge evenings: "));
        String changes = text.substring(text.indexOf("New-cartridge evenings: "), text.indexOf("From exact ranges"));
        LocalDate first = firstDay(injections);
        Matcher inUse = IN_USE.matcher(how);
        if (!inUse.find()) {
            throw new AssertionError("no in-use days in " + how);
        }
        return new ChartTrailText(
                cartridges(containers, first),
                injections(injections, first),
                changes(changes, first),
                how.contains("This pen shows what is left"),
                step(how),
                Integer.parseInt(inUse.group(1)),
                inUse.group(2).equals("it is"));
    }

    private static long step(String how) {
        Matcher steps = STEPS.matcher(how);
        return steps.find() ? thousandths(steps.group(1)) : 1;
    }

    private static LocalDate firstDay(String text) {
        Matcher first = FIRST_DAY.matcher(text);
        if (!first.find()) {
            throw new AssertionError("no first day in " + text);
        }
        return LocalDate.of(Integer.parseInt(first.group(3)), month(first.group(2)), Integer.parseInt(first.group(1)));
    }

    private static int month(String name) {
        return List.of(MONTHS.split("\\|")).indexOf(name) + 1;
    }

    /** A day is printed without its year: the year that brings it nearest to the first injection. */
    static LocalDate day(String text, LocalDate first) {
        String[] parts = text.split(" ");
        LocalDate day = LocalDate.of(first.getYear(), month(parts[1]), Integer.parseInt(parts[0]));
        if (day.isBefore(first.minusDays(180))) {
            return day.plusYears(1);
        }
        return day.isAfter(first.plusDays(180)) ? day.minusYears(1) : day;
    }

    static long thousandths(String number) {
        return new BigDecimal(number.replace(",", "")).movePointRight(3).longValueExact();
    }

    private static List<Cartridge> cartridges(String text, LocalDate first) {
        List<Cartridge> cartridges = new ArrayList<>();
        for (MatchResult row : CARTRIDGE
                .matcher(BELOW.matcher(text).replaceAll("below $6 $1"))
                .results()
                .toList()) {
            Optional<LocalDate> opened =
                    row.group(8).equals("none") ? Optional.empty() : Optional.of(day(row.group(8), first));
            cartridges.add(new Cartridge(
                    Integer.parseInt(row.group(1)),
                    thousandths(row.group(3)),
                    thousandths(row.group(4)),
                    thousandths(row.group(5)),
                    thousandths(row.group(7)) - (row.group(6).isEmpty() ? 0 : 1),
                    opened,
                    row.group(10),
                    row.group(11)));
        }
        return cartridges;
    }

    private static List<Injection> injections(String text, LocalDate first) {
        List<MatchResult> rows = INJECTION.matcher(text).results().toList();
        List<Injection> injections = new ArrayList<>();
        for (int index = 0; index < rows.size(); index++) {
            MatchResult row = rows.get(index);
            String known = text.substring(
                    row.end(), index + 1 < rows.size() ? rows.get(index + 1).start() : text.length());
            if (!row.group(3).equals("none")) {
                injections.add(injection(row, known, first));
            }
        }
        return injections;
    }

    private static Injection injection(MatchResult row, String known, LocalDate first) {
        List<Stop> stops = STOP.matcher(known)
                .results()
                .map(stop -> new Stop(Integer.parseInt(stop.group(1)), thousandths(stop.group(2))))
                .toList();
        Matcher unknown = UNKNOWN.matcher(known);
        return new Injection(
                day(row.group(1), first),
                Integer.parseInt(row.group(3)),
                thousandths(row.group(4)),
                thousandths(row.group(5)),
                thousandths(row.group(6)),
                known.contains("ran through"),
                known.matches("(given,|box \\d+ stopped|stopped).*"),
                stops,
                known.contains("read back"),
                unknown.find() ? thousandths(unknown.group(1)) : 0);
    }

    private static List<Change> changes(String text, LocalDate first) {
        return CHANGE.matcher(text)
                .results()
                .map(row -> new Change(
                        Integer.parseInt(row.group(1)),
                        day(row.group(2), first),
                        Integer.parseInt(row.group(4)),
                        row.group(5),
                        row.group(6)))
                .toList();
    }
}
