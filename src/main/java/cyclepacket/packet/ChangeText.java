package cyclepacket.packet;

import cyclepacket.intake.FlowLine;
import cyclepacket.intake.PlanEdit;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Revision.What;
import java.util.List;

/** Writes one change where a plan keeps it: a dose line, a call, an anchor; and always the line that says who told it. */
final class ChangeText {
    private ChangeText() {}

    static PlanEdit applied(PlanEdit text, Plan own, Revise revise, Change change) {
        return switch (change.what()) {
            case DOSE -> dose(text, own, revise, change);
            case ANCHOR -> text.put("/anchors/" + anchor(change), FlowLine.text(value(change)));
            case CALL -> called(text, own, revise, change);
            case HOUR -> hour(text, own, change);
            case HOLD, STOP, START, SWAP -> known(text, own, change);
            case CANCEL -> text;
        };
    }

    private static String value(Change change) {
        return change.now().orElseThrow();
    }

    private static String anchor(Change change) {
        return change.of().orElseThrow();
    }

    /** A dose line of the same day gives way: two of them on one day would be a question. */
    private static PlanEdit dose(PlanEdit text, Plan own, Revise revise, Change change) {
        String medicine = change.of().orElseThrow();
        String from = change.from().orElseThrow();
        String list = "/doses/" + medicine;
        if (!value(change).matches("\\d+(\\.\\d{1,3})?( [a-z]+)?")) {
            throw new Unclear("\"" + value(change) + "\" is not an amount; write for example 212.5.");
        }
        List<Plan.DoseLine> lines = own.doses().getOrDefault(medicine, List.of());
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).from().toString().equals(from)) {
                return text.put(list + "/" + line + "/amount", value(change))
                        .put(list + "/" + line + "/order", FlowLine.text(revise.order()));
            }
        }
        return text.append(
                list,
                new FlowLine()
                        .text("from", from)
                        .plain("amount", value(change))
                        .text("order", revise.order())
                        .toString());
    }

    /** The anchor itself moves with its call; a trigger follows from the retrieval. */
    private static PlanEdit called(PlanEdit text, Plan own, Revise revise, Change change) {
        String line = new FlowLine()
                .text("anchor", anchor(change))
                .text("at", value(change))
                .text("order", revise.order())
                .text("by", revise.caller())
                .text("to", revise.to())
                .plain("on", revise.on())
                .plain("read-back", revise.readBack())
                .toString();
        PlanEdit edit = text.append("/called", line);
        boolean isPlanned = own.anchors().keySet().stream().map(Anchor::code).anyMatch(anchor(change)::equals);
        return isPlanned ? edit.put("/anchors/" + anchor(change), FlowLine.text(value(change))) : edit;
    }

    private static PlanEdit hour(PlanEdit text, Plan own, Change change) {
        String name = change.of().orElseThrow();
        if (!own.times().containsKey(name)) {
            throw new Unclear("The plan has no time called " + name + "; it has "
                    + String.join(", ", own.times().keySet()) + ".");
        }
        return text;
    }

    private static PlanEdit known(PlanEdit text, Plan own, Change change) {
        String medicine = change.of().orElseThrow();
        boolean isDosed = own.doses().containsKey(medicine) || own.onHand().containsKey(medicine);
        if (!isDosed) {
            throw new Unclear("The plan has no " + medicine + " at home and no dose of it.");
        }
        return text;
    }

    static String line(Revise revise, Change change, int issue) {
        FlowLine line = new FlowLine()
                .plain("issue", issue)
                .plain("what", change.what().name().toLowerCase(java.util.Locale.ROOT));
        change.of().ifPresent(of -> line.text("of", of));
        change.from().filter(day -> day.matches("\\d{4}-.*")).ifPresent(day -> line.text("from", day));
        // A dose may begin on an anchor's day; then its own line is the place to look.
        if (change.what() == What.DOSE
                && change.from().filter(day -> !day.matches("\\d{4}-.*")).isPresent()) {
            line.plain("from", revise.on());
        }
        change.lastDay().ifPresent(day -> line.text("until", day));
        change.now().ifPresent(now -> line.plain("now", quoted(now)));
        return line.text("order", revise.order())
                .text("by", revise.caller())
                .text("to", revise.to())
                .plain("on", revise.on())
                .plain("read-back", revise.readBack())
                .toString();
    }

    /** A number as text: what holds now is compared and printed, never computed from here. */
    private static String quoted(String now) {
        return now.matches("[0-9.]+") ? "\"" + now + "\"" : FlowLine.text(now);
    }
}
