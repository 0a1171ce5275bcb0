package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Templates are the clinic's own: whatever one of them does, it is stopped and its place is told. */
class TemplateLimitsTest {
    private static final Duration SHORT = Duration.ofMillis(100);
    private static final DayName VIEW = new DayName("Friday", "12 March", "Friday 12 March", "Fri", "12");

    @TempDir
    Path folder;

    @BeforeEach
    void lay() throws IOException {
        put("wording/en/pack.properties", "name = English\nversion = 1\ntranslator = nobody\nends = 2028-01-01\n");
        put("wording/en/a.properties", "hello = Go on *{day}*.\n");
        put("broken.ftlh", "<p>\n<#if>\n");
        put("self.ftlh", "<#include 'self.ftlh'>");
        put("endless.ftlh", "<p>\n<#list 1.. as n></#list>");
        Files.writeString(folder.resolveSibling("secret.txt"), "not for a page");
    }

    private void put(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private String place(String template, Duration longest) throws IOException {
        put("t.ftlh", template.replace("|", "\n"));
        PageWriter writer = new PageWriter(folder, longest, 100_000);
        Finding finding = assertThrows(TemplateFault.class, () -> writer.write("t.ftlh", "en", VIEW))
                .finding();
        Place place = finding.place();
        assertTrue(finding.isStop());
        assertEquals("TEMPLATE-BROKEN", finding.code());
        return place.file() + ":" + place.line() + ":" + place.column() + " " + finding.text();
    }

    private void assertStops(String template, String place, String words) throws IOException {
        String told = place(template, Duration.ofSeconds(20));
        assertTrue(told.startsWith("templates/" + place + " this template "), told);
        assertTrue(told.contains(words), told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '\u00a6',
            value = {
                "a|b ${v.noSuch} ¦ t.ftlh:2:5 ¦ v.noSuch",
                "a|b ${v.getClass()} ¦ t.ftlh:2:5 ¦ getClass",
                "|${'freemarker.template.utility.Execute'?new()('id')} ¦ t.ftlh:2:1 ¦ uses ?new",
                "||${v?api.hashCode()} ¦ t.ftlh:3:1 ¦ uses ?api",
                "|${.now} ¦ t.ftlh:2:1 ¦ uses .now",
                "|${'6*7'?eval} ¦ t.ftlh:2:1 ¦ uses ?eval",
                "|<@'<#list 1.. as n></#list>'?interpret /> ¦ t.ftlh:2:1 ¦ uses ?interpret",
                "a|<#include '../secret.txt'> ¦ t.ftlh:2:1 ¦ secret.txt",
                "a|<#include '/../../../../etc/hostname'> ¦ t.ftlh:2:1 ¦ hostname",
                "a|<#include '/etc/hostname'> ¦ t.ftlh:2:1 ¦ hostname",
                "a|<#include 'file:///etc/hostname'> ¦ t.ftlh:2:1 ¦ hostname",
                "a|<#import 'http://127.0.0.1:9/x.ftlh' as x> ¦ t.ftlh:2:1 ¦ 127.0.0.1",
                "a|<#include 'broken.ftlh'> ¦ broken.ftlh:2:2 ¦ malformed",
                "a|<#list 1..3 as n>|</#lst> ¦ t.ftlh:3:2 ¦ lst",
                "a|${say('no.such.key')} ¦ t.ftlh:2:1 ¦ no.such.key",
                "a|${say('hello')} ¦ t.ftlh:2:1 ¦ day",
                "<#list 1..6 as n>|${6 / (3 - n)}</#list> ¦ t.ftlh:2:1 ¦ cannot be filled",
                "a|<#list 1.. as n>|four score</#list> ¦ t.ftlh:3:1 ¦ writes more than 100000 characters",
                "<#macro m>|<@m/></#macro>|<@m/> ¦ t.ftlh:1:1 ¦ calls itself without end",
                "<#function f n>|<#return f(n + 1)></#function>|${f(1)} ¦ t.ftlh:1:1 ¦ calls itself without end"
            })
    void stopsWithPlace(String template, String place, String words) throws IOException {
        assertStops(template, place, words);
    }

    @Test
    void stopsTemplateThatIncludesItself() throws IOException {
        assertStops("a|<#include 'self.ftlh'>", "self.ftlh:1:1", "calls itself without end");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '\u00a6',
            value = {
                "a|<#list 1.. as n></#list> ¦ t.ftlh:2:1",
                "a|<#include 'endless.ftlh'> ¦ endless.ftlh:2:1",
                "|${(1..30000000)?filter(n -> n lt 0)?size} ¦ t.ftlh:2:1",
            })
    void stopsWhatTakesTooLong(String template, String place) throws IOException {
        String told = place(template, SHORT);
        assertEquals("templates/" + place + " this template takes longer than 100 ms", told);
    }

    @Test
    void waitsOnlyOnceForATemplateThatHangs() throws IOException {
        put("t.ftlh", "<#list 1.. as n></#list>");
        PageWriter writer = new PageWriter(folder, SHORT, 100_000);
        TemplateFault first = assertThrows(TemplateFault.class, () -> writer.write("t.ftlh", "en", VIEW));
        assertSame(first, assertThrows(TemplateFault.class, () -> writer.write("t.ftlh", "en", VIEW)));
    }

    @Test
    void triesAgainWhatFailedForOnePlanAlone() throws IOException {
        put("t.ftlh", "<#if v.weekday == 'Friday'>${v.noSuch}</#if>");
        PageWriter writer = new PageWriter(folder, SHORT, 100_000);
        assertThrows(TemplateFault.class, () -> writer.write("t.ftlh", "en", VIEW));
        assertEquals("", writer.write("t.ftlh", "en", new DayName("Monday", "1", "2", "3", "4")));
    }

    @Test
    void takesAPageUpToTheLimit() throws IOException {
        put("t.ftlh", "<#list 1..1000 as n>0123456789</#list>");
        assertEquals(
                10_000,
                new PageWriter(folder, SHORT, 10_000)
                        .write("t.ftlh", "en", VIEW)
                        .length());
        PageWriter small = new PageWriter(folder, SHORT, 9_999);
        assertThrows(TemplateFault.class, () -> small.write("t.ftlh", "en", VIEW));
    }
}
