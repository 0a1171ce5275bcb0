package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The page of the trigger injection.
 *
 * @param called the time, once it was called and read back
 * @param stops what to stop and after which evening
 */
public record TriggerView(String medicine, String doorName, Optional<Called> called, List<Stop> stops) {
    public TriggerView {
        stops = List.copyOf(stops);
    }

    /**
     * The called instant.
     *
     * @param between the two days that a time near midnight lies between
     * @param other the same instant in the clinic's zone, where that differs
     */
    public record Called(
            DayName day,
            String time,
            String zone,
            BoxedAmount amount,
            String alarmBefore,
            Optional<Between> between,
            Optional<Other> other,
            Retrieval retrieval) {}

    /** The two days around a midnight. */
    public record Between(String before, String after) {}

    /** The same instant on another clock. */
    public record Other(DayName day, String time, String zone) {}

    /** When the retrieval is, in the clinic's time. */
    public record Retrieval(DayName day, String time) {}

    /** One medicine to stop; {@code lastDay} is its last evening. */
    public record Stop(String medicine, Optional<DayName> lastDay) {}
}
