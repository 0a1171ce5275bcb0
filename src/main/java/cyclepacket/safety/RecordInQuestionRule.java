package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.RecordLine;
import java.util.ArrayList;
import java.util.List;

/** A line that somebody marked as in question needs a reason and a name before anything is printed. */
final class RecordInQuestionRule extends Rule {
    RecordInQuestionRule() {
        super("RECORD-IN-QUESTION", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<RecordLine> record = plan.plan().record();
        List<Finding> found = new ArrayList<>();
        for (int index = 0; index < record.size(); index++) {
            RecordLine line = record.get(index);
            if (line.inQuestion()) {
                Place place = plan.inPlan("/record/" + index);
                String text = "the line of " + line.medicine() + " on " + Phrases.day(line.date()) + " is in question";
                found.add(
                        line.isExplained()
                                ? note(place, text, "a reason and a name stand beside it")
                                : stop(place, text, "write reason and by on the line, never a changed fact"));
            }
        }
        return found;
    }
}
