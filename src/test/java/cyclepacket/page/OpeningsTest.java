package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.packet.PrintedDemo;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Every section of the patient's pages begins with what to do: the first sentence below each heading begins with a verb
 * that tells the reader to do something (PEMAT-P items 20 and 21, AHRQ 14-0002-EF, 2013; "every section" is ours: common
 * practice, no published source).
 */
class OpeningsTest {
    private static final Pattern ENGLISH = Pattern.compile("(?:(?:Do not|Never|First) \\p{L}+|(?:Ask|Call|Carry|Change|"
            + "Check|Close|Dial|Draw|Drop|Fill|Find|Fix|Follow|Go|Have|Hold|Inject|Keep|Know|Let|Lie|Look|Mix|Order|Pinch|Press|"
            + "Pull|Put|Read|Set|Show|Sit|Stop|Take|Tell|Tick|Use|Wait|Warm|Wash|Write))\\b.*");

    private static final Pattern SPANISH = Pattern.compile("(?:(?:No|Nunca|Primero) (?:l[aeo]s? )?\\p{L}+|(?:Acuéstese|"
            + "Busque|Búsquelo|Caliente|Cambie|Ciérrela|Compruebe|Deje|Díganos|Dibuje|Eche|Escriba|Espere|Estire|Guarde|"
            + "Inyecte|Jale|Lave|Lávese|Lea|Lean|Llame|Llámenos|Llene|Lleve|Marque|Mezcle|Mire|Muestre|Pare|Pegue|Pellizque|Pida|"
            + "Ponga|Póngala|Pregúntenos|Quite|Sepa|Siga|Siéntese|Tenga|Tome|Use))\\b.*");

    private static final Pattern LABEL = Pattern.compile("(?:Door page|Hoja de la puerta) \\d+ (?:of|de) \\d+");

    /** A heading and the first words of running text below it. */
    private record Opening(String heading, String text) {}

    static Stream<Arguments> packets() throws IOException {
        return PrintedDemo.plans().stream()
                .flatMap(plan -> PrintedDemo.LANGUAGES.stream().map(language -> Arguments.of(plan, language)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("packets")
    void beginsEverySectionWithWhatToDo(String plan, String language) throws Exception {
        List<Opening> openings = openings(
                PageText.of(PrintedDemo.of(plan, language, "standard", "letter").xhtml()));
        assertTrue(openings.size() > 40, "sections: " + openings.size());
        assertEquals(
                List.of(),
                openings.stream()
                        .filter(opening -> !begins(opening.text(), language))
                        .toList());
    }

    private static boolean begins(String text, String language) {
        return (language.equals("en") ? ENGLISH : SPANISH).matcher(text).matches();
    }

    @Test
    void tellsAnInstructionFromAStatement() {
        for (String statement : List.of(
                "A cartridge is the small tube of medicine in your pen.",
                "The medicine in it is follitropin.",
                "They look alike and hold different medicines.",
                "Done? Tick the box.",
                "Keeping it cold is best.")) {
            assertFalse(begins(statement, "en"), statement);
        }
        assertFalse(begins("La ventana no muestra 0.", "es"));
        assertFalse(begins("No.", "es"));
    }

    /**
     * Headings of the first two levels, and of the third where no table follows at once; what stands in a table, above and
     * below the pages, or in large letters of its own is no running text.
     */
    private static List<Opening> openings(PageText page) {
        List<Opening> openings = new ArrayList<>();
        List<String> waiting = new ArrayList<>();
        for (Element element : page.all("*")) {
            String text = PageText.text(element).replace('\u00a0', ' ').strip();
            if (text.isEmpty() || PageText.isInside(element, "head", "foot", "door-head", "door-foot", "own-lines")) {
                continue;
            }
            switch (element.getLocalName()) {
                case "h1", "h2" -> waiting.add(text);
                case "h3" -> {
                    if (!isFollowedByTable(element)) {
                        waiting.add(text);
                    }
                }
                case "p", "li" -> {
                    if (PageText.parent(element, "table").isEmpty()) {
                        waiting.stream()
                                .filter(heading -> !LABEL.matcher(heading).matches())
                                .forEach(heading -> openings.add(new Opening(heading, text)));
                        waiting.clear();
                    }
                }
                default -> {}
            }
        }
        assertEquals(List.of(), waiting, "a heading with nothing below it");
        return openings;
    }

    private static boolean isFollowedByTable(Element element) {
        Node next = element.getNextSibling();
        while (next != null && !(next instanceof Element)) {
            next = next.getNextSibling();
        }
        return next instanceof Element found && found.getLocalName().equals("table");
    }
}
