package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GlyphRuleTest {
    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        typesetter = Typesetter.open(Samples.TEMPLATES);
    }

    @Test
    void namesTheCharacterThatNoFontHas() {
        Checked<byte[]> made = typesetter.typeset(Samples.page("<p>Take the \uD83D\uDC89. Take the \uD83D\uDC89.</p>"));
        assertEquals(1, made.findings().size());
        Finding finding = made.findings().get(0);
        assertEquals("GLYPH-MISSING", finding.code());
        assertEquals("no shipped font can print U+1F489 SYRINGE", finding.text());
        assertEquals("Packet DEMO issue 1", finding.place().file());
        assertEquals(true, made.value().isEmpty());
    }

    @Test
    void findsCharacterThatOnlyTheStyleSheetAdds() {
        Sheet escaped = Samples.sheet(Samples.xhtml("p:before { content: \"\\1F489 \" }", "<p>Stop.</p>"));
        assertEquals("no shipped font can print U+1F489 SYRINGE", onlyText(escaped));
        Sheet written = Samples.sheet(Samples.xhtml("p:before { content: '\u6F22' }", "<p>Stop.</p>"));
        assertEquals("no shipped font can print U+6F22 CJK UNIFIED IDEOGRAPHS 6F22", onlyText(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u202E", "\u2066", "\uE000", "\uFFFC", "\u05D0", "\u0378"})
    void findsCharactersThatThePrinterWouldDropOrTurn(String character) {
        List<Finding> findings =
                typesetter.typeset(Samples.page("<p>1" + character + "2</p>")).findings();
        assertEquals(
                List.of("GLYPH-MISSING"), findings.stream().map(Finding::code).toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u00A0", "\u202F", "\u00AD", "\u200B", "\u2011", "\u2212", "\u00BD", "\u2264", "\u2192", "\u2610",
                "\u2713", "\u26A0"
            })
    void acceptsCharactersThatPacketsNeed(String character) {
        assertEquals(
                List.of(),
                typesetter.typeset(Samples.page("<p>1" + character + "2</p>")).findings());
    }

    private static String onlyText(Sheet sheet) {
        List<Finding> findings = typesetter.typeset(sheet).findings();
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0).text();
    }
}
