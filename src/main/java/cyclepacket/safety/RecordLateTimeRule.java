package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.RecordLine;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * A late dose is given on its evening or on the day after; a clock time before its evening is a slip, and one later than
 * that belongs to another evening (common practice, no published source).
 */
final class RecordLateTimeRule extends Rule {
    RecordLateTimeRule() {
        super("RECORD-LATE-TIME", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<RecordLine> record = plan.plan().record();
        List<Finding> found = new ArrayList<>();
        for (int index = 0; index < record.size(); index++) {
            RecordLine line = record.get(index);
            if (line.at().filter(at -> isFarFrom(line.date(), at)).isPresent()) {
                Place place = plan.inPlan("/record/" + index);
                String text = "a dose of the evening of " + Phrases.day(line.date()) + " is written as given on "
                        + Phrases.day(line.at().get().toLocalDate());
                found.add(
                        line.isExplained()
                                ? note(place, text, "a reason and a name stand beside it")
                                : stop(
                                        place,
                                        text,
                                        "ask when it was given; if it stands, write reason and by on the line,"
                                                + " never a changed fact"));
            }
        }
        return found;
    }

    private static boolean isFarFrom(LocalDate evening, LocalDateTime at) {
        return at.toLocalDate().isBefore(evening) || at.toLocalDate().isAfter(evening.plusDays(1));
    }
}
