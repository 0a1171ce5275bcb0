package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/**
 * The page When to call: which sign stands under which level. Levels: common practice, no published source, but for the
 * signs of ovarian hyperstimulation (RCOG patient information, 2016). The chart copy names the source of each sign.
 */
class RedFlagsTest {
    private static final Pattern SIGN = Pattern.compile(
            "calls\\.(?:emergency|hour|same-day|next)\\.(?:\\d+|collected)|calls\\.(?:weight|fever|pain)");

    private static String text(String xhtml, String part) throws Exception {
        return PageText.text(PageText.of(xhtml).part(part).get(0)).replace('\u00a0', ' ');
    }

    private static String level(int number) throws Exception {
        String calls = text(PacketRulesTest.xhtml(new DemoPlan(1)), "calls");
        List<String> heads = List.of(
                "Call 911 now",
                "Call us within the hour",
                "Call us the same day",
                "Can wait until",
                "At all times",
                "");
        int from = calls.indexOf(heads.get(number));
        return calls.substring(from, number == 4 ? calls.length() : calls.indexOf(heads.get(number + 1)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|trouble breathing,chest pain,faint,confused,face or throat swells,hives,leg,arm or neck is swollen,"
                        + "very bad headache,is weak,cannot see,throw up,soak a pad,shoulder hurts,hurting yourself",
                "1|belly swells,gain weight fast: at least 2 pounds in 24 hours,cannot drink,throw up,very thirsty,"
                        + "pee very little,pee is dark,cannot lie flat,leg is red or sore,does not ease",
                "2|fever of 100.4 °F (38 °C),low in your belly gets worse,smells bad,hot and hard|",
                "3|small red spot,bruise,bloating,mood",
                "4|before you take anything for pain,Drink when you are thirsty"
            })
    void namesEachSignUnderItsLevel(int number, String signs) throws Exception {
        String level = level(number);
        for (String sign : signs.replace("hot and hard", "hot").split(",")) {
            assertTrue(level.contains(sign), sign + " in: " + level);
        }
    }

    @Test
    void takesWeightAndFeverFromTheClinic() throws Exception {
        DemoPlan plan = new DemoPlan(1);
        plan.thresholds = Map.of("weight-gain", "1 kg in 24 h", "fever", "38.5 C");
        String calls = text(PacketRulesTest.xhtml(plan), "calls");
        assertTrue(calls.contains("You gain weight fast: at least 1 kg in 24 hours."), calls);
        assertTrue(calls.contains("101.3 °F (38.5 °C) or more"), calls);
        plan.thresholds = Map.of();
        String open = text(PacketRulesTest.xhtml(plan), "calls");
        assertTrue(open.contains("You gain weight fast.") && open.contains("You have a fever."), open);
    }

    /** No medicine for pain is named, so none can be the wrong one. */
    @Test
    void namesNoMedicineForPain() {
        for (String language : List.of("en", "es")) {
            Wording wording = Wording.load(DemoPlan.TEMPLATES, language);
            wording.keys()
                    .forEach(key -> assertFalse(
                            wording.text(key)
                                    .matches(
                                            "(?is).*(?:ibuprof|naprox|aspirin|diclofenac|acetaminophen|paracetamol|NSAID).*"),
                            language + " " + key));
        }
    }

    @Test
    void namesTheSourceOfEverySign() {
        Wording wording = Wording.load(DemoPlan.TEMPLATES, "en");
        TreeSet<String> without = new TreeSet<>();
        int signs = 0;
        for (String key : wording.keys()) {
            if (SIGN.matcher(key).matches() && !key.endsWith("how")) {
                signs++;
                String source = wording.find("chart.flags.of." + key).orElse("");
                if (!source.matches(".*(?:RCOG 2016|Obstet|Reprod|no published source|public|clinic's limit).*")) {
                    without.add(key);
                }
            }
        }
        assertEquals(new TreeSet<>(), without);
        assertTrue(signs > 18, "signs: " + signs);
    }

    @Test
    void printsEachSourceBesideItsLevelOnTheChartCopy() throws Exception {
        String chart =
                new ChartCopy(new PageWriter(DemoPlan.TEMPLATES)).xhtml(ChartSamples.source(ChartSamples.demo(1)));
        Wording wording = Wording.load(DemoPlan.TEMPLATES, "en");
        List<Element> rows = PageText.of(chart).all("tr");
        for (String key : wording.keys()) {
            if (key.startsWith("chart.flags.of.")) {
                String level = key.contains(".oil.")
                        ? "emergency"
                        : key.replaceFirst("chart\\.flags\\.of\\.calls\\.([a-z-]+).*", "$1")
                                .replace("weight", "hour")
                                .replace("fever", "same-day")
                                .replace("pain", "always");
                String head = wording.text("chart.flags." + level);
                assertTrue(
                        rows.stream()
                                .map(PageText::text)
                                .anyMatch(row -> row.startsWith(head) && row.contains(wording.text(key))),
                        key);
            }
        }
        assertFalse(chart.contains("No source is named"));
    }
}
