package cyclepacket.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.course.Course;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The two samples of the contract, figure by figure; invented plan, worked by hand. */
class LedgerJsonTest {
    private static final JsonMapper JSON = new JsonMapper();

    private static JsonNode ledger(String plan) throws IOException {
        PlanFiles files = PlanReader.read(Path.of("plans/patients", plan + ".yaml"))
                .files()
                .value()
                .orElseThrow();
        Course course = Course.of(files);
        return JSON.readTree(LedgerJson.of(files.plan(), course, CycleLedger.of(files, course)));
    }

    private static void assertJson(String expected, JsonNode actual) {
        assertEquals(JSON.readTree(expected), JSON.readTree(actual.toString()));
    }

    @Test
    void writesTheFirstSample() throws IOException {
        JsonNode root = ledger("SM-04417");
        assertEquals("SM-04417", root.get("plan").stringValue());
        assertEquals(1, root.get("issue").intValue());
        assertJson("{\"S1\": \"2027-03-05\", \"T\": null, \"R\": null}", root.get("anchors"));
        JsonNode pen = root.get("medicines").get(0);
        assertEquals("fsh-pen", pen.get("medicine").stringValue());
        assertEquals("units", pen.get("unit").stringValue());
        assertJson(
                "{\"date\": \"2027-03-08\", \"day\": \"S4\", \"dose\": 187.5, \"state\": \"planned\","
                        + "\"settings\": [187.5], \"changes\": [{\"leaving\": 1, \"setting\": 1, \"chance\": \"certain\","
                        + "\"cause\": \"empty\", \"owed\": {\"least\": 30, \"most\": 150}}]}",
                pen.get("days").get(3));
        assertEquals(13, pen.get("days").size());
        assertJson(
                "[{\"leaving\": 1, \"next\": 2, \"earliest\": \"2027-03-08\", \"latest\": \"2027-03-08\"},"
                        + "{\"leaving\": 2, \"next\": null, \"earliest\": \"2027-03-13\", \"latest\": \"2027-03-14\"}]",
                pen.get("changes"));
        assertJson(
                "{\"surely-until\": \"2027-03-12\", \"possibly-until\": \"2027-03-13\","
                        + "\"first-short\": \"2027-03-13\", \"short-at-most\": 937.5}",
                pen.get("covered"));
        assertEquals("provisional", pen.get("days").get(4).get("state").stringValue());
    }

    @Test
    void writesTheSecondSample() throws IOException {
        JsonNode root = ledger("SM-04417-issue-2");
        assertJson(
                "{\"S1\": \"2027-03-05\", \"T\": \"2027-03-13T19:30-05:00\", \"R\": \"2027-03-15T08:30-04:00\"}",
                root.get("anchors"));
        JsonNode pen = root.get("medicines").get(0);
        assertJson(
                "[{\"leaving\": 1, \"next\": 2, \"earliest\": \"2027-03-08\", \"latest\": \"2027-03-08\"},"
                        + "{\"leaving\": 2, \"next\": null, \"earliest\": \"2027-03-12\", \"latest\": null}]",
                pen.get("changes"));
        assertJson(
                "[{\"leaving\": 2, \"setting\": 1, \"chance\": \"possible\", \"cause\": \"empty\","
                        + "\"owed\": {\"least\": 12.5, \"most\": 37.5}}]",
                pen.get("days").get(7).get("changes"));
        assertJson(
                "{\"surely-until\": \"2027-03-11\", \"possibly-until\": \"2027-03-12\","
                        + "\"first-short\": \"2027-03-12\", \"short-at-most\": 37.5}",
                pen.get("covered"));
        assertEquals("187.5", pen.get("days").get(3).get("given").toString());
        assertEquals("given", pen.get("days").get(3).get("state").stringValue());
    }

    @Test
    void keepsNumbersExactAndPlain() throws IOException {
        String text = ledger("SM-04417").toString();
        assertTrue(text.contains("\"short-at-most\":937.5"), text);
        assertTrue(text.contains("\"dose\":187.5"), text);
    }
}
