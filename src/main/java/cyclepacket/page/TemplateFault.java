package cyclepacket.page;

/** A fault of the program's own templates or wording, never of a plan. */
public final class TemplateFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TemplateFault(String message) {
        super(message);
    }

    TemplateFault(String message, Throwable cause) {
        super(message, cause);
    }
}
