package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.LaidOut;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every protocol file against days that were worked out by hand on a calendar, one case folder a protocol: its anchors,
 * its calls and what each row gives. The clocks of the demo's clinic go forward on 14 March 2027.
 */
class ProtocolDaysTest {
    private static final Path CASES = Path.of("src/test/resources/conformance/protocols");

    static Stream<String> cases() throws IOException {
        try (Stream<Path> all = Files.list(CASES)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList().stream();
        }
    }

    @Test
    void hasACaseForEveryProtocol() throws IOException {
        TreeSet<String> files = new TreeSet<>();
        try (Stream<Path> all = Files.list(Path.of("plans/protocols"))) {
            all.forEach(file -> files.add(file.getFileName().toString().replace(".yaml", "")));
        }
        assertEquals(files, cases().map(ProtocolDaysTest::protocol).collect(Collectors.toCollection(TreeSet::new)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void givesTheDaysWorkedByHand(String name) throws IOException {
        Path folder = CASES.resolve(name);
        List<String> plan = Files.readAllLines(folder.resolve("plan.txt"));
        String more = plan.stream().skip(1).map(line -> line + "\n").collect(Collectors.joining());
        Course course = LaidOut.plan(protocol(name), plan.get(0).replace("anchors: ", ""), more)
                .course();
        assertEquals(Files.readString(folder.resolve("days.txt")), days(course));
    }

    /** A case may stand for another state of the same protocol, after a dot. */
    private static String protocol(String name) {
        return name.split("\\.")[0];
    }

    private static String days(Course course) {
        List<String> lines = new ArrayList<>();
        Map<String, List<LocalDate>> given = new LinkedHashMap<>();
        for (DatedDose dose : course.doses()) {
            LocalDateTime at = dose.at().toLocalDateTime();
            given.computeIfAbsent(
                            dose.medicine() + " " + at.toLocalTime() + " " + dose.amount(), key -> new ArrayList<>())
                    .add(at.toLocalDate());
        }
        given.forEach((what, dates) -> lines.add(what + ": " + stretches(dates)));
        lines.sort(String::compareTo);
        course.waiting().forEach(row -> lines.add("waits for the call of " + row.anchor() + ": " + row.medicine()));
        course.visits()
                .forEach(visit -> lines.add(
                        "visit " + visit.at().toLocalDateTime().toString().replace('T', ' ') + ": " + visit.what()));
        return String.join("\n", lines) + "\n";
    }

    /** Days in a row as one stretch, others one by one. */
    private static String stretches(List<LocalDate> dates) {
        StringBuilder text = new StringBuilder();
        for (int from = 0; from < dates.size(); ) {
            int to = from;
            while (to + 1 < dates.size()
                    && dates.get(to + 1).equals(dates.get(to).plusDays(1))) {
                to++;
            }
            text.append(text.isEmpty() ? "" : ", ").append(dates.get(from));
            text.append(to > from ? " to " + dates.get(to) : "");
            from = to + 1;
        }
        return text.toString();
    }
}
