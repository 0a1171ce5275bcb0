package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The style sheets and the wording as files. */
class StyleTest {
    private static List<Path> files(String... endings) throws IOException {
        try (Stream<Path> all = Files.walk(DemoPlan.TEMPLATES)) {
            return all.filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> found(String pattern, String... endings) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(endings)) {
            for (Matcher match = Pattern.compile(pattern).matcher(Files.readString(file)); match.find(); ) {
                found.add(match.group(1));
            }
        }
        return found;
    }

    /** Clear print: 12 point at least, in captions and footers too (UKAAF G003, 2019). */
    @Test
    void setsNothingBelowTwelvePoint() throws IOException {
        List<String> sizes = found("font-size:\\s*([0-9.]+)pt", ".css");
        assertTrue(sizes.size() > 10);
        sizes.forEach(size -> assertTrue(Double.parseDouble(size) >= 12, size));
        assertEquals(List.of(), found("(font-size:\\s*[0-9.]+(?:em|%|px)|font:)", ".css"));
    }

    /** Text has a contrast of 4.5 to 1 or more on white (WCAG 2, success criterion 1.4.3). */
    @Test
    void usesColoursThatSurviveABadCopy() throws IOException {
        for (String colour : found("#([0-9a-fA-F]{3,6})\\b", ".css", "drawings.ftlh")) {
            if (!colour.equalsIgnoreCase("fff")) {
                assertTrue(contrastOnWhite(colour) >= 4.5, colour);
            }
        }
        assertEquals(4.542, contrastOnWhite("767676"), 1e-3);
        assertEquals(4.478, contrastOnWhite("777777"), 1e-3);
        assertEquals(21.0, contrastOnWhite("000"), 1e-9);
    }

    /** WCAG 2: (L1 + 0.05) / (L2 + 0.05) on linearised sRGB. */
    private static double contrastOnWhite(String hex) {
        String full = hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex;
        double[] weights = {0.2126, 0.7152, 0.0722};
        double light = 0;
        for (int part = 0; part < 3; part++) {
            double value = Integer.parseInt(full.substring(2 * part, 2 * part + 2), 16) / 255.0;
            light += weights[part] * (value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
        }
        return 1.05 / (light + 0.05);
    }

    /** No shouting: words in capitals are only the few that the clinic's rules ask for. */
    @Test
    void avoidsBlocksOfCapitals() throws IOException {
        TreeSet<String> capitals = new TreeSet<>(found(
                "\\b([A-Z]{3,})\\b",
                "/en/card.properties",
                "/en/door.properties",
                "/en/medicine.properties",
                "/en/start.properties"));
        capitals.removeAll(List.of("REPLACES", "KEEP", "EXAMPLE", "INJECTION", "TONIGHT"));
        assertEquals(new TreeSet<>(), capitals);
        assertEquals(List.of(), found("(text-transform|text-decoration:\\s*underline|font-style:\\s*italic)", ".css"));
    }

    @Test
    void usesEveryKeyOfTheWording() throws IOException {
        StringBuilder users = new StringBuilder();
        for (Path file : files(".ftlh")) {
            users.append(Files.readString(file));
        }
        try (Stream<Path> code = Files.walk(Path.of("src/main/java/cyclepacket"))) {
            for (Path file :
                    code.filter(path -> path.toString().endsWith(".java")).toList()) {
                users.append(Files.readString(file));
            }
        }
        List<String> unused = Wording.load(DemoPlan.TEMPLATES, "en").keys().stream()
                .filter(key -> !isUsed(key, users.toString()))
                .toList();
        assertEquals(List.of(), unused);
    }

    /** Used by its whole name, or by a beginning that a template completes. */
    private static boolean isUsed(String key, String users) {
        if (users.contains("\"" + key + "\"")) {
            return true;
        }
        for (int dot = key.lastIndexOf('.'); dot > 0; dot = key.lastIndexOf('.', dot - 1)) {
            if (users.contains("\"" + key.substring(0, dot + 1) + "\"")
                    || users.contains("\"" + key.substring(0, dot) + "\"")) {
                return true;
            }
        }
        return false;
    }
}
