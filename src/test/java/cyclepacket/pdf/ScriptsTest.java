package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.lang.UScript;
import com.ibm.icu.text.UnicodeSet;
import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import java.io.IOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names in any script: printed where the fonts have the letters, and otherwise refused letter by letter. */
class ScriptsTest {
    private static final Set<Integer> OURS = Set.of(UScript.LATIN, UScript.GREEK, UScript.CYRILLIC);

    /** The letters a language needs: Unicode CLDR, main exemplar characters, as ICU ships them. */
    @Test
    void haveEveryLetterOfEveryLanguageInLatinGreekOrCyrillic() throws IOException {
        FontShelf fonts = FontShelf.open(Samples.TEMPLATES.resolve("fonts"));
        Set<String> missing = new TreeSet<>();
        List<String> languages = new ArrayList<>();
        for (ULocale locale : ULocale.getAvailableLocales()) {
            int[] scripts = UScript.getCode(locale);
            if (scripts == null
                    || !OURS.contains(scripts[0])
                    || !locale.getCountry().isEmpty()) {
                continue;
            }
            languages.add(locale.getBaseName());
            for (String letter : LocaleData.getExemplarSet(locale, UnicodeSet.IGNORE_SPACE)) {
                (letter + letter.toUpperCase(Locale.ROOT))
                        .codePoints()
                        .filter(c -> !fonts.canDraw(c))
                        .forEach(c -> missing.add(locale + String.format(" U+%04X", c)));
            }
        }
        assertEquals(Set.of(), missing);
        assertTrue(
                languages.containsAll(List.of("en", "es", "vi", "el", "ru", "uk", "pl", "tr", "yo")), "" + languages);
        assertTrue(languages.size() > 150);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ångström-Łucja Ñandú Žižka",
                "Ελένη Παπαδοπούλου",
                "Ярослава Щеголева, Ђорђе Їжакевич",
                "Nguyễn Thị Đặng Ưởng"
            })
    void printsNameAndTheSameNameInSeparateMarks(String name) throws IOException {
        Typesetter typesetter = Typesetter.open(Samples.TEMPLATES);
        String apart = Normalizer.normalize(name, Normalizer.Form.NFD);
        byte[] whole =
                typesetter.typeset(Samples.page("<p>" + name + "</p>")).value().orElseThrow();
        byte[] joined =
                typesetter.typeset(Samples.page("<p>" + apart + "</p>")).value().orElseThrow();
        assertTrue(Typesetter.textOf(whole).contains(name), Typesetter.textOf(whole));
        assertTrue(Arrays.equals(whole, joined), "the marks stand elsewhere");
    }

    @ParameterizedTest
    @CsvSource({
        "李小龙, U+674E U+5C0F U+9F99",
        "فاطمة, U+0627 U+0629 U+0637 U+0641 U+0645",
        "שרה, U+05D4 U+05E8 U+05E9",
        "한나, U+B098 U+D55C",
        "मीरा, U+092E U+0930 U+093E U+0940",
        "สมชาย, U+0E0A U+0E21 U+0E22 U+0E2A U+0E32",
        "Անի, U+0531 U+056B U+0576",
        "ნინო, U+10D8 U+10DC U+10DD",
        "さくら, U+3055 U+304F U+3089"
    })
    void namesEachLetterThatItCannotPrint(String name, String letters) throws IOException {
        Checked<byte[]> made = Typesetter.open(Samples.TEMPLATES).typeset(Samples.page("<p>" + name + "</p>"));
        assertTrue(made.value().isEmpty());
        Set<String> told = new TreeSet<>();
        for (Finding finding : made.findings()) {
            assertEquals("GLYPH-MISSING", finding.code());
            told.add(finding.text().replaceAll(".*(U[+][0-9A-F]+).*", "$1"));
        }
        assertEquals(new TreeSet<>(List.of(letters.split(" "))), told);
    }
}
