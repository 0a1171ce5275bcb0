package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.page.WordingFolder;
import cyclepacket.pdf.TaggedBlock;
import cyclepacket.pdf.TaggedOrder;
import cyclepacket.pdf.TaggedText;
import cyclepacket.pdf.Typesetter;
import cyclepacket.wording.TextEntry;
import cyclepacket.wording.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
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

    /** Everything that decides on the packet, and no packet. */
    private Reckoning reckoned(String language) throws IOException {
        return Reckoning.of(home.plan("SM-04417", "copy", WordedHome.inLanguage(language)))
                .in(home.path().resolve("templates"));
    }

    private static String found(Outcome outcome) {
        return FindingText.print(outcome.findings());
    }

    private static String found(Reckoning reckoning) {
        return FindingText.print(reckoning.findings());
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
        String code = WordingApproval.code(WordingFolder.of(home.path().resolve("templates"), "pl"));
        Files.writeString(
                home.wording("pl").resolve("pack.properties"),
                "approved-by = A. Lead (invented)\napproved-on = 2027-02-20\nlocked-code = " + code + "\n",
                StandardOpenOption.APPEND);
    }

    @Test
    void takesAThirdLanguageAsAFolder() throws IOException {
        writeToy("reviewer = A. Reader (invented)\n");
        Outcome outcome = print("pl");
        assertFalse(found(outcome).contains("WORDING-"), found(outcome));
        assertEquals(
                List.of(
                        "nobody has countersigned it",
                        "2 warnings wait for a line under overrides",
                        "texts of the clinic's files are not in toy"),
                reasons(outcome),
                "nothing of its own keeps it a draft");
        assertFalse(passages("beside.pdf", "pl", "Toy us").isEmpty(), "staff read it beside the source");
        assertEquals(
                List.of(),
                new WordingCheck(home.path())
                        .language("pl").stream().filter(Finding::isStop).toList(),
                "the command reads it as well");
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
        assertTrue(
                text().contains("Never let it freeze. Keep it in its box, away from light."),
                "the source's text stands in");
        assertTrue(text().contains("Guárdela en un estante del medio"), "its neighbour stays");
        assertTrue(text().contains("Algunas líneas todavía no están en su idioma"), "the first page says so");
        assertEquals(
                List.of("Never let it freeze. Keep it in its box, away from light."),
                passages("packet.pdf", "en", "freeze"));
        assertEquals(
                1,
                passages("packet.pdf", "es", "Guárdela en un estante del medio").size());
    }

    /** A voice that reads the page aloud changes its language where the page does (PDF/UA-1, 7.2). */
    @Test
    void tellsTheTwoLanguagesOfTheSideBySidePagesApart() throws IOException {
        print("es");
        assertEquals(
                1,
                passages("beside.pdf", "es", "Guárdela en un estante del medio").size());
        assertEquals(
                1, passages("beside.pdf", "en", "Keep it on a middle shelf").size());
    }

    /** The passages of one language that have these words. */
    private List<String> passages(String file, String language, String words) throws IOException {
        return TaggedText.of(Files.readAllBytes(
                        folder.resolve("out/SM-04417/issue-1").resolve(file)))
                .stream()
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
        List<TaggedOrder.Said> named = said().stream()
                .filter(said -> said.text()
                        .replace('\u00a0', ' ')
                        .toLowerCase(Locale.ROOT)
                        .contains("night pen"))
                .toList();
        assertTrue(named.size() > 8, named.toString());
        assertEquals(
                List.of("en"),
                named.stream().map(TaggedOrder.Said::language).distinct().toList(),
                "a voice reads it in its own language");
    }

    private List<TaggedOrder.Said> said() throws IOException {
        return TaggedOrder.of(Files.readAllBytes(folder.resolve("out/SM-04417/issue-1/packet.pdf")));
    }

    /** Also where what a picture shows is told in the source's words. */
    @Test
    void namesTheLanguageOfAPicturesWords() throws IOException {
        home.edit(
                "templates/wording/en/pictures.properties",
                text -> text.replace("Drawing of the two covers", "Drawing of both covers"));
        home.edit(
                "templates/wording/en/medicine.properties",
                text -> text.replace(
                        "Drawing of a pen. The window is empty.", "Drawing of some pen. The window is empty."));
        print("es");
        for (TaggedOrder.Said picture :
                said().stream().filter(TaggedOrder.Said::isPicture).toList()) {
            boolean isSource = picture.text().startsWith("Drawing of");
            assertEquals(isSource ? "en" : "es", picture.language(), picture.text());
        }
        for (String words : List.of("both covers", "some pen")) {
            assertTrue(
                    said().stream()
                            .anyMatch(said -> said.isPicture() && said.text().contains(words)),
                    words);
        }
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

    /** Staff read the source on the chart copy, and it stands in for what is missing. */
    @Test
    void printsNothingOnceTheSourceHasEnded() throws IOException {
        home.edit(
                "templates/wording/en/pack.properties", text -> text.replace("ends = 2028-06-30", "ends = 2027-03-02"));
        assertTrue(reckoned("es").isStopped());
        assertTrue(found(reckoned("es")).contains("[WORDING-ENDED]"), found(reckoned("es")));
    }

    @Test
    void keepsADraftUntilSomebodyHasApprovedTheWords() throws IOException {
        home.edit(
                "templates/wording/en/pack.properties",
                text -> text.replace("approved-by = medical lead (invented)", "approved-by ="));
        Reckoning outcome = reckoned("en");
        assertTrue(outcome.draftReasons().contains("nobody has approved the wording in English"), found(outcome));
        assertTrue(found(outcome).contains("[WORDING-NOT-APPROVED]"), found(outcome));
    }

    @Test
    void keepsADraftBeforeTheDayOfTheApproval() throws IOException {
        home.edit(
                "templates/wording/en/pack.properties",
                text -> text.replace("approved-on = 2027-02-15", "approved-on = 2027-03-04"));
        assertTrue(
                reckoned("en").draftReasons().contains("the wording in English is approved only from 2027-03-04 on"),
                "prepared on 3 March");
    }

    /** The new-cartridge card, the red flags and the trigger page are locked: an approval holds for their very words. */
    @Test
    void keepsADraftOnceALockedTextIsNotTheApprovedOne() throws IOException {
        for (String file : List.of("card", "calls", "trigger")) {
            Path path = home.wording("en").resolve(file + ".properties");
            String before = Files.readString(path);
            Files.writeString(path, before.replaceFirst("(?m)^([a-z].* = .*)\\.$", "$1!"));
            Reckoning outcome = reckoned("en");
            assertTrue(
                    outcome.draftReasons()
                            .contains("the locked texts in English are not those that medical lead (invented)"
                                    + " approved on 2027-02-15"),
                    file + found(outcome));
            String code = found(outcome).replaceFirst("(?s).*write locked-code = (\\S+) in its.*", "$1");
            home.edit(
                    "templates/wording/en/pack.properties",
                    text -> text.replaceFirst("locked-code = \\S+", "locked-code = " + code));
            assertFalse(found(reckoned("en")).contains("WORDING-LOCKED-CHANGED"), "approved again");
            Files.writeString(path, before);
        }
    }

    @Test
    void shipsTheLockedTextsAsTheyWereApproved() {
        WordingFolder english = WordingFolder.of(Path.of("templates"), "en");
        assertEquals(
                WordingApproval.code(english),
                english.pack().lockedCode().orElse(""),
                "locked-code in templates/wording/en/pack.properties, once the changed texts are approved");
    }

    @Test
    void namesTheApprovalsOnTheChartCopy() throws IOException {
        print("es");
        String chart = String.join(
                " ",
                TaggedText.of(Files.readAllBytes(folder.resolve("out/SM-04417/issue-1/chart.pdf"))).stream()
                        .map(block -> block.text().replace('\u00a0', ' '))
                        .toList());
        String code = WordingApproval.code(WordingFolder.of(Path.of("templates"), "en"));
        for (String words : List.of(
                "English, version 5: medical lead (invented), 15 February 2027; until 30 June 2028.",
                "Locked texts: code " + code,
                "español, version 5: nobody has approved it; until 30 June 2028.",
                "Translated by: machine draft, not reviewed by a person. Reviewed by: nobody.")) {
            assertTrue(chart.contains(words), words + chart);
        }
    }

    /** Neither a line of its own nor a translation of its texts reaches a locked page. */
    @Test
    void leavesTheLockedPagesAsTheyAreWhateverTheClinicFileSays() throws IOException {
        assertTrue(print("es").written().isPresent());
        List<String> before = lockedTexts();
        String card = WordingFolder.of(Path.of("templates"), "es").texts(List.of("card")).values().stream()
                .map(TextEntry::value)
                .filter(text -> text.matches("[\\p{L} ,.]{12,}"))
                .findFirst()
                .orElseThrow();
        home.edit(
                "plans/clinic.yaml",
                text -> text.replace("  es: ", "  es:\n    - {text: \"" + card + "\", says: A nuestra manera.} ")
                        + "own-lines: {start: Nueva., days: Nueva., trouble: Nueva., keeping: Nueva., log: Nueva.}\n");
        assertTrue(print("es").written().isPresent());
        assertTrue(text().contains("Nueva."), "its own lines stand elsewhere");
        assertEquals(before, lockedTexts());
    }

    /** What the pages of the new-cartridge card, the red flags and the trigger say, without their running lines. */
    private List<String> lockedTexts() throws IOException {
        List<String> titles = Stream.of("card.title", "calls.title", "trigger.title")
                .map(key -> WordingFolder.of(Path.of("templates"), "es").texts().get(key))
                .filter(Objects::nonNull)
                .map(TextEntry::value)
                .toList();
        List<String> texts = new ArrayList<>();
        boolean isLocked = false;
        for (TaggedBlock block : TaggedText.of(Files.readAllBytes(folder.resolve("out/SM-04417/issue-1/packet.pdf")))) {
            if (block.role().equals("H1")) {
                isLocked = titles.contains(block.text());
            }
            if (isLocked) {
                texts.add(block.text());
            }
        }
        assertTrue(texts.size() > 30, texts.toString());
        return texts;
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
