package cyclepacket.ledger;

import cyclepacket.course.Course;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.PlanFiles;
import java.util.List;
import java.util.Optional;

/** The ledgers of every medicine of one plan, in the order of the protocol's rows. */
public record CycleLedger(List<MedicineLedger> medicines) {
    public CycleLedger {
        medicines = List.copyOf(medicines);
    }

    public static CycleLedger of(PlanFiles files, Course course) {
        return new CycleLedger(files.medicines().values().stream()
                .map(medicine -> new LedgerBuilder(files, course, medicine).build())
                .toList());
    }

    /** Every setting of one medicine in order, without its containers. */
    public static List<Draw> settings(PlanFiles files, Course course, Medicine medicine) {
        return new DrawBuilder(files, course, medicine).build().draws();
    }

    public Optional<MedicineLedger> of(Medicine medicine) {
        return of(medicine.id());
    }

    public Optional<MedicineLedger> of(String medicine) {
        return medicines.stream()
                .filter(ledger -> ledger.medicine().id().equals(medicine))
                .findFirst();
    }
}
