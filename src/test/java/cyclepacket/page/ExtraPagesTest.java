package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page for the person who injects and the page for a journey. */
class ExtraPagesTest {
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);
    private static final String FILE = "patients/SM-04417.yaml";

    private static LaidOut asked() throws IOException {
        return LaidOut.demo("SM-04417").with(FILE, "avoid: []", "with: [helper, travel]\navoid: []");
    }

    private static String part(LaidOut laid, String language, String id) throws Exception {
        String xhtml = WRITER.packet(FormPackets.facts(laid), language, !language.equals("en"));
        return PageText.text(PageText.of(xhtml).part(id).get(0)).replace('\u00a0', ' ');
    }

    @Test
    void printsThemOnlyWhereTheyAreAskedFor() throws Exception {
        PageText page = PageText.of(WRITER.packet(FormPackets.facts(LaidOut.demo("SM-04417"))));
        assertEquals(List.of(), page.part("helper"));
        assertEquals(List.of(), page.part("travel"));
        String start = part(asked(), "en", "start");
        assertTrue(start.contains("For the person who helps") && start.contains("When you travel"), start);
    }

    /** Sharps and needlesticks: advice of the FDA and CDC, from memory; the other lines are common practice. */
    @Test
    void tellsTheHelperWhereWhatNotAndWhomToCall() throws Exception {
        String helper = part(asked(), "en", "helper");
        for (String words : List.of(
                "You give the injection for Wren Hollis.",
                "Use the spot on the list Day by day for this evening.",
                "Drop it in the sharps container at once.",
                "Did the needle stick you? Wash the spot with soap and water at once.",
                "Do not change the amount.",
                "Do not inject again if it dripped",
                "The pen stops and the number is not 0? Do not turn the dial. Get the new-cartridge card.",
                "+1 207 555 0177",
                "The wrong medicine, or too much? Call now.",
                "Practiced with us on:")) {
            assertTrue(helper.contains(words), words + " is not in: " + helper);
        }
        String muscle = part(LaidOut.demo("FT-08440-issue-2"), "en", "helper");
        assertTrue(muscle.contains("Use only the upper outer quarter that the drawing shows (muscle)."), muscle);
        assertFalse(muscle.contains("(belly)") || muscle.contains("The pen stops"), muscle);
    }

    @Test
    void listsWhatTheTravellerCarriesByItsGenericName() throws Exception {
        String travel = part(asked(), "en", "travel");
        assertTrue(travel.contains("follitropin pen 36 to 46 °F (2 to 8 °C)"), travel);
        assertTrue(travel.contains("ganirelix filled syringe 36 to 77 °F (2 to 25 °C)"), travel);
        assertTrue(travel.contains("Never put them in a bag that is checked in."), travel);
        assertTrue(travel.contains("Do not let the medicine touch the ice."), travel);
        assertTrue(travel.contains("At home it is There it is"), travel);
        assertTrue(travel.contains("Fix the letter here."), travel);
        // Said once: the page on keeping leaves it to this one.
        assertFalse(part(asked(), "en", "keeping").contains("touch the ice"));
        assertTrue(part(LaidOut.demo("SM-04417"), "en", "keeping").contains("touch the ice"));
    }

    /** New York goes to summer time on 14 March 2027, London on 28 March: two lines, each from the day it holds. */
    @Test
    void printsBothClocksForAPatientInAnotherZone() throws Exception {
        LaidOut london = asked().with(FILE, "zone: America/New_York", "zone: Europe/London");
        String travel = part(london, "en", "travel");
        assertTrue(travel.contains("From Friday 5 March 8:30 p.m. (20:30) 3:30 p.m. (15:30)"), travel);
        assertTrue(travel.contains("From Sunday 14 March 8:30 p.m. (20:30) 4:30 p.m. (16:30)"), travel);
        assertFalse(travel.contains("There it is"), travel);
        LaidOut tokyo = asked().with(FILE, "zone: America/New_York", "zone: Asia/Tokyo");
        assertTrue(
                part(tokyo, "en", "travel").contains("8:30 p.m. (20:30) 6:30 a.m. (06:30)"),
                part(tokyo, "en", "travel"));
        LaidOut sydney = asked().with(FILE, "zone: America/New_York", "zone: Pacific/Honolulu");
        assertTrue(
                part(sydney, "en", "travel")
                        .contains("From Friday 5 March 8:30 p.m. (20:30) Saturday 6 March, 1:30 a.m."),
                part(sydney, "en", "travel"));
    }

    @ParameterizedTest
    @CsvSource({"en, letter, standard", "es, letter, standard", "en, A4, large", "es, letter, large"})
    void printsThemFullAndClear(String language, String paper, String size) throws IOException {
        LaidOut laid = asked().with(FILE, "paper: letter", "paper: " + paper)
                .with(FILE, "text-size: standard", "text-size: " + size);
        String xhtml = WRITER.packet(FormPackets.facts(laid), language, !language.equals("en"));
        byte[] pdf = PacketPrintTest.print(xhtml, language);
        String name = language + ", " + paper + ", " + size;
        TidyPages.check(name, pdf, Plan.TextSize.valueOf(size.toUpperCase(Locale.ROOT)));
        if (size.equals("standard")) {
            assertEquals(18, TidyPages.texts(pdf).size(), name);
        }
    }
}
