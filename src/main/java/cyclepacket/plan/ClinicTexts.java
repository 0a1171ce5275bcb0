package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What a clinic adds to the packet's words: a sentence of its own on the pages that have room for one, and what its files'
 * texts are called in other languages.
 *
 * @param ownLines one sentence a page, by the page's name
 * @param translations by language tag, then by the text as it stands in the clinic's files
 */
public record ClinicTexts(Map<String, String> ownLines, Map<String, Map<String, String>> translations) {
    /** The pages with room; every other page is locked, the new-cartridge card, the red flags and the trigger first. */
    public static final Set<String> PAGES_WITH_ROOM = Set.of("start", "days", "trouble", "keeping", "log");

    public static final ClinicTexts NONE = new ClinicTexts(Map.of(), Map.of());

    public ClinicTexts {
        ownLines = InFileOrder.copyOf(ownLines);
        Map<String, Map<String, String>> copies = new LinkedHashMap<>();
        translations.forEach((language, texts) -> copies.put(language, InFileOrder.copyOf(texts)));
        translations = InFileOrder.copyOf(copies);
        for (String page : ownLines.keySet()) {
            if (!PAGES_WITH_ROOM.contains(page)) {
                throw new Refusal(
                        "a clinic file cannot write on the page " + page,
                        "keep own-lines to start, days, trouble, keeping and log; every other page is locked");
            }
        }
    }

    /** What the texts of the clinic's files are called in one language. */
    public Map<String, String> in(String language) {
        return translations.getOrDefault(language, Map.of());
    }
}
