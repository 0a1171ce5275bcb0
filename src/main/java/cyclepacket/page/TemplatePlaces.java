package cyclepacket.page;

import cyclepacket.finding.Place;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import java.util.Optional;

/** Where in the templates something went wrong, in FreeMarker's own counting from 1; 0 where it does not say. */
record TemplatePlaces(String file, int line, int column) {
    private static final int LONGEST = 240;

    /** The innermost place that the failure or one of its causes names; a broken file rather than who included it. */
    static TemplatePlaces of(String name, Throwable failure) {
        TemplatePlaces found = new TemplatePlaces(name, 0, 0);
        for (Throwable each = failure; each != null; each = each.getCause()) {
            if (each instanceof ParseException broken && broken.getTemplateName() != null) {
                return new TemplatePlaces(broken.getTemplateName(), broken.getLineNumber(), broken.getColumnNumber());
            }
            if (each instanceof TemplateException stopped && found.line == 0) {
                found = of(name, Optional.of(stopped));
            }
        }
        return found;
    }

    static TemplatePlaces of(String name, Optional<TemplateException> stopped) {
        return stopped.filter(place -> place.getTemplateSourceName() != null && place.getLineNumber() != null)
                .map(place -> new TemplatePlaces(
                        place.getTemplateSourceName(), place.getLineNumber(), place.getColumnNumber()))
                .orElse(new TemplatePlaces(name, 0, 0));
    }

    TemplateFault fault(String text, Throwable cause) {
        return new TemplateFault(place(), "this template " + text, cause, false);
    }

    TemplateFault hung(String text) {
        return new TemplateFault(place(), "this template " + text, null, true);
    }

    private Place place() {
        return new Place("templates/" + file, "", line, line == 0 ? 0 : column, "");
    }

    /** The first sentence of FreeMarker's, without its tips; of a file that cannot be parsed, the parser's. */
    static String words(Throwable failure) {
        String all = String.valueOf(failure.getMessage());
        for (Throwable each = failure; each != null; each = each.getCause()) {
            if (each instanceof ParseException broken) {
                all = broken.getEditorMessage();
                break;
            }
            if (each instanceof TemplateException own && each == failure) {
                all = own.getMessageWithoutStackTop();
            }
        }
        String first = all.split("\n----|\nTip:|Help \\(latest", 2)[0]
                .replaceAll("\\s+", " ")
                .replaceAll("[.:]+$", "")
                .strip();
        return first.length() > LONGEST ? first.substring(0, LONGEST) + "..." : first;
    }
}
