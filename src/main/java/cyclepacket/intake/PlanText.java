package cyclepacket.intake;

import cyclepacket.plan.Plan.Countersigned;
import cyclepacket.quantity.Refusal;

/** The line of the second person in the text of a plan. */
public final class PlanText {
    private static final String KEY = "countersigned";

    private PlanText() {}

    /**
     * The plan with exactly one {@code countersigned} line: in the place of the old one, or at the end.
     *
     * @throws Refusal if the bytes are not a plan in block style, one key a line
     */
    public static byte[] withCountersigned(byte[] planBytes, Countersigned countersigned) {
        PlanEdit plan = PlanEdit.of(planBytes);
        if (plan.isFlow()) {
            throw new Refusal(
                    "this text is not a plan with one key a line", "check the plan before you countersign it");
        }
        String line = "{by: " + CanonicalJson.quoted(countersigned.by()) + ", on: " + countersigned.on() + ", code: "
                + CanonicalJson.quoted(countersigned.code()) + "}";
        return plan.put("/" + KEY, line).bytes();
    }
}
