package cyclepacket.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.FindingText;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TranslationTest {
    private static final Pack ENGLISH = Pack.of(
            "en",
            TextFile.parse(
                    "en/pack.properties",
                    "name = English\nversion = 1\ntranslator = a\nends = 2028-01-01\nstaff = chart\nformats = month.\n"));
    private static final Pack TOY = Pack.of(
            "xx",
            TextFile.parse(
                    "xx/pack.properties", "name = Toy\nsource = en\nversion = 1\ntranslator = b\nends = 2028-01-01\n"));

    private static Translation translation(String english, String toy) {
        Map<String, TextEntry> source = new LinkedHashMap<>();
        TextFile.parse("en/a.properties", english).forEach(entry -> source.put(entry.key(), entry));
        return Translation.of(TOY, ENGLISH, source, TextFile.parse("xx/a.properties", toy));
    }

    private static String found(Translation translation) {
        return FindingText.print(translation.findings());
    }

    @Test
    void usesATextThatWasMadeFromTheSourceAsItStands() {
        Translation fresh = translation("a = Call us.\n", "a@en = Call us.\na = Toy call.\n");
        assertEquals("Toy call.", fresh.texts().get("a"));
        assertEquals(Set.of(), fresh.fallen());
        assertEquals("", found(fresh));
    }

    @Test
    void fallsBackWhenTheSourceHasChanged() {
        Translation stale = translation("a = Call us now.\n", "a@en = Call us.\na = Toy call.\n");
        assertEquals("Call us now.", stale.texts().get("a"));
        assertEquals(Set.of("a"), stale.fallen());
        assertEquals("""
                xx/a.properties:2:1: warn: a was made from "Call us.", which is now "Call us now."; the new text stands in its place   [WORDING-STALE]
                    2 | a = Toy call.
                      | ^
                   mend: read both, mend the translation, and write the new source text as a@en
                """, found(stale));
    }

    @Test
    void fallsBackWhenATextDoesNotSayWhatItWasMadeFrom() {
        assertTrue(found(translation("a = Call us.\n", "a = Toy call.\n")).contains("[WORDING-STALE]"));
    }

    @Test
    void fallsBackWhenATextIsMissing() {
        Translation missing = translation("a = Call us.\n", "");
        assertEquals("Call us.", missing.texts().get("a"));
        assertTrue(found(missing).contains("en/a.properties:1:1: warn: a has no text in Toy"), found(missing));
    }

    @Test
    void findsAKeyThatTheSourceDoesNotHave() {
        assertTrue(found(translation("", "b = x\n"))
                .contains("xx/a.properties:1:1: warn: no text of the source language"
                        + " has the key b   [WORDING-KEY-EXTRA]"));
    }

    @Test
    void findsGapsThatDiffer() {
        String found = found(translation("a = At {time}.\n", "a@en = At {time}.\na = Toy {hour}.\n"));
        assertTrue(found.contains("xx/a.properties:2:9: stop: the program has no value for {hour} here"), found);
        assertTrue(found.contains("the text leaves out {time}"), found);
    }

    /** Polish, for one, has a form for few; the source language needs none. */
    @Test
    void takesAPluralFormThatTheSourceDoesNotHave() {
        Translation few = translation("a = {n} boxes\n", "a@en = {n} boxes\na = {n} toys\na.few = {n} toyses\n");
        assertEquals("{n} toyses", few.texts().get("a.few"));
        assertEquals("", found(few));
    }

    @Test
    void namesTheLineThatIsNoText() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> TextFile.parse("en/a.properties", "a = x\nnonsense\n"));
        assertTrue(refused.getMessage().startsWith("en/a.properties:2: "), refused.getMessage());
    }

    /** The file format is that of Java's properties without its continued lines: its own reader agrees on every text. */
    @Test
    void readsEveryFileAsJavaDoes() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of("templates/wording"))) {
            files = all.filter(file -> file.toString().endsWith(".properties"))
                    .filter(file -> !file.endsWith(LanguageRules.FILE))
                    .toList();
        }
        assertTrue(files.size() > 40, files.toString());
        for (Path file : files) {
            String content = Files.readString(file);
            Properties java = new Properties();
            java.load(new StringReader(content));
            Map<String, String> own = new LinkedHashMap<>();
            TextFile.parse(file.toString(), content).forEach(entry -> own.put(entry.key(), entry.value()));
            assertEquals(java, own, file.toString());
        }
    }
}
