package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.intake.Intake;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import java.util.List;
import java.util.Optional;

/** Whether the countersign of a plan still holds for every value in its files. */
record CountersignCheck(boolean isValid, List<Finding> findings) {
    static final String CODE = "COUNTERSIGN-VOID";

    CountersignCheck {
        findings = List.copyOf(findings);
    }

    static CountersignCheck of(Intake intake) {
        Optional<PlanFiles> files = intake.files().value();
        Optional<Plan.Countersigned> signed = files.flatMap(each -> each.plan().countersigned());
        if (signed.isEmpty()) {
            return new CountersignCheck(false, List.of());
        }
        if (signed.get().code().equals(Codes.countersign(intake.sources()))) {
            return new CountersignCheck(true, List.of());
        }
        boolean slip = !CheckedCode.hasRightCheck(signed.get().code());
        return new CountersignCheck(
                false,
                List.of(Finding.note(
                        CODE,
                        Place.at(files.orElseThrow().planFile(), "/countersigned/code"),
                        slip
                                ? "this is not a countersign code: its check symbol does not fit"
                                : "a value was changed after " + signed.get().by()
                                        + " countersigned, so the packet is a draft",
                        "let the second person key the values in again with ./cyclepacket countersign")));
    }
}
