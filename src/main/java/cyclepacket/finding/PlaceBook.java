package cyclepacket.finding;

/** Knows the line and column of every node that was read. */
@FunctionalInterface
public interface PlaceBook {
    /**
     * The same place with line, column and source line. A pointer to a node that the file lacks gives its nearest
     * parent that exists; an unknown file gives the place back unchanged.
     */
    Place locate(Place place);
}
