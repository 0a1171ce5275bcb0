package cyclepacket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every library and plug-in has one written version, and DEVELOPERS.md names the licence of each library. */
class DependenciesTest {
    private static final Pattern USED = Pattern.compile("(?s)<(dependency|plugin|path)>\\s*(.*?)</\\1>");

    private static String pom() throws IOException {
        return Files.readString(Path.of("pom.xml")).replaceAll("(?s)<!--.*?-->|<exclusions>.*?</exclusions>", "");
    }

    private static String value(String element, String name) {
        Matcher value = Pattern.compile("<" + name + ">([^<]+)</" + name + ">").matcher(element);
        return value.find() ? value.group(1) : "";
    }

    @Test
    void pinsEveryVersion() throws IOException {
        String pom = pom();
        List<String> loose = new ArrayList<>();
        int pinned = 0;
        for (Matcher used = USED.matcher(pom); used.find(); ) {
            String version = value(used.group(2), "version");
            if (version.startsWith("${")) {
                version = value(pom, version.substring(2, version.length() - 1));
            }
            if (version.matches("\\d[\\w.-]*") && !version.endsWith("SNAPSHOT")) {
                pinned++;
            } else {
                loose.add(value(used.group(2), "artifactId") + " " + version);
            }
        }
        assertEquals(List.of(), loose);
        assertTrue(pinned > 20, "pinned: " + pinned);
        assertTrue(value(pom, "project.build.outputTimestamp").matches("20\\d\\d-.*Z"), "no clock in the jar");
    }

    @Test
    void namesTheLicenceAndTheVersionOfEveryLibrary() throws IOException {
        String pom = pom();
        List<String> rows = Files.readAllLines(Path.of("DEVELOPERS.md"));
        TreeMap<String, String> missing = new TreeMap<>();
        for (Matcher used =
                        Pattern.compile("(?s)<dependency>(.*?)</dependency>").matcher(pom);
                used.find(); ) {
            String name = value(used.group(1), "groupId") + ":" + value(used.group(1), "artifactId");
            String property = value(used.group(1), "version");
            String version = value(pom, property.substring(2, property.length() - 1));
            if (rows.stream().noneMatch(row -> row.startsWith("| `" + name + "` | " + version + " | "))) {
                missing.put(name, version);
            }
        }
        assertEquals(new TreeMap<>(), missing);
    }
}
