package cyclepacket.exchange;

import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Writes a tree as text: numbers in plain digits, one object, a line break at the end, the same bytes everywhere. */
final class JsonText {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private JsonText() {}

    static String of(JsonNode node) {
        return MAPPER.writeValueAsString(node) + "\n";
    }
}
