package cyclepacket.hostile;

import java.util.List;
import java.util.stream.IntStream;

/** What a hostile hand writes into a file. */
final class Scraps {
    static final List<String> HUGE = List.of(
            "99999999999999999999",
            "1e999",
            "1E+400000000",
            "9223372036854775807",
            "9223372036854775808",
            "2147483648",
            "10000.001",
            "1000000",
            "10000000000000",
            "9".repeat(400),
            "1" + "0".repeat(5_000) + ".5",
            ".inf",
            "NaN");
    static final List<String> TINY = List.of(
            "0",
            "-0",
            "0.0001",
            "1e-999",
            "1E-400000000",
            "-1",
            "-187.5",
            "0.000",
            "0." + "0".repeat(3_000) + "1",
            "0x7f",
            "0o17",
            "1_000",
            "010",
            "1.",
            ".5",
            "+5",
            "1,5",
            "\u0661\u0662.\u0665",
            "\u00bd");
    static final List<String> UNITS = List.of(
            "units", "mcg", "mg", "mL", "ml", "C", "F", "mm", "inch", "in", "s", "h", "lb", "kg", "IU", "g", "\u00b5g",
            "%");
    static final List<String> WORDS = List.of(
            "\u0391\u03bd\u03b1\u03c3\u03c4\u03b1\u03c3\u03af\u03b1 \u0393\u03b5\u03c9\u03c1\u03b3\u03af\u03bf\u03c5",
            "\u042f\u0440\u043e\u0441\u043b\u0430\u0432\u0430 \u0429\u0435\u0433\u043e\u043b\u0435\u0432\u0430",
            "Nguy\u1ec5n Th\u1ecb \u0110\u1eb7ng",
            "\u0627\u0644\u0639\u0631\u0628\u064a\u0629 187.5",
            "\u05e9\u05dc\u05d5\u05dd 12.5",
            "\u674e\u5c0f\u9f99",
            "\u0e2a\u0e21\u0e0a\u0e32\u0e22",
            "\u0939\u093f\u0928\u094d\u0926\u0940",
            "A\u202e5.781\u202c",
            "\u2067five\u2069",
            "Z\u0335\u0321\u0322\u0355a\u0334\u0356l\u0337\u0323g\u0336o",
            "\ud83d\udc89\ud83e\uddea",
            "e\u0301 \u00e9",
            "\ufb01\ufb02\u2126\u212b",
            "\uff11\uff12\uff0e\uff15",
            "\u00a0\u2003\u3000",
            "\u200d\u200c\u200f\u200e",
            "\u2028\u2029",
            "\ufeff\u00ad\u2060\u200b",
            "\ufffe\uffff\ufdd0",
            "\ue000\udbff\udfff",
            "O'Brien-\u00d8rsted, \u0141ucja \u00dfen");
    static final List<String> PATHS = List.of(
            "../../../etc/passwd",
            "..",
            ".",
            "/etc/passwd",
            "/",
            "//host/share",
            "..\\..\\windows\\win.ini",
            "C:\\x",
            "file:///etc/passwd",
            "http://127.0.0.1:9/x",
            "jar:file:/x.jar!/y",
            "antagonist-fixed.yaml",
            "../protocols/antagonist-fixed",
            "antagonist-fixed/../antagonist-fixed",
            "fsh-pen%00",
            "fsh-pen\u0000",
            "~root",
            "$HOME",
            "CON",
            "nul",
            "-rf",
            "--out=/tmp/x",
            "a/b/c",
            "a\nb",
            "SM-04417/../../x",
            "a".repeat(300),
            "\u0430ntagonist-fixed",
            "..;/x",
            "%2e%2e/x",
            "");
    static final List<String> DATES = List.of(
            "0000-01-01",
            "0001-01-01",
            "9999-12-31",
            "2027-02-30",
            "2028-02-29",
            "2100-02-29",
            "1582-10-10",
            "+292278994-08-17",
            "-999999999-01-01",
            "1970-01-01",
            "2027-3-5",
            "05/03/2027",
            "2027-W10",
            "2027-03-14T02:30",
            "2027-11-07T01:30",
            "2027-03-13T24:00",
            "2027-03-13T19:30:61Z",
            "2016-12-31T23:59:60Z",
            "25:00",
            "24:00",
            "S1000000000",
            "S0",
            "S-1",
            "T-99999",
            "T+99999999999999999999",
            "CD1",
            "R",
            "Q9");
    static final List<String> RETYPES = List.of(
            "null",
            "~",
            "true",
            "no",
            "[]",
            "{}",
            "[[]]",
            "{a: {b: c}}",
            "''",
            "\"\"",
            "12.5",
            "text",
            "2027-03-05",
            "[1, 2]",
            "- 1");
    static final List<String> TAGS = List.of(
            "!!java.net.URL [\"http://127.0.0.1:9/\"]",
            "!!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[!!java.net.URL"
                    + " [\"http://127.0.0.1:9/\"]]]]",
            "!!python/object/apply:os.system [\"id\"]",
            "!!binary aGVsbG8=",
            "!!int \"12\"",
            "!own {a: b}",
            "!<tag:yaml.org,2002:str> x",
            "!!set {a, b}",
            "!!float .nan",
            "!include ../../etc/passwd",
            "!");
    /** The element and the expression are made up, so that no page has them by itself. */
    static final List<String> TEMPLATES = List.of(
            "${6*7}zq",
            "#{6*7}zq",
            "[=6*7]zq",
            "${'freemarker.template.utility.Execute'?new()('id')}",
            "<#include '/../secret.txt'>",
            "[#include '../../etc/passwd'/]",
            "<#list 1.. as x>zq</#list>",
            "[#list 1..9 as x]zq[/#list]",
            "${.now}",
            "${.data_model}",
            "<@zq/>",
            "</#if>${v.class}",
            "<#-- zq",
            "{amount} {day} {0}",
            "*{amount}* and *strong*",
            "${r\"${6*7}\"}",
            "<#assign zq = 1>",
            "<#noparse>zq");

    static final List<String> MARKUP = List.of(
            "<zq>loud</zq>",
            "<b>zq",
            "</p></div><zq/>",
            "<img src='http://127.0.0.1:9/zq.png'/>",
            "<script>zq()</script>",
            "<style>* { display: none }</style>",
            "&lt;zq&gt;",
            "&amp;zq;",
            "&#60;zq&#62;",
            "&zq;",
            "<!DOCTYPE html [<!ENTITY zq SYSTEM 'file:///etc/passwd'>]>",
            "<![CDATA[<zq>]]>",
            "]]>",
            "<!-- zq",
            "--> zq",
            "<?xml version='1.0'?>",
            "' onclick='zq' x='",
            "\" alt=\"zq\" x=\"",
            "zq: url(http://127.0.0.1:9/)",
            "javascript:zq()",
            "\\2028 \\0041 content: 'zq'",
            "BEGIN:VALARM;zq,\\n\\;",
            "a < b > c & d");
    static final List<String> CONTROLS = IntStream.range(0, 0xA0)
            .filter(c -> c < 0x20 || c > 0x7e)
            .mapToObj(Character::toString)
            .toList();

    private Scraps() {}

    /** An alias bomb: each level names the one before ten times. */
    static String bomb(int levels) {
        StringBuilder bomb = new StringBuilder("{a0: &a0 [x, x]");
        for (int level = 1; level <= levels; level++) {
            bomb.append(", a").append(level).append(": &a").append(level).append(" [");
            bomb.append(("*a" + (level - 1) + ", ").repeat(10)).append(']');
        }
        return bomb.append('}').toString();
    }

    /** Lists, braces or quotes so deep that a careless reader runs out of stack. */
    static String deep(String open, String close, int levels) {
        return open.repeat(levels) + "x" + close.repeat(levels);
    }
}
