package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What hangs on the refrigerator door tells a guest nothing: in every language, size and kind of packet. */
class DiscreetDoorTest {
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);

    /** Words that name what it is for, as they stand on the other pages of each language. */
    private static final Map<String, List<String>> TELLING = Map.of(
            "en",
                    List.of(
                            "trigger", "egg", "fertil", "clinic", "embryo", "pregnan", "hormone", "ovar", "cycle",
                            "womb"),
            "es",
                    List.of(
                            "inyección final",
                            "óvulo",
                            "fertil",
                            "clínica",
                            "embri",
                            "embaraz",
                            "hormona",
                            "ovario",
                            "ciclo",
                            "útero"));

    static Stream<String> packets() {
        List<String> names = new ArrayList<>(List.of("SM-04417", "SM-04417-issue-2", "SM-04417-issue-3"));
        names.addAll(FormPackets.NAMES);
        return names.stream()
                .flatMap(name -> Stream.of("en", "es")
                        .flatMap(language -> Stream.of(name + " " + language, name + " " + language + " large")));
    }

    @ParameterizedTest
    @MethodSource("packets")
    void tellsAGuestNothing(String name) throws Exception {
        String[] words = name.split(" ");
        LaidOut laid = FormPackets.laidOut(words[0]);
        if (words.length == 3) {
            laid.with("patients/" + laid.path().getFileName(), "text-size: standard", "text-size: large");
        }
        PacketFacts facts = FormPackets.facts(laid);
        PageText page = PageText.of(WRITER.packet(facts, words[1], !words[1].equals("en")));
        List<Element> doors = page.all("div").stream()
                .filter(div -> Stream.of("door", "door-head", "door-foot")
                        .anyMatch(Arrays.asList(div.getAttribute("class").split(" "))::contains))
                .toList();
        assertTrue(doors.size() >= 3, "a page and its running lines");
        for (Element door : doors) {
            String seen = PageText.text(door).replace('\u00a0', ' ').toLowerCase(Locale.ROOT);
            for (String hidden : hidden(facts.files(), words[1])) {
                assertFalse(seen.contains(hidden.toLowerCase(Locale.ROOT)), name + " says " + hidden + ": " + seen);
            }
        }
    }

    /** Seen in a bent file: a name that begins with a hyphen has a first word without letters. */
    @ParameterizedTest
    @CsvSource({"Wren Hollis, WH", "-Wren Hollis, WH", "Anne-Marie O'Neil, AMO", "-, ''"})
    void showsTheInitialsOfAnyName(String name, String initials) throws IOException {
        LaidOut laid = FormPackets.laidOut("SM-04417")
                .with("patients/SM-04417.yaml", "name: Wren Hollis", "name: \"" + name + "\"");
        PacketViews views = new PacketViews(FormPackets.facts(laid), Wording.load(DemoPlan.TEMPLATES, "en"));
        assertEquals(initials, views.person().initials());
    }

    private static List<String> hidden(PlanFiles files, String language) {
        List<String> hidden = new ArrayList<>(TELLING.get(language));
        hidden.add(files.plan().id());
        hidden.add(files.clinic().name());
        hidden.add(files.plan().patient().name());
        // A number of one digit stands in every date.
        files.plan().patient().number().filter(number -> number.length() > 3).ifPresent(hidden::add);
        files.plan().patient().born().ifPresent(born -> hidden.add(Integer.toString(born.getYear())));
        files.medicines().values().forEach(medicine -> {
            hidden.add(medicine.name());
            hidden.add(medicine.purpose());
        });
        return hidden;
    }
}
