package cyclepacket.safety;

import cyclepacket.finding.Place;
import cyclepacket.plan.Plan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** One dose line on the date it starts to hold. */
record DatedLine(String medicine, int index, Plan.DoseLine line, LocalDate from) {

    /** Every dose line whose anchor has a date, by medicine and then as the file has them. */
    static List<DatedLine> all(ComputedPlan plan) {
        List<DatedLine> all = new ArrayList<>();
        for (String medicine : new TreeSet<>(plan.plan().doses().keySet())) {
            List<Plan.DoseLine> lines = plan.plan().doses().get(medicine);
            for (int index = 0; index < lines.size(); index++) {
                Plan.DoseLine line = lines.get(index);
                Optional<LocalDate> from = plan.course().anchors().date(line.from());
                int place = index;
                from.ifPresent(date -> all.add(new DatedLine(medicine, place, line, date)));
            }
        }
        return all;
    }

    Place place(ComputedPlan plan) {
        return plan.inPlan("/doses/" + medicine + "/" + index + "/from");
    }
}
