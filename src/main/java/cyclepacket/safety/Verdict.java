package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.finding.Severity;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What follows from all findings of one run.
 *
 * @param stops nothing is printed while there is one; no override takes it away
 * @param open warnings that nobody accepted yet: the packet stays a draft
 * @param accepted warnings with the line that accepts them, for the chart copy only
 * @param notes good to know
 */
public record Verdict(List<Finding> stops, List<Finding> open, List<Accepted> accepted, List<Finding> notes) {
    private static final String UNUSED = "OVERRIDE-UNUSED";

    public Verdict {
        stops = List.copyOf(stops);
        open = List.copyOf(open);
        accepted = List.copyOf(accepted);
        notes = List.copyOf(notes);
    }

    /** A warning that somebody looked at, with the reason and the name. */
    public record Accepted(Finding finding, String reason, String by) {
        public Accepted {
            Objects.requireNonNull(finding, "finding");
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(by, "by");
        }
    }

    /**
     * Weighs the findings against the overrides of the plan. An override that accepts nothing becomes a note, so the
     * notes may be more than those among {@code findings}.
     */
    public static Verdict of(PlanFiles files, List<Finding> findings) {
        List<Plan.Override> overrides = files.plan().overrides();
        List<Finding> open = new ArrayList<>();
        List<Accepted> accepted = new ArrayList<>();
        for (Finding warn : graded(findings, Severity.WARN)) {
            overrides.stream()
                    .filter(override -> accepts(override, warn))
                    .findFirst()
                    .ifPresentOrElse(
                            line -> accepted.add(new Accepted(warn, line.reason(), line.by())), () -> open.add(warn));
        }
        List<Finding> notes = new ArrayList<>(graded(findings, Severity.NOTE));
        for (int index = 0; index < overrides.size(); index++) {
            Plan.Override override = overrides.get(index);
            if (accepted.stream().noneMatch(warn -> accepts(override, warn.finding()))) {
                notes.add(unused(Place.at(files.planFile(), "/overrides/" + index), override, findings));
            }
        }
        return new Verdict(graded(findings, Severity.STOP), open, accepted, notes);
    }

    public boolean hasStop() {
        return !stops.isEmpty();
    }

    /** Everything but the accepted warnings, in the order of the files. */
    public List<Finding> standing() {
        return Finding.sorted(
                Stream.of(stops, open, notes).flatMap(List::stream).toList());
    }

    private static List<Finding> graded(List<Finding> findings, Severity severity) {
        return findings.stream()
                .filter(finding -> finding.severity() == severity)
                .distinct()
                .toList();
    }

    private static boolean names(Plan.Override override, Finding finding) {
        return override.code().equals(finding.code())
                && override.place().equals(finding.place().pointer());
    }

    /** A line without a reason or a name accepts nothing. */
    private static boolean accepts(Plan.Override override, Finding finding) {
        return names(override, finding)
                && !override.reason().isBlank()
                && !override.by().isBlank();
    }

    private static Finding unused(Place place, Plan.Override override, List<Finding> findings) {
        boolean namesStop = findings.stream().anyMatch(finding -> finding.isStop() && names(override, finding));
        return namesStop
                ? Finding.note(
                        UNUSED, place, "a stop cannot be accepted: " + override.code(), "mend what the stop says")
                : Finding.note(
                        UNUSED,
                        place,
                        "this line accepts no warning of this issue: " + override.code() + " at " + override.place(),
                        "take the line out, or copy code and place from the warning");
    }
}
