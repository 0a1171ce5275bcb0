package cyclepacket.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The register of one plan as JSON: every issue, its code, who and when; no patient name. */
public final class RegisterJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private RegisterJson() {}

    /** Gets the JSON library ready, so that the first register finds it so. */
    public static void prepare() {
        MAPPER.createObjectNode();
    }

    /** One JSON object with a line break at its end, one line an entry. */
    public static String of(String plan, List<RegisterEntry> entries) {
        StringBuilder text = new StringBuilder("{\"plan\":").append(MAPPER.writeValueAsString(plan));
        text.append(",\"issues\":[");
        for (int index = 0; index < entries.size(); index++) {
            text.append(index == 0 ? "\n" : ",\n").append(MAPPER.writeValueAsString(node(entries.get(index))));
        }
        return text.append("]}\n").toString();
    }

    private static ObjectNode node(RegisterEntry entry) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("issue", entry.issue())
                .put("code", entry.code())
                .put("inputs", entry.inputs())
                .put("state", entry.isDraft() ? "draft" : "final")
                .put("did", entry.did())
                .put("at", entry.at())
                .put("by", entry.by());
        entry.countersignedBy().ifPresent(name -> node.put("countersigned-by", name));
        entry.replaces().ifPresent(issue -> node.put("replaces", issue));
        ArrayNode findings = node.putArray("findings");
        entry.findings().forEach(findings::add);
        ArrayNode overrides = node.putArray("overrides");
        entry.overrides().forEach(overrides::add);
        return node;
    }

    /** Reads a register back; empty when the text is none. */
    public static Optional<List<RegisterEntry>> read(String text) {
        try {
            List<RegisterEntry> entries = new ArrayList<>();
            MAPPER.readTree(text).path("issues").forEach(node -> entries.add(entry(node)));
            return Optional.of(entries);
        } catch (JacksonException notARegister) {
            return Optional.empty();
        }
    }

    private static RegisterEntry entry(JsonNode node) {
        return new RegisterEntry(
                node.path("issue").asInt(),
                node.path("code").asString(),
                node.path("inputs").asString(),
                node.path("state").asString().equals("draft"),
                node.path("did").asString(),
                node.path("at").asString(),
                node.path("by").asString(),
                node.has("countersigned-by")
                        ? Optional.of(node.path("countersigned-by").asString())
                        : Optional.empty(),
                node.has("replaces") ? Optional.of(node.path("replaces").asInt()) : Optional.empty(),
                texts(node.path("findings")),
                texts(node.path("overrides")));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.asString()));
        return texts;
    }
}
