package cyclepacket.plan;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Everything one run reads: a plan with its clinic, protocol and medicines, and the path each came from.
 *
 * @param medicines every medicine that the protocol or the plan names, in the order of the protocol's rows, by id
 * @param medicineFiles the file each medicine came from, by id
 */
public record PlanFiles(
        Plan plan,
        Clinic clinic,
        Protocol protocol,
        Map<String, Medicine> medicines,
        String planFile,
        String clinicFile,
        String protocolFile,
        Map<String, String> medicineFiles) {
    public PlanFiles {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(clinic, "clinic");
        Objects.requireNonNull(protocol, "protocol");
        medicines = InFileOrder.copyOf(medicines);
        Objects.requireNonNull(planFile, "planFile");
        Objects.requireNonNull(clinicFile, "clinicFile");
        Objects.requireNonNull(protocolFile, "protocolFile");
        medicineFiles = InFileOrder.copyOf(medicineFiles);
    }

    /** The same files with another plan. */
    public PlanFiles withPlan(Plan other) {
        return new PlanFiles(other, clinic, protocol, medicines, planFile, clinicFile, protocolFile, medicineFiles);
    }

    /** The parts printed on request: the plan's own choice, or the clinic's where the plan makes none. */
    public Set<ExtraPart> with() {
        return plan.with().orElse(clinic.with());
    }

    public Optional<Medicine> medicine(String id) {
        return Optional.ofNullable(medicines.get(id));
    }
}
