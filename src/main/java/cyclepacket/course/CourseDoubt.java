package cyclepacket.course;

import java.util.Objects;

/**
 * Something that keeps a part of the course from being dated; the rules turn it into a finding.
 *
 * @param inPlan whether {@code pointer} is a node of the plan; otherwise of the protocol
 * @param pointer the JSON pointer of the node
 * @param subject the words that the finding names, for example a time and its zone
 */
public record CourseDoubt(Kind kind, boolean inPlan, String pointer, String subject) {
    public CourseDoubt {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(pointer, "pointer");
        Objects.requireNonNull(subject, "subject");
    }

    /** What is in the way. */
    public enum Kind {
        /** The plan gives the anchor no date. */
        ANCHOR_UNDATED,
        /** The anchor has a date but needs an hour. */
        HOUR_ABSENT,
        /** A clock change skips this local time. */
        TIME_REMOVED,
        /** A clock change repeats this local time and no offset says which is meant. */
        TIME_REPEATED,
        /** The offset written beside a time is not one that the zone has then. */
        OFFSET_WRONG,
        /** No dose line covers this day. */
        DOSE_ABSENT,
        /** A row at an exact time hangs on a day that has no instant. */
        EXACT_WITHOUT_TRIGGER,
        /** Half of an amount has too many decimals. */
        HALF_INEXACT,
        /** A row goes on further from the first day of the course than any course does. */
        ROW_TOO_LONG
    }
}
