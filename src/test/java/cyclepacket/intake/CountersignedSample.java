package cyclepacket.intake;

import cyclepacket.plan.Plan.Countersigned;
import java.time.LocalDate;

/** An invented countersignature with characters that need quoting. */
final class CountersignedSample {
    static final Countersigned ONE =
            new Countersigned("A. \"Second\": Nurse #2 \\ é", LocalDate.of(2027, 3, 9), "7QK4-9M");
    static final Countersigned TWO = new Countersigned("B. Third", LocalDate.of(2027, 3, 10), "000012");

    private CountersignedSample() {}
}
