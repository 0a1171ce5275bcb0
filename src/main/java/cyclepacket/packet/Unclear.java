package cyclepacket.packet;

/** A command that cannot be carried out as it was typed; the message says what to type. */
public final class Unclear extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Unclear(String message) {
        super(message);
    }
}
