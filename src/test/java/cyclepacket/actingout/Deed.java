package cyclepacket.actingout;

/**
 * What a person did with one setting, and how much of it was written down.
 *
 * @param does what was done
 * @param amount thousandths: the other number dialled, the amount drawn of an unknown setting, or the number at which a
 *     needle was blocked; else zero
 * @param lostBefore medicine lost from the open container before this setting, written as a line of its own
 * @param lostWithin part of this setting that reached nobody, written on its line
 * @param lostAfter medicine lost from the open container after this setting, written on its line
 * @param writes which facts were written
 */
record Deed(Does does, long amount, long lostBefore, long lostWithin, long lostAfter, Writes writes) {

    static final Deed AS_ORDERED = new Deed(Does.ALL, 0, 0, 0, 0, new Writes(true, true, true, false));

    /** What a person may do with a setting. */
    enum Does {
        /** Gives all of it, from as many containers as it takes. */
        ALL,
        /** Dials another number and gives all of that. */
        OTHER_NUMBER,
        /** Gives nothing more once the pen has stopped. */
        GIVES_UP_AT_STOP,
        /** Draws some of it; nobody knows how much. */
        UNKNOWN,
        /** Meets a blocked needle, changes the needle and finishes from the same container. */
        BLOCKED_NEEDLE,
        /** Does not inject. */
        MISSED
    }

    /**
     * Which facts end up in the record.
     *
     * @param window the number in the window
     * @param readBack that it was read back
     * @param plunger where the plunger stood
     * @param dialled the number that was set
     */
    record Writes(boolean window, boolean readBack, boolean plunger, boolean dialled) {}
}
