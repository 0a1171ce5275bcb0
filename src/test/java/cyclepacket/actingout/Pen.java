package cyclepacket.actingout;

import cyclepacket.plan.Device.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A pen in the hand and the two house rules that go with it; amounts in thousandths.
 *
 * @param openedDays days a container may be used once opened
 * @param dayAfter true when the day after first use is day 1, else first use is day 1
 * @param fullDialFirst true when a large dose is split by the full dial, else as equally as the step allows
 */
record Pen(
        Window window,
        long dialLeast,
        long step,
        long dialMost,
        int openedDays,
        boolean dayAfter,
        boolean fullDialFirst) {

    /** The dial settings that one dose is given as, in order. */
    List<Long> settingsOf(long dose) {
        List<Long> settings = new ArrayList<>();
        if (fullDialFirst) {
            for (long rest = dose; rest > 0; rest -= Math.min(rest, dialMost)) {
                settings.add(Math.min(rest, dialMost));
            }
            return settings;
        }
        long count = (dose + dialMost - 1) / dialMost;
        long clicks = dose / step;
        for (long part = count; part > 0; part--) {
            long share = (clicks + part - 1) / part;
            settings.add(share * step);
            clicks -= share;
        }
        return settings;
    }

    /** The last day on which a container opened on {@code opened} may be used. */
    LocalDate lastDayOf(LocalDate opened) {
        return opened.plusDays(dayAfter ? openedDays : openedDays - 1);
    }

    /** What this pen lets out of a container that still holds {@code content}. */
    long letsOut(long content) {
        return window == Window.OWED ? content : content - content % step;
    }
}
