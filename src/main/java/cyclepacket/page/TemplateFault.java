package cyclepacket.page;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.finding.Refused;

/** A fault of the templates or the wording, which are the clinic's to change; never of a plan. */
public final class TemplateFault extends Refused {
    private static final long serialVersionUID = 1L;

    /** The folder, where no file of it is known. */
    private static final Place FOLDER = Place.at("templates", "");

    private final boolean hung;

    TemplateFault(String message) {
        this(message, null);
    }

    TemplateFault(String message, Throwable cause) {
        this(FOLDER, message, cause, false);
    }

    /**
     * @param place the template, with line and column where they are known
     * @param hung whether it would take as long for any other plan
     */
    TemplateFault(Place place, String message, Throwable cause, boolean hung) {
        super(
                Finding.stop(
                        "TEMPLATE-BROKEN",
                        place,
                        message,
                        "mend this file of the templates, or take back the last change to it"),
                cause);
        this.hung = hung;
    }

    /** Whether the template ran out of its time, so that nobody should wait for it again. */
    boolean hasHung() {
        return hung;
    }
}
