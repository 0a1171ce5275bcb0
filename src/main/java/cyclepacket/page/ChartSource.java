package cyclepacket.page;

import cyclepacket.course.Course;
import cyclepacket.finding.Finding;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import cyclepacket.wording.Pack;
import java.util.List;
import java.util.Objects;

/**
 * Everything that the clinic's own copy is made from.
 *
 * @param findings what the checks found and nobody accepted, located
 * @param accepted warnings that somebody looked at and accepted
 * @param packs the languages whose texts this issue prints, the source first
 * @param code the short code that only this issue has
 * @param draft true until a second person has countersigned
 * @param programVersion the version of this program
 */
public record ChartSource(
        PlanFiles files,
        Course course,
        CycleLedger ledger,
        SupplyPlan supply,
        List<Finding> findings,
        List<Accepted> accepted,
        List<Pack> packs,
        String code,
        boolean draft,
        String programVersion) {
    public ChartSource {
        Objects.requireNonNull(files, "files");
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(ledger, "ledger");
        Objects.requireNonNull(supply, "supply");
        findings = List.copyOf(findings);
        accepted = List.copyOf(accepted);
        packs = List.copyOf(packs);
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(programVersion, "programVersion");
    }

    /** One warning that stands, with the reason and the name of who accepted it. */
    public record Accepted(Finding finding, String reason, String by) {
        public Accepted {
            Objects.requireNonNull(finding, "finding");
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(by, "by");
        }
    }
}
