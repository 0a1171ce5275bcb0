package cyclepacket.ledger;

import java.util.Objects;

/**
 * A line of the record, or a lack of one, that cannot be so or leaves a question; the rules turn it into a finding.
 *
 * @param line which line of the plan's record, from 0; -1 for a line that is missing
 * @param isExplained whether the line carries a reason and a name
 * @param subject the words that the finding names, for example an amount or a date
 */
public record RecordDoubt(Kind kind, int line, boolean isExplained, String subject) {
    public RecordDoubt {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
    }

    /** What is wrong or open. */
    public enum Kind {
        /** A past evening has no line. */
        GAP,
        /** Two lines for one setting of one evening. */
        TWICE,
        /** Lines are not oldest first. */
        OUT_OF_ORDER,
        /** The evening is later than the day the issue was prepared. */
        IN_FUTURE,
        /** The plan orders nothing of this medicine on that evening. */
        OFF_COURSE,
        /** The line says nothing of what was given. */
        SAYS_NOTHING,
        /** A stop above zero without what was given in all. */
        WINDOW_WITHOUT_GIVEN,
        /** More was given than was dialled. */
        GIVEN_ABOVE_DIALLED,
        /** Less was given than the old container alone gave. */
        GIVEN_BELOW_OLD,
        /** The number is more than was dialled. */
        WINDOW_ABOVE_DIALLED,
        /** The number in the window is not one that this pen can show. */
        WINDOW_OFF_DIAL,
        /** The whole setting is left and nobody looked at the plunger: it may be a blocked needle. */
        PLUNGER_NOT_SEEN,
        /** A loss on the same line as a stop: nobody can tell which container lost it. */
        LOSS_WITH_STOP,
        /** The number in the window means a fill that this size cannot have. */
        FILL_IMPOSSIBLE,
        /** The number can belong to this container, or to the next one if this ended when nobody looked. */
        READING_UNCLEAR,
        /** More was drawn without a stop than the container can hold. */
        NO_END_WRITTEN,
        /** More containers ended than are at home. */
        NO_CONTAINER_LEFT,
        /** A container was still in use after its in-use days. */
        PAST_IN_USE,
        /** A number nobody read back. */
        NOT_CONFIRMED
    }
}
