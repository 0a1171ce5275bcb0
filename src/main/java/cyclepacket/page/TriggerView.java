package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The page of the trigger injection.
 *
 * @param takes what is injected
 * @param called the time, once it was called and read back
 * @param stops what to stop and after which evening
 */
public record TriggerView(List<Take> takes, Optional<Called> called, List<Stop> stops) {
    public TriggerView {
        takes = List.copyOf(takes);
        stops = List.copyOf(stops);
    }

    /**
     * One medicine of the trigger.
     *
     * @param others names of ready syringes that it must not be taken for
     */
    public record Take(String medicine, String doorName, BoxedAmount amount, List<String> others) {
        public Take {
            others = List.copyOf(others);
        }
    }

    /**
     * The called instant.
     *
     * @param zone the name of the patient's clock
     * @param notes sentences on the night it falls in, and on the clinic's clock where that differs
     * @param alarms the times of two alarms
     * @param retrieval when the retrieval is, in the clinic's time
     */
    public record Called(
            DayName day,
            String time,
            String zone,
            List<String> notes,
            List<String> alarms,
            Optional<Retrieval> retrieval) {
        public Called {
            notes = List.copyOf(notes);
            alarms = List.copyOf(alarms);
        }
    }

    /** When the retrieval is; {@code clinicTime} is true when the patient's clock differs. */
    public record Retrieval(DayName day, String time, boolean clinicTime) {}

    /** One medicine to stop; {@code lastDay} is its last evening. */
    public record Stop(String medicine, Optional<DayName> lastDay) {}
}
