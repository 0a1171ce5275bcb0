package cyclepacket.actingout;

/**
 * A container as its box describes it: the true content is any whole number of thousandths from least to most.
 *
 * @param least thousandths, above zero
 * @param most thousandths, at least {@code least}
 */
record Box(long least, long most) {
    Box {
        if (least < 1 || most < least) {
            throw new IllegalArgumentException("a box from " + least + " to " + most);
        }
    }

    static Box ofUnits(int least, int most) {
        return new Box(least * 1000L, most * 1000L);
    }
}
