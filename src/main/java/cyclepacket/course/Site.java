package cyclepacket.course;

/**
 * A spot for an injection. Eight lie on the belly, each outside the ring of 2.5 cm (1 inch) around the navel that
 * the pages name, and 4 cm from the next; four lie in
 * the upper outer quarters of the buttocks. Distances are common practice, no published source.
 */
public enum Site {
    BELLY_LEFT_INNER_HIGH(1, true, false),
    BELLY_LEFT_OUTER_HIGH(2, true, false),
    BELLY_LEFT_OUTER_LOW(3, true, false),
    BELLY_LEFT_INNER_LOW(4, true, false),
    BELLY_RIGHT_INNER_HIGH(5, false, false),
    BELLY_RIGHT_OUTER_HIGH(6, false, false),
    BELLY_RIGHT_OUTER_LOW(7, false, false),
    BELLY_RIGHT_INNER_LOW(8, false, false),
    MUSCLE_LEFT_HIGH(1, true, true),
    MUSCLE_LEFT_LOW(2, true, true),
    MUSCLE_RIGHT_HIGH(3, false, true),
    MUSCLE_RIGHT_LOW(4, false, true);

    private final int number;
    private final boolean isLeft;
    private final boolean isMuscle;

    Site(int number, boolean isLeft, boolean isMuscle) {
        this.number = number;
        this.isLeft = isLeft;
        this.isMuscle = isMuscle;
    }

    /** The number on the map: 1 to 8 on the belly, 1 to 4 in the muscle. */
    public int number() {
        return number;
    }

    /** Whether it is on the patient's own left. */
    public boolean isLeft() {
        return isLeft;
    }

    public boolean isMuscle() {
        return isMuscle;
    }
}
