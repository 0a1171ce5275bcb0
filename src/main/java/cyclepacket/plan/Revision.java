package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing that an issue after the first changed, with the order behind it and the call that told it.
 *
 * @param issue the issue that brought it
 * @param of a medicine, the name of a time, or an anchor; empty for a cancelled cycle
 * @param from the first day it holds for
 * @param lastDay the last evening of a hold
 * @param now what holds from then on, as the plan writes it: an amount, an hour, a day, or the other medicine
 * @param order the reference of the order
 * @param by who called
 * @param to who took the call
 * @param readBack whether it was read back
 */
public record Revision(
        int issue,
        What what,
        Optional<String> of,
        Optional<LocalDate> from,
        Optional<LocalDate> lastDay,
        Optional<String> now,
        Optional<String> order,
        String by,
        String to,
        LocalDate on,
        boolean readBack) {
    public Revision {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(lastDay, "lastDay");
        Objects.requireNonNull(now, "now");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(on, "on");
        if (what != What.CANCEL && of.isEmpty()) {
            throw new Refusal("this line does not say what it is about", "write of: and the medicine, time or anchor");
        }
        if (what.needsDay && from.isEmpty()) {
            throw new Refusal("this line does not say from which day", "write from: and a date");
        }
        if (what.needsValue && now.isEmpty()) {
            throw new Refusal("this line does not say what holds now", "write now: and the new value");
        }
        if (what == What.HOLD && lastDay.map(last -> last.isBefore(from.get())).orElse(true)) {
            throw new Refusal("a hold ends on or after its first evening", "write until: and the last evening of it");
        }
    }

    /** The kinds of change. */
    public enum What {
        /** Another amount a day; the amount itself stands among the dose lines. */
        DOSE(true, true),
        /** No injection of a medicine on some evenings. */
        HOLD(true, false),
        /** No more of a medicine. */
        STOP(true, false),
        /** A medicine begins on another day than the protocol says. */
        START(true, false),
        /** Another clock time. */
        HOUR(true, true),
        /** A planned day moved. */
        ANCHOR(false, true),
        /** A day became an instruction; the call itself stands among the calls. */
        CALL(false, true),
        /** Another product in place of one. */
        SWAP(true, true),
        /** The cycle ends: nothing is injected from that day on. */
        CANCEL(true, false);

        private final boolean needsDay;
        private final boolean needsValue;

        What(boolean needsDay, boolean needsValue) {
            this.needsDay = needsDay;
            this.needsValue = needsValue;
        }
    }
}
