package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The page of the trigger injection.
 *
 * @param takes what is injected, first part
 * @param called the time, once it was called and read back
 * @param later the parts that are given some hours later; empty until the time was called
 * @param injections how many there are in all parts
 * @param stops what to stop and after which evening
 */
public record TriggerView(
        List<Take> takes, Optional<Called> called, List<Later> later, String injections, List<Stop> stops) {
    public TriggerView {
        takes = List.copyOf(takes);
        later = List.copyOf(later);
        stops = List.copyOf(stops);
    }

    /**
     * One medicine of the trigger.
     *
     * @param others names of ready syringes that it must not be taken for
     * @param mark what it is drawn to, for what is drawn
     */
    public record Take(
            String medicine, String doorName, BoxedAmount amount, List<String> others, Optional<String> mark) {
        public Take {
            others = List.copyOf(others);
        }
    }

    /** A later part of the same trigger, at its own time. */
    public record Later(
            DayName day,
            String time,
            EveningCardsView.AtTime clock,
            List<String> notes,
            String alarm,
            List<Take> takes) {
        public Later {
            notes = List.copyOf(notes);
            takes = List.copyOf(takes);
        }
    }

    /**
     * The called instant.
     *
     * @param clock the same time as the hands of a clock
     * @param zone the name of the patient's clock
     * @param notes sentences on the night it falls in, and on the clinic's clock where that differs
     * @param alarms the times of two alarms
     * @param retrieval when the retrieval is, in the clinic's time
     */
    public record Called(
            DayName day,
            String time,
            EveningCardsView.AtTime clock,
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
