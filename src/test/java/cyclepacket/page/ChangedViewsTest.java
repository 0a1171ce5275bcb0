package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the page "What changed" says of days that one of two issues does not list. */
class ChangedViewsTest {
    private static List<ChangedView.Row> rows(int before, int after) {
        PacketFacts earlier = new DemoPlan(before).facts();
        PacketFacts now = new DemoPlan(after).facts();
        return new ChangedViews(now, Words.of(Wording.load(DemoPlan.TEMPLATES, "en"))).rows(earlier, now.today());
    }

    /** The second issue ends on the 12th for a trigger that nobody has called: whoever reads it may have more to give. */
    @Test
    void neverReadsAPlannedTriggerAsTheEnd() {
        List<ChangedView.Line> lines =
                rows(1, 2).stream().flatMap(row -> row.after().stream()).toList();
        assertTrue(lines.stream().anyMatch(line -> line.text().equals("Wait for our call.")), lines::toString);
        assertTrue(lines.stream().noneMatch(line -> line.text().equals("nothing")), lines::toString);
    }

    /** Both issues say wait from the 13th on; that the first one foresaw a new cartridge there changes nothing to do. */
    @Test
    void listsNoDayThatStillWaits() {
        assertEquals(
                List.of("9 March", "10 March", "12 March"),
                rows(1, 2).stream()
                        .map(row -> row.day().date().replace('\u00a0', ' '))
                        .toList());
    }

    /** Both evenings took the same new amounts, so they are one row; the 9th has no small syringe yet. */
    @Test
    void putsDaysThatChangedAlikeIntoOneRow() {
        List<ChangedView.Row> rows = rows(1, 2);
        assertEquals("10 March to 11 March", rows.get(1).span().orElseThrow().replace('\u00a0', ' '));
        assertEquals(2, rows.get(1).after().size());
    }

    /** Two tablets a day at 8 and 20 hours: read as two at the first hour they would be a double dose. */
    @Test
    void givesEachAmountOfADayItsOwnHour() {
        ChangedView.Line tablet = transfer("FT-08440", "FT-08440-issue-2", "24 June").stream()
                .filter(line -> line.medicine().equals("estradiol (tablet)"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "3 mg at 8:00 a.m. (08:00). 3 mg at 8:00 p.m. (20:00).",
                tablet.text().replace('\u00a0', ' '));
    }

    /** The other way round the new list ends first: what goes on until a call must not read as nothing. */
    @Test
    void neverReadsTheEndOfAListAsTheEndOfWhatGoesOn() {
        List<ChangedView.Line> lines = transfer("FT-08440-issue-2", "FT-08440", "24 June");
        assertTrue(
                lines.stream()
                        .anyMatch(line -> line.medicine().equals("estradiol (tablet)")
                                && line.text().equals("Not listed yet. Do not stop before we tell you.")),
                lines::toString);
    }

    private static List<ChangedView.Line> transfer(String before, String after, String date) {
        PacketFacts now = FormPackets.facts(after);
        return new ChangedViews(now, Words.of(Wording.load(DemoPlan.TEMPLATES, "en")))
                .rows(FormPackets.facts(before), now.today()).stream()
                        .filter(row -> row.day().date().replace('\u00a0', ' ').equals(date))
                        .findFirst()
                        .orElseThrow()
                        .after();
    }
}
