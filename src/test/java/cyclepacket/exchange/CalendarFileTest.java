package cyclepacket.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.course.Course;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

/** The calendar written by one library and read back by another (RFC 5545). */
class CalendarFileTest {
    private static final String CODE = "7K3M-Q9X2-TR5";

    private static CalendarFile.Issue issue(String name, String... edits) throws IOException {
        Path plan = Path.of("plans/patients").resolve(name);
        String text = Files.readString(plan);
        for (int edit = 0; edit < edits.length; edit += 2) {
            assertTrue(text.contains(edits[edit]), edits[edit]);
            text = text.replace(edits[edit], edits[edit + 1]);
        }
        PlanFiles files = PlanReader.read(plan, text.getBytes(StandardCharsets.UTF_8))
                .files()
                .value()
                .orElseThrow();
        Course course = Course.of(files);
        return new CalendarFile.Issue(files.plan(), course, CycleLedger.of(files, course));
    }

    /** UID, start, status, sequence and text of each event. */
    private static List<List<String>> events(byte[] calendar) throws IOException, ParserException {
        Calendar read = new CalendarBuilder().build(new ByteArrayInputStream(calendar));
        assertTrue(read.validate().getEntries().isEmpty(), () -> read.validate().toString());
        List<List<String>> events = new ArrayList<>();
        for (Component component : read.getComponents(Component.VEVENT)) {
            VEvent event = (VEvent) component;
            events.add(List.of(
                    event.getRequiredProperty("UID").getValue(),
                    event.getRequiredProperty("DTSTART").getValue(),
                    event.getRequiredProperty("STATUS").getValue(),
                    event.getRequiredProperty("SEQUENCE").getValue(),
                    event.getRequiredProperty("SUMMARY").getValue(),
                    Integer.toString(alarms(event))));
        }
        return events;
    }

    private static int alarms(VEvent event) {
        for (VAlarm alarm : event.getAlarms()) {
            assertEquals("DISPLAY", alarm.getRequiredProperty("ACTION").getValue());
            assertEquals(
                    event.getRequiredProperty("SUMMARY").getValue(),
                    alarm.getRequiredProperty("DESCRIPTION").getValue());
        }
        return event.getAlarms().size();
    }

    private static List<String> column(List<List<String>> events, int column) {
        return events.stream().map(event -> event.get(column)).toList();
    }

    @Test
    void remindsOfCalledEveningsAndTheCalledTriggerAlone() throws IOException, ParserException {
        byte[] third = CalendarFile.of(issue("SM-04417-issue-3.yaml"), Optional.empty(), CODE)
                .orElseThrow();
        List<List<String>> events = events(third);
        assertEquals(List.of("20270313T013000Z", "20270314T003000Z"), column(events, 1), "20:30 and 19:30 Eastern");
        assertEquals(List.of("CONFIRMED", "CONFIRMED"), column(events, 2));
        assertEquals(List.of("3", "3"), column(events, 3));
        assertEquals(List.of("1", "1"), column(events, 5));
        byte[] first =
                CalendarFile.of(issue("SM-04417.yaml"), Optional.empty(), CODE).orElseThrow();
        assertEquals(4, events(first).size(), "nothing from the evening of the first scan on");
    }

    @Test
    void saysNeitherAmountNorMedicineNorName() throws IOException {
        String text = new String(
                CalendarFile.of(issue("SM-04417-issue-3.yaml"), Optional.empty(), CODE)
                        .orElseThrow(),
                StandardCharsets.UTF_8);
        assertTrue(text.contains("SUMMARY:evening: see your page\\, code " + CODE), text);
        for (String secret :
                List.of("212.5", "units", "follitropin", "pen", "syringe", "Hollis", "SM-04417", "trigger")) {
            assertFalse(text.contains(secret), secret);
        }
    }

    @Test
    void keepsNamesRaisesTheSequenceAndCancelsWhatIsGone() throws IOException, ParserException {
        CalendarFile.Issue second = issue("SM-04417-issue-2.yaml");
        CalendarFile.Issue held = issue(
                "SM-04417-issue-2.yaml",
                "issue: 2\nreplaces: 1",
                "issue: 3\nreplaces: 2",
                "overrides: []",
                "revised: [{issue: 3, what: hold, of: fsh-pen, from: 2027-03-09, until: 2027-03-09, by: a, to: b, "
                        + "on: 2027-03-09, read-back: true}]\noverrides: []");
        List<List<String>> before =
                events(CalendarFile.of(second, Optional.empty(), CODE).orElseThrow());
        List<List<String>> after =
                events(CalendarFile.of(held, Optional.of(second), CODE).orElseThrow());
        assertEquals(
                column(before, 0).stream().sorted().toList(),
                column(after, 0).stream().sorted().toList());
        assertEquals(List.of("2", "2", "2"), column(before, 3));
        assertEquals(List.of("3", "3", "3"), column(after, 3));
        List<String> gone = after.stream()
                .filter(event -> event.get(2).equals("CANCELLED"))
                .map(event -> event.get(1) + " " + event.get(5))
                .toList();
        assertEquals(List.of("20270310T013000Z 0"), gone);
    }

    @Test
    void isSilentBeforeTheStartIsCalled() throws IOException {
        CalendarFile.Issue uncalled = issue("SM-04417.yaml", "read-back: true", "read-back: false");
        assertEquals(Optional.empty(), CalendarFile.of(uncalled, Optional.empty(), CODE));
    }
}
