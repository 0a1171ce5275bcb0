package cyclepacket.packet;

import cyclepacket.exchange.PacketJson;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.page.WordingFolder;
import cyclepacket.pdf.PdfText;
import cyclepacket.pdf.TaggedBlock;
import cyclepacket.pdf.TaggedText;
import cyclepacket.wording.GradeCheck;
import cyclepacket.wording.LanguageRules;
import cyclepacket.wording.Pack;
import cyclepacket.wording.Passage;
import cyclepacket.wording.TermCheck;
import cyclepacket.wording.TextCheck;
import cyclepacket.wording.TextEntry;
import cyclepacket.wording.Translation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Judges words: every text of a language's folder, or what stands in a finished PDF. */
public final class WordingCheck {
    /** Lines at the head and at the foot of a page that are its running lines, or lie beside them. */
    private static final int RUNNING_LINES = 3;

    private final Path templates;

    /** @param home the project's folder, with {@code templates} below it */
    public WordingCheck(Path home) {
        this.templates = home.resolve("templates");
    }

    /** The languages that have a folder. */
    public List<String> languages() throws IOException {
        return WordingFolder.languages(templates);
    }

    /** The findings alone, for a program. */
    public static String json(List<Finding> findings) {
        return PacketJson.of(findings);
    }

    /** Every text of one language's folder, those for staff by their own measure. */
    public List<Finding> language(String language) {
        WordingFolder folder = WordingFolder.of(templates, language);
        Pack pack = folder.pack();
        LanguageRules rules = folder.rules();
        List<TextEntry> texts = folder.translation().map(Translation::own).orElseGet(folder::texts).values().stream()
                .toList();
        List<Finding> findings = new ArrayList<>(folder.findings());
        Place ofPack = pack.entries().get("name").place();
        findings.addAll(new WordingApproval(folder, ofPack).checkTexts().findings());
        List<Passage> forPatients = passages(texts.stream().filter(text -> !pack.isForStaff(text)));
        findings.addAll(TextCheck.of(forPatients, rules, false));
        findings.addAll(TextCheck.of(passages(texts.stream().filter(pack::isForStaff)), rules, true));
        findings.addAll(TermCheck.of(forPatients, rules));
        findings.addAll(GradeCheck.of(forPatients, rules, ofPack));
        return Finding.sorted(findings);
    }

    /** A gap stands for one word; a text that does not end a sentence is a label. */
    private static List<Passage> passages(Stream<TextEntry> texts) {
        return texts.map(entry -> {
                    String plain = entry.value().replace("*", "");
                    boolean isRunning = plain.matches("(?s).*\\s.*[.?!:]");
                    return new Passage(plain.replaceAll("\\{\\w+}", "x"), isRunning, entry::placeOf);
                })
                .toList();
    }

    /**
     * What a finished packet says, each passage by the rules of its own language.
     *
     * @param shown how the file is named in the findings
     */
    public List<Finding> pdf(byte[] pdf, String shown) throws IOException {
        List<PageLines> pages = new ArrayList<>();
        for (String text : PdfText.lines(pdf)) {
            pages.add(PageLines.of(shown, pages.size() + 1, text));
        }
        Map<String, List<Passage>> byLanguage = new LinkedHashMap<>();
        for (TaggedBlock block : TaggedText.of(pdf)) {
            byLanguage
                    .computeIfAbsent(block.language(), language -> new ArrayList<>())
                    .add(new Passage(block.text(), block.isRunning(), pages.get(block.page() - 1)::find));
        }
        List<Finding> findings = new ArrayList<>();
        byLanguage.forEach((language, passages) -> findings.addAll(judged(language, passages, pages.get(0))));
        if (!byLanguage.isEmpty()) {
            findings.addAll(
                    linesAlone(pages, rules(byLanguage.keySet().iterator().next())));
        }
        return Finding.sorted(findings);
    }

    private List<Finding> judged(String language, List<Passage> passages, PageLines first) {
        LanguageRules rules = rules(language);
        List<Finding> findings = new ArrayList<>(TextCheck.of(passages, rules, false));
        findings.addAll(TermCheck.of(passages, rules));
        findings.addAll(GradeCheck.of(passages, rules, new Place(first.file(), "", 1, 1, "")));
        return findings;
    }

    /** Heads and feet of pages are no part of the structure, and are read all the same. */
    private static List<Finding> linesAlone(List<PageLines> pages, LanguageRules rules) {
        List<Passage> lines = new ArrayList<>();
        for (PageLines page : pages) {
            int count = page.lines().length;
            for (int line = 0; line < count; line++) {
                if (line < RUNNING_LINES || line >= count - RUNNING_LINES) {
                    lines.add(new Passage(page.lines()[line], false, page::find));
                }
            }
        }
        return TextCheck.of(lines, rules, false);
    }

    private LanguageRules rules(String language) {
        boolean isKnown =
                Files.exists(templates.resolve("wording").resolve(language).resolve(Pack.FILE));
        return isKnown ? WordingFolder.of(templates, language).rules() : LanguageRules.of(List.of());
    }
}
