package cyclepacket.packet;

/** Is told how far a print run is, by one thread at a time. */
public interface BatchWatch {
    /** How many plans the run has to do with; those without a visit that day are none of them. */
    void expects(int plans);

    /** One of them is done. */
    void done(BatchLine line);
}
