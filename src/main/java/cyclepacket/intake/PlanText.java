package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan.Countersigned;
import cyclepacket.quantity.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Changes one line in the text of a plan and keeps every other byte: comments, line ends, odd spacing. */
public final class PlanText {
    private static final String KEY = "countersigned";

    private PlanText() {}

    /**
     * The plan with exactly one {@code countersigned} line: in the place of the old one, or at the end.
     *
     * @throws Refusal if the bytes are not a plan in block style, one key a line
     */
    public static byte[] withCountersigned(byte[] planBytes, Countersigned countersigned) {
        Source source = Source.of("plan", planBytes);
        Tree.Mapping plan = blockMapping(source, planBytes);
        String line = KEY + ": {by: " + CanonicalJson.quoted(countersigned.by()) + ", on: " + countersigned.on()
                + ", code: " + CanonicalJson.quoted(countersigned.code()) + "}";
        String text = plan.entries().containsKey(KEY)
                ? replaced(source, plan.entries().get(KEY), line)
                : appended(source, plan.spot().column() - 1, line);
        byte[] spliced = withMark(planBytes, text).getBytes(StandardCharsets.UTF_8);
        requireOnlyThatChange(plan, spliced);
        return spliced;
    }

    private static Tree.Mapping blockMapping(Source source, byte[] planBytes) {
        List<Finding> found = new ArrayList<>(SourceCheck.run(source, planBytes));
        if (found.isEmpty()
                && TreeReader.read(source, found).orElse(null) instanceof Tree.Mapping mapping
                && found.isEmpty()
                && !mapping.isFlow()) {
            return mapping;
        }
        throw new Refusal("this text is not a plan with one key a line", "check the plan before you countersign it");
    }

    private static String replaced(Source source, Tree.Entry old, String line) {
        int from = offset(source, old.key());
        int to = offset(source, old.value().end());
        return source.text().substring(0, from) + line + source.text().substring(to);
    }

    private static String appended(Source source, int indent, String line) {
        String text = source.text();
        String lineBreak = text.contains("\r\n") ? "\r\n" : "\n";
        int at = endOfDocument(source);
        boolean startsLine = at == 0 || text.charAt(at - 1) == '\n' || text.charAt(at - 1) == '\r';
        String inserted = (startsLine ? "" : lineBreak) + " ".repeat(indent) + line + lineBreak;
        return text.substring(0, at) + inserted + text.substring(at);
    }

    /** Before a line of three dots, which ends a document, or the end of the text. */
    private static int endOfDocument(Source source) {
        for (int n = source.lines().size(); n > 0; n--) {
            if (source.lines().get(n - 1).equals("...")) {
                return offset(source, new Spot(n, 1));
            }
        }
        return source.text().length();
    }

    private static int offset(Source source, Spot spot) {
        return source.text().offsetByCodePoints(source.startOf(spot.line()), spot.column() - 1);
    }

    private static String withMark(byte[] before, String text) {
        boolean hadMark = new String(before, StandardCharsets.UTF_8).startsWith("\uFEFF");
        return hadMark ? "\uFEFF" + text : text;
    }

    /** Reads the result back: whatever the spacing of the file was, a wrong splice must never reach the disk. */
    private static void requireOnlyThatChange(Tree.Mapping before, byte[] spliced) {
        Tree.Mapping after = blockMapping(Source.of("plan", spliced), spliced);
        String was = CanonicalJson.of(before, KEY::equals);
        if (!was.equals(CanonicalJson.of(after, KEY::equals))
                || !after.entries().containsKey(KEY)) {
            throw new IllegalStateException("the countersigned line did not fit into the plan's text");
        }
    }
}
