package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Severity;
import cyclepacket.wording.Designation;
import cyclepacket.wording.Designations;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule of plain words, shown to find one planted sentence in the PDF of a real packet. */
class PlantedWordsTest {
    @TempDir
    static Path folder;

    private static WordedHome home;
    private static String clinic;

    @BeforeAll
    static void copies() throws IOException {
        home = new WordedHome(folder.resolve("home"));
        clinic = Files.readString(home.path().resolve("plans/clinic.yaml"));
    }

    private static List<Finding> planted(String language, String lines) throws IOException {
        // A line of the clinic's own that nobody translated is a passage in the clinic's language.
        String spoken = lines.strip().replaceAll("(?m)^ *[a-z]+: (\"[^\"]*\")$", "    - {text: $1, says: $1}");
        Files.writeString(
                home.path().resolve("plans/clinic.yaml"),
                (language.equals("es") ? clinic.replaceFirst("(?m)^  es:.*\n", "$0" + spoken + "\n") : clinic)
                        + "own-lines:\n" + lines);
        Path plan = home.plan("SM-04417", "copy", WordedHome.inLanguage(language));
        Path out = folder.resolve("out");
        Outcome outcome = home.print(plan, out);
        assertTrue(outcome.written().isPresent(), FindingText.print(outcome.findings()));
        Path packet = out.resolve("SM-04417/issue-1/packet.pdf");
        return new WordingCheck(home.path()).pdf(Files.readAllBytes(packet), "packet.pdf");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en|WORDING-NUMBER-WORD|STOP|Inject two units more.|two units",
                "en|WORDING-INTERVAL|STOP|Do this twice daily.|twice daily",
                "en|WORDING-INTERVAL|STOP|Do this every 12 hours.|every 12 hours",
                "en|WORDING-DESIGNATION|STOP|Take .5 mg less.|.5",
                "en|WORDING-TERM|WARN|This is your antagonist.|antagonist",
                "en|WORDING-PASSIVE|NOTE|The dose is given by you.|is given",
                "en|WORDING-LONG-SENTENCE|WARN|If you do not know what to do and it is late and no one picks up the phone"
                        + " then you go to bed and you call us when you wake up.| words; the most is 22",
                "en|WORDING-HARD-SENTENCE|NOTE|Institutional recommendations accompany individualized administration.|"
                        + "Institutional recommendations",
                "es|WORDING-NUMBER-WORD|STOP|Inyecte dos unidades más.|dos unidades",
                "es|WORDING-INTERVAL|STOP|Hágalo dos veces al día.|dos veces al día",
                "es|WORDING-DESIGNATION|STOP|Inyecte 10 UI más.|UI",
                "es|WORDING-TERM|WARN|Este es su antagonista.|antagonista",
                "es|WORDING-PASSIVE|NOTE|La dosis fue puesta por usted.|fue puesta"
            })
    void findsThePlantedSentence(String language, String code, Severity severity, String sentence, String words)
            throws IOException {
        List<Finding> found = planted(language, "  keeping: \"" + sentence + "\"\n");
        List<Finding> own = found.stream()
                .filter(finding -> finding.code().equals(code) && finding.severity() == severity)
                .filter(finding -> finding.text().contains(words))
                .toList();
        assertEquals(1, own.size(), FindingText.print(found));
        String place = own.get(0).place().file();
        assertTrue(place.startsWith("packet.pdf#page="), place);
        String first = sentence.split(" ")[0];
        assertTrue(
                own.get(0).place().sourceLine().contains(first),
                own.get(0).place().toString());
    }

    /** Every designation that holds in all languages, in a few lines of one packet. */
    @Test
    void findsEveryDesignation() throws IOException {
        List<Finding> found = planted("en", """
                  start: "Give 10U, 5 IU, 5 UI, qd, qod, 1.0 mg, .5 mL, MSO4, 10K, 75units, dose75 units, 5 mg. now"
                  days: "Give 5 µg, 5 ng, 1 cc, 1 ml, SC, IJ, qhs, BID, D/C, a & b, <10, 10 units/day, 2°, 1Ø, ½, hCG."
                """);
        TreeSet<String> keys = new TreeSet<>();
        for (Designation form : Designations.all()) {
            if (found.stream().noneMatch(finding -> finding.text().endsWith("(" + form.key() + ")"))) {
                keys.add(form.key());
            }
        }
        assertEquals(new TreeSet<>(), keys, FindingText.print(found));
    }
}
