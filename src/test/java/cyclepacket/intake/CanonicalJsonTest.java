package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;

class CanonicalJsonTest {
    @Test
    void sortsKeysAndDropsSpellings() {
        assertEquals(
                "{\"a\":[187.5,0,100,\"010\",true,null],\"b\":{\"c\":\"x\"},\"d\":{},\"e\":[]}",
                canonical("# note\nb: {c: 'x'}\na: [187.50, -0.0, 1e2, 010, true, ~]\ne: []\nd: {}\n"));
    }

    @Test
    void leavesOutTopLevelKeysOnly() {
        assertEquals("{\"a\":{\"skip\":1}}", canonical("skip: 2\na: {skip: 1}\n"));
    }

    @Test
    void quotesAsJsonDoes() {
        assertEquals("\"a\\\"b\\\\c\\u000ad é\"", CanonicalJson.quoted("a\"b\\c\nd é"));
    }

    private static String canonical(String yaml) {
        Source source = Source.of("x", yaml.getBytes(StandardCharsets.UTF_8));
        return CanonicalJson.of(TreeReader.read(source, new ArrayList<>()).orElseThrow(), "skip"::equals);
    }
}
