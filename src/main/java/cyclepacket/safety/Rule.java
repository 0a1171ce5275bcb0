package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.List;
import java.util.Objects;

/** One rule over the whole computed plan. Its code is its class name, hyphenated, without the last word. */
abstract class Rule {
    private final String code;
    private final Sums sums;

    /** Whether a stop of this rule makes the figures of ledger and supplies wrong or doubtful. */
    enum Sums {
        /** The figures cannot be trusted until it is mended. */
        TOUCHED,
        /** The figures hold; only the packet waits. */
        UNTOUCHED
    }

    Rule(String code, Sums sums) {
        this.code = Objects.requireNonNull(code, "code");
        this.sums = Objects.requireNonNull(sums, "sums");
    }

    final String code() {
        return code;
    }

    final boolean touchesSums() {
        return sums == Sums.TOUCHED;
    }

    /** Every finding of this rule; empty when all is well. */
    abstract List<Finding> findings(ComputedPlan plan);

    final Finding stop(Place place, String text, String mend) {
        return Finding.stop(code, place, text, mend);
    }

    /** The mend of a warning always ends with the line that accepts it, ready to be copied into the plan. */
    final Finding warn(Place place, String text, String mend) {
        String accept = ", or accept it under overrides with {code: " + code + ", place: " + place.pointer()
                + ", reason: ..., by: ...}";
        return Finding.warn(code, place, text, mend + accept);
    }

    final Finding note(Place place, String text, String mend) {
        return Finding.note(code, place, text, mend);
    }
}
