package cyclepacket.intake;

/**
 * A point in a file.
 *
 * @param line from 1
 * @param column from 1, counted in characters as a person sees them (code points)
 */
record Spot(int line, int column) {
    static final Spot START = new Spot(1, 1);
}
