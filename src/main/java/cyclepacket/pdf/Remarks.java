package cyclepacket.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;

/** What the renderer would only log: a rule it did not understand or a picture it could not draw is a stop. */
final class Remarks implements Consumer<Diagnostic> {
    private final Place place;
    private final List<Finding> findings = new ArrayList<>();

    Remarks(Place place) {
        this.place = place;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    @Override
    public void accept(Diagnostic remark) {
        if (remark.getLevel().intValue() >= Level.WARNING.intValue()) {
            String where = remark.getLogMessageId().getWhere();
            boolean isStyle = XRLog.CSS_PARSE.equals(where) || XRLog.CASCADE.equals(where);
            findings.add(Finding.stop(
                    isStyle ? "STYLE-REJECTED" : "LAYOUT-TROUBLE",
                    place,
                    "the renderer says: " + remark.getFormattedMessage().strip().replaceAll("\\s+", " "),
                    isStyle ? "mend the style sheet" : "mend the template that made the page"));
        }
    }

    /** Keeps the renderer's log off the error stream; the same remarks arrive here. */
    static void silenceLog() {
        XRLog.setLoggerImpl(new Silence());
    }

    /** A log that writes nothing. */
    private static final class Silence implements XRLogger {
        @Override
        public void log(String where, Level level, String message) {}

        @Override
        public void log(String where, Level level, String message, Throwable cause) {}

        @Override
        public void setLevel(String logger, Level level) {}

        @Override
        public boolean isLogLevelEnabled(Diagnostic remark) {
            return false;
        }
    }
}
