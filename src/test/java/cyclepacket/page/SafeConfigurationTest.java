package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeConfigurationTest {
    @TempDir
    Path folder;

    private static final DayName VIEW = new DayName("<Friday>", "12 March", "Friday 12 March", "Fri", "12");

    @BeforeEach
    void copyOneWording() throws IOException {
        Files.createDirectories(folder.resolve("templates/wording/en"));
        Files.writeString(
                folder.resolve("templates/wording/en/pack.properties"),
                "name = English\nversion = 1\ntranslator = nobody\nends = 2028-01-01\n");
        Files.writeString(folder.resolve("templates/wording/en/a.properties"), "hello = Go on *{day}*, a < b.\n");
        Files.writeString(folder.resolve("secret.txt"), "not for a page");
    }

    private String write(String template) throws IOException {
        Files.writeString(folder.resolve("templates/t.ftlh"), template);
        return new PageWriter(folder.resolve("templates"), Duration.ofSeconds(2), 100_000).write("t.ftlh", "en", VIEW);
    }

    @Test
    void escapesValuesAndWording() throws IOException {
        assertEquals("&lt;Friday&gt;", write("${v.weekday}"));
        assertEquals("Go on <strong>&lt;Friday&gt;</strong>, a &lt; b.", write("${say('hello', {'day': v.weekday})}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${v.getClass()}",
                "${v.class}",
                "${v.hashCode()}",
                "${v.toString()}",
                "${'freemarker.template.utility.Execute'?new()}",
                "${v?api.getClass()}",
                "${.now}",
                "<#include '../secret.txt'>",
                "<#include '/../secret.txt'>",
                "${say('no.such.key')}",
                "${v.noSuchComponent}"
            })
    void refusesWhatAPageHasNoBusinessWith(String template) {
        assertThrows(TemplateFault.class, () -> write(template));
    }

    @Test
    void stopsATemplateThatNeverEnds() {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            TemplateFault fault =
                    assertThrows(TemplateFault.class, () -> write("<#list 1.. as n><#if n lt 0>never</#if></#list>"));
            assertTrue(fault.getMessage().contains("takes longer than 2000 ms"), fault.getMessage());
        });
    }

    @Test
    void keepsJoinedWordsInOneSpan() {
        assertEquals(
                "<p>Take <span class=\"nowrap\">187.5\u00a0units</span> now.</p>",
                UnbrokenText.keepTogether("<p>Take 187.5\u00a0units now.</p>"));
        assertEquals("<p title=\"a\u00a0b\">\u00a0</p>", UnbrokenText.keepTogether("<p title=\"a\u00a0b\">\u00a0</p>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"(1 mL", "0.5 mL", "38 mm),", "(8 °C).", "02:00,", "T-1", "ML2-12", "T8FG-HYTD-NQE"})
    void keepsMeasuresHoursAndDaysTogether(String whole) {
        assertEquals(
                "<p>so <span class=\"nowrap\">" + whole + "</span> and</p>",
                UnbrokenText.keepTogether("<p>so " + whole + " and</p>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 mLs", "lot FA-2231", "1 and 2", "8:305"})
    void leavesOtherWordsAlone(String text) {
        assertEquals("<p>" + text + "</p>", UnbrokenText.keepTogether("<p>" + text + "</p>"));
    }
}
