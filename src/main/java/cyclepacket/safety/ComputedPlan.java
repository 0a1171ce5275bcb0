package cyclepacket.safety;

import cyclepacket.course.Course;
import cyclepacket.course.CourseDoubt;
import cyclepacket.course.DatedDose;
import cyclepacket.finding.Place;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.supply.SupplyPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything a rule may look at: the files, and what was computed from them. */
record ComputedPlan(PlanFiles files, Course course, CycleLedger ledger, SupplyPlan supply) {
    ComputedPlan {
        Objects.requireNonNull(files, "files");
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(ledger, "ledger");
        Objects.requireNonNull(supply, "supply");
    }

    Plan plan() {
        return files.plan();
    }

    Clinic clinic() {
        return files.clinic();
    }

    Protocol protocol() {
        return files.protocol();
    }

    LocalDate preparedOn() {
        return plan().prepared().on();
    }

    Place inPlan(String pointer) {
        return Place.at(files.planFile(), pointer);
    }

    Place inClinic(String pointer) {
        return Place.at(files.clinicFile(), pointer);
    }

    Place inProtocol(String pointer) {
        return Place.at(files.protocolFile(), pointer);
    }

    Place inMedicine(String medicine, String pointer) {
        return Place.at(files.medicineFiles().get(medicine), pointer);
    }

    /** Where the amount of this dose is written: a dose line of the plan, or the row of the protocol. */
    Place amountOf(DatedDose dose) {
        return dose.doseLine()
                .map(line -> inPlan("/doses/" + dose.medicine() + "/" + line + "/amount"))
                .orElseGet(() -> inProtocol("/rows/" + dose.row() + "/amount"));
    }

    List<CourseDoubt> doubts(CourseDoubt.Kind kind) {
        return course.doubts().stream().filter(doubt -> doubt.kind() == kind).toList();
    }

    Place placeOf(CourseDoubt doubt) {
        return doubt.inPlan() ? inPlan(doubt.pointer()) : inProtocol(doubt.pointer());
    }

    /** Where the trigger's time comes from: the retrieval, the planned trigger, or the call. */
    Place triggerPlace() {
        if (plan().anchors().containsKey(Anchor.R)) {
            return inPlan("/anchors/R");
        }
        int call = course.anchors().lastCall(Anchor.T);
        return inPlan(call < 0 ? "/anchors/T" : "/called/" + call + "/at");
    }

    /** The last day the course can reach, an unknown trigger counted at its latest. */
    Optional<LocalDate> lastPossibleDay() {
        Stream<LocalDate> rows =
                protocol().rows().stream().flatMap(row -> course.anchors().latestDate(row.lastDay()).stream());
        // A part of the trigger that comes hours later may fall on the day after its row.
        return Stream.concat(course.lastDay().stream(), rows).max(LocalDate::compareTo);
    }
}
