package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.MedicineFiles;
import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every row of the printed look-up, read from the finished PDF: its number is written into the plan as a navigator would
 * write it, and the ledger of that plan must name the new-cartridge evenings that the row printed.
 */
class PrintedLookUpTest {
    private static final Path HOME = Path.of("").toAbsolutePath();
    private static final Pattern EVENING = Pattern.compile("If it stopped on \\w+ (\\d+ \\w+)");
    private static final Pattern ROW =
            Pattern.compile("^([\\d.,]+) units ([\\d.,]+) units ((?:\\w+day .*)|none in this packet)$");

    @TempDir
    Path folder;

    private record Row(LocalDate evening, String window, String fromNew, List<LocalDate> next) {}

    private List<Row> printedRows(Path plan) throws IOException {
        byte[] pdf;
        try (Press press = new Press(HOME)) {
            Path packet = press.print(plan, folder.resolve("out"), false, java.time.Instant.EPOCH)
                    .written()
                    .orElseThrow()
                    .folder();
            pdf = Files.readAllBytes(packet.resolve("packet.pdf"));
        }
        List<Row> rows = new ArrayList<>();
        Optional<LocalDate> evening = Optional.empty();
        for (String line : Typesetter.textOf(pdf).replace('\u00a0', ' ').lines().toList()) {
            Matcher heading = EVENING.matcher(line);
            if (heading.find()) {
                evening = Optional.of(days("day " + heading.group(1)).get(0));
            }
            Matcher row = ROW.matcher(line.strip());
            if (evening.isPresent() && row.matches()) {
                rows.add(new Row(evening.get(), row.group(1), row.group(2), days(row.group(3))));
            }
        }
        return rows;
    }

    private static List<LocalDate> days(String text) {
        List<LocalDate> days = new ArrayList<>();
        Matcher day = Pattern.compile("day (\\d+) (\\w+)").matcher(text);
        while (day.find()) {
            Month month = Month.valueOf(day.group(2).toUpperCase(Locale.ROOT));
            days.add(LocalDate.of(2027, month, Integer.parseInt(day.group(1))));
        }
        return days;
    }

    /** The plan after the call: every earlier evening ran through, then this number. */
    private JsonNode ledgerAfter(String text, Row row, LocalDate from, Function<LocalDate, String> dose)
            throws IOException {
        StringBuilder lines = new StringBuilder();
        for (LocalDate day = from; !day.isAfter(row.evening()); day = day.plusDays(1)) {
            boolean isIt = day.equals(row.evening());
            lines.append("  - {date: ")
                    .append(day)
                    .append(", medicine: fsh-pen, given: ")
                    .append(dose.apply(day));
            lines.append(isIt ? ", window: " + row.window() + ", plunger: end, read-back: true}\n" : ", window: 0}\n");
        }
        Path plans = folder.resolve("plans/patients");
        Path plan = plans.resolve("after.yaml");
        Files.writeString(
                plan,
                text.replace("RECORD", lines)
                        .replace("PREPARED", row.evening().plusDays(1).toString()));
        Reckoning after = Reckoning.of(plan);
        return new JsonMapper().readTree(after.ledgerJson()).get("medicines").get(0);
    }

    private void copyPlans() throws IOException {
        for (String name : List.of(
                "clinic.yaml",
                "protocols/antagonist-fixed.yaml",
                "patients/SM-04417.yaml",
                "patients/SM-04417-issue-2.yaml")) {
            Path target = folder.resolve("plans").resolve(name);
            Files.createDirectories(target.getParent());
            Files.copy(Path.of("plans").resolve(name), target);
        }
        MedicineFiles.copyTo(folder.resolve("plans"));
    }

    private static void assertNext(Row row, JsonNode ledger, int leaving, LocalDate lastDay) {
        List<LocalDate> found = new ArrayList<>();
        for (JsonNode change : ledger.get("changes")) {
            if (change.get("leaving").intValue() == leaving + 1) {
                LocalDate earliest = LocalDate.parse(change.get("earliest").stringValue());
                LocalDate latest = change.get("latest").isNull()
                        ? lastDay
                        : LocalDate.parse(change.get("latest").stringValue());
                earliest.datesUntil(latest.plusDays(1)).forEach(found::add);
            }
        }
        assertEquals(new TreeSet<>(row.next()), new TreeSet<>(found), row.toString());
    }

    @Test
    void findsEveryPrintedNextEndOfTheFirstIssue() throws IOException {
        copyPlans();
        Path first = folder.resolve("plans/patients/SM-04417.yaml");
        List<Row> rows = printedRows(first);
        assertEquals(10, rows.size(), "37.5 to 150 in steps of 12.5");
        String text = Files.readString(first)
                .replace("record: []", "record:\nRECORD")
                .replaceAll("(?m)^issue: 1", "issue: 2\nreplaces: 1")
                .replace("on: 2027-03-03}\n", "on: PREPARED}\n");
        assertTrue(text.contains("on: PREPARED"), "the day of preparing moves on");
        for (Row row : rows) {
            JsonNode ledger = ledgerAfter(text, row, LocalDate.of(2027, 3, 5), day -> "187.5");
            assertNext(row, ledger, 1, LocalDate.of(2027, 3, 17));
        }
    }

    @Test
    void findsEveryPrintedNextEndOfASecondBoxInSmallSteps() throws IOException {
        copyPlans();
        Path first = folder.resolve("plans/patients/SM-04417.yaml");
        String small = Files.readString(first)
                .replace(
                        "{size: 600, lot: FA-2231, expires: 2028-01-31}", "{size: 300, lot: FA-1, expires: 2028-01-31}")
                .replace(
                        "{size: 900, lot: FA-2307, expires: 2028-03-31}]",
                        "{size: 300, lot: FA-2, expires: 2028-03-31}, {size: 300, lot: FA-3, expires: 2028-03-31}]");
        Files.writeString(first, small);
        List<Row> rows = printedRows(first);
        assertTrue(rows.size() > 3, rows.toString());
        String text = small.replace("record: []", "record:\nRECORD")
                .replaceAll("(?m)^issue: 1", "issue: 2\nreplaces: 1")
                .replace("on: 2027-03-03}\n", "on: PREPARED}\n");
        for (Row row : rows) {
            JsonNode ledger = ledgerAfter(text, row, LocalDate.of(2027, 3, 5), day -> "187.5");
            assertNext(row, ledger, 1, LocalDate.of(2027, 3, 17));
        }
    }
}
