package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.pdf.TaggedText;
import cyclepacket.pdf.Typesetter;
import cyclepacket.wording.TextEntry;
import cyclepacket.wording.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders of wording: a new one, a stale one, one that nobody has read, and one whose time is over. */
class LanguagesTest {
    @TempDir
    Path folder;

    private WordedHome home;

    @BeforeEach
    void copies() throws IOException {
        home = new WordedHome(folder.resolve("home"));
    }

    private Outcome print(String language) throws IOException {
        Path plan = home.plan("SM-04417", "copy", WordedHome.inLanguage(language));
        return home.print(plan, folder.resolve("out"));
    }

    private static String found(Outcome outcome) {
        return FindingText.print(outcome.findings());
    }

    private static List<String> reasons(Outcome outcome) {
        return outcome.written()
                .orElseThrow(() -> new AssertionError(found(outcome)))
                .draftReasons();
    }

    private String text() throws IOException {
        return String.join(
                        " ",
                        Typesetter.pageTexts(Files.readAllBytes(folder.resolve("out/SM-04417/issue-1/packet.pdf"))))
                .replaceAll("[\\s\\u00a0]+", " ");
    }

    /** A third language is a folder: every text of the source, with a mark before it. */
    private void writeToy(String more) throws IOException {
        Files.createDirectories(home.wording("pl"));
        List<Path> files;
        try (Stream<Path> all = Files.list(home.wording("en"))) {
            files = all.filter(file ->
                            !file.getFileName().toString().matches("(?:pack|rules|batch|beside|chart.*)\\.properties"))
                    .toList();
        }
        for (Path file : files) {
            String source = Files.readString(file);
            StringBuilder toy = new StringBuilder();
            for (TextEntry entry : TextFile.parse(file.toString(), source)) {
                if (!entry.key().matches("(?:weekday|month)\\..*|time\\.(?:before|after)-noon|and(?:\\.time)?")) {
                    String value = entry.source()
                            .substring(entry.source().indexOf('=') + 1)
                            .stripLeading();
                    toy.append(entry.key()).append("@en = ").append(value).append('\n');
                    toy.append(entry.key())
                            .append(" = ")
                            .append(value.replace("Call us", "Toy us"))
                            .append('\n');
                }
            }
            Files.writeString(home.wording("pl").resolve(file.getFileName()), toy);
        }
        Files.writeString(
                home.wording("pl").resolve("pack.properties"),
                "name = toy\nsource = en\nversion = 5\nnumbers = pl\ntranslator = nobody\nends = 2028-06-30\n" + more);
    }

    @Test
    void takesAThirdLanguageAsAFolder() throws IOException {
        writeToy("reviewer = A. Reader (invented)\n");
        Outcome outcome = print("pl");
        assertFalse(found(outcome).contains("WORDING-"), found(outcome));
        assertFalse(
                reasons(outcome).toString().contains("reviewed"),
                reasons(outcome).toString());
        assertTrue(text().contains("Toy us") && !text().contains("Call us."), "the folder's own words");
        assertTrue(text().contains("187,5 units") && text().contains("marca"), "numbers and months of the language");
    }

    @Test
    void keepsADraftUntilAPersonHasReadTheWords() throws IOException {
        writeToy("reviewer =\n");
        Outcome outcome = print("pl");
        assertTrue(
                reasons(outcome).contains("no person has reviewed the wording in toy"),
                reasons(outcome).toString());
        assertTrue(
                found(outcome).contains("copy.yaml:6:11: note: no person has reviewed the wording in toy"),
                found(outcome));
        for (String page :
                Typesetter.pageTexts(Files.readAllBytes(folder.resolve("out/SM-04417/issue-1/packet.pdf")))) {
            assertTrue(page.contains("DRAFT"), page);
        }
    }

    @Test
    void fallsBackToTheSourceForAStaleTextAndSaysSo() throws IOException {
        home.edit(
                "templates/wording/en/keeping.properties",
                text -> text.replace("Never freeze it.", "Never let it freeze."));
        Outcome outcome = print("es");
        assertTrue(
                reasons(outcome)
                        .contains("texts in español are missing, older than their source, or filled in otherwise"),
                reasons(outcome).toString());
        assertTrue(found(outcome).contains("[WORDING-STALE]"), found(outcome));
        assertTrue(text().contains("Never let it freeze. Keep it in its box, away from light."), "the source's text stands in");
        assertTrue(text().contains("Guárdela en un estante del medio"), "its neighbour stays");
        assertTrue(text().contains("Algunas líneas todavía no están en su idioma"), "the first page says so");
        assertEquals(
                List.of("Never let it freeze. Keep it in its box, away from light."),
                passages("packet.pdf", "en", "freeze"));
        assertEquals(1, passages("packet.pdf", "es", "Guárdela en un estante del medio").size());
    }

    /** A voice that reads the page aloud changes its language where the page does (PDF/UA-1, 7.2). */
    @Test
    void tellsTheTwoLanguagesOfTheSideBySidePagesApart() throws IOException {
        print("es");
        assertEquals(1, passages("beside.pdf", "es", "Guárdela en un estante del medio").size());
        assertEquals(1, passages("beside.pdf", "en", "Keep it on a middle shelf").size());
    }

    /** The passages of one language that have these words. */
    private List<String> passages(String file, String language, String words) throws IOException {
        return TaggedText.of(Files.readAllBytes(folder.resolve("out/SM-04417/issue-1").resolve(file))).stream()
                .filter(block -> block.language().equals(language))
                .map(block -> block.text().replace('\u00a0', ' '))
                .filter(text -> text.contains(words))
                .toList();
    }

    @Test
    void fallsBackToTheClinicsOwnTextAndSaysWhere() throws IOException {
        home.edit(
                "plans/medicines/fsh-pen.yaml", text -> text.replace("door-name: evening pen", "door-name: night pen"));
        Outcome outcome = print("es");
        assertTrue(
                found(outcome)
                        .contains("fsh-pen.yaml:5:12: note: \"night pen\" stays in English on the patient's pages"),
                found(outcome));
        assertTrue(reasons(outcome).contains("texts of the clinic's files are not in español"));
    }

    @Test
    void printsNothingOnceThePackHasEnded() throws IOException {
        home.edit(
                "templates/wording/en/pack.properties", text -> text.replace("ends = 2028-06-30", "ends = 2027-03-02"));
        Outcome outcome = print("en");
        assertTrue(outcome.written().isEmpty());
        assertTrue(
                found(outcome).contains("the wording in English may be printed until 2027-03-02 only"), found(outcome));
        home.edit(
                "templates/wording/en/pack.properties", text -> text.replace("ends = 2027-03-02", "ends = 2027-03-03"));
        assertTrue(print("en").written().isPresent(), "the last day is a good day");
    }

    @Test
    void namesTheLanguagesThereAre() throws IOException {
        Outcome outcome = print("fr");
        assertTrue(outcome.written().isEmpty());
        assertTrue(
                found(outcome).contains("copy.yaml:6:11: stop: there is no wording in fr   [LANGUAGE-UNKNOWN]"),
                found(outcome));
        assertTrue(found(outcome).contains("mend: write one of: en, es"), found(outcome));
    }

    @Test
    void locksEveryPageWithoutRoomAgainstTheClinicFile() throws IOException {
        for (String page : List.of("card", "calls", "trigger", "door")) {
            Path clinic = home.path().resolve("plans/clinic.yaml");
            String before = Files.readString(clinic);
            Files.writeString(clinic, before + "own-lines: {" + page + ": Do it our way.}\n");
            List<Finding> findings = Reckoning.of(home.path().resolve("plans/patients/SM-04417.yaml"))
                    .findings();
            String found = FindingText.print(findings);
            assertTrue(
                    found.contains("stop: a clinic file cannot write on the page " + page + "   [WORDING-LOCKED]"),
                    found);
            Files.writeString(clinic, before);
        }
    }

    @Test
    void printsTheClinicsOwnLineWhereThereIsRoom() throws IOException {
        Path clinic = home.path().resolve("plans/clinic.yaml");
        Files.writeString(
                clinic, Files.readString(clinic) + "own-lines: {keeping: Bring your full container to us.}\n");
        assertTrue(print("en").written().isPresent());
        assertTrue(text().contains("Bring your full container to us."));
        assertEquals(1, text().split("Bring your full container to us", -1).length - 1);
    }
}
