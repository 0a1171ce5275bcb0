package cyclepacket.exchange;

import cyclepacket.finding.Finding;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What {@code packet.json} and {@code --json} say of one run: no clock time, no patient name. */
public final class PacketJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private PacketJson() {}

    /** One written file and the SHA-256 of its bytes in hexadecimal. */
    public record WrittenFile(String name, String sha256) {}

    /** The packet's own description. */
    public static String of(
            String plan, int issue, String code, boolean isDraft, List<Finding> findings, List<WrittenFile> files) {
        ObjectNode root = JSON.objectNode();
        root.put("plan", plan);
        root.put("issue", issue);
        root.put("code", code);
        root.put("state", isDraft ? "draft" : "final");
        root.set("findings", findings(findings));
        ArrayNode list = root.putArray("files");
        for (WrittenFile file : files) {
            list.addObject().put("name", file.name()).put("sha256", file.sha256());
        }
        return JsonText.of(root);
    }

    /** The findings of a run that wrote nothing. */
    public static String of(List<Finding> findings) {
        ObjectNode root = JSON.objectNode();
        root.set("findings", findings(findings));
        return JsonText.of(root);
    }

    private static ArrayNode findings(List<Finding> findings) {
        ArrayNode list = JSON.arrayNode();
        for (Finding finding : findings) {
            list.addObject()
                    .put("grade", finding.severity().word())
                    .put("code", finding.code())
                    .put("file", finding.place().file())
                    .put("place", finding.place().pointer())
                    .put("line", finding.place().line())
                    .put("column", finding.place().column())
                    .put("text", finding.text())
                    .put("mend", finding.mend());
        }
        return list;
    }
}
