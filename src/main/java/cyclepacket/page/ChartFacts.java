package cyclepacket.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Facts that belong together, each under its label.
 *
 * @param paired true when they are short enough to stand two on a line
 */
public record ChartFacts(String title, boolean paired, List<Fact> facts) {
    public ChartFacts {
        facts = List.copyOf(facts);
    }

    /** One fact; a line break in {@code value} starts a new line. */
    public record Fact(String label, String value) {}

    /** Starts a list whose labels stand in the wording under {@code chart.<key>.<label>}. */
    static Builder of(Wording wording, String key) {
        return new Builder(wording, key);
    }

    /** Collects facts. */
    static final class Builder {
        private final Wording wording;
        private final String key;
        private final List<Fact> facts = new ArrayList<>();
        private boolean paired;

        private Builder(Wording wording, String key) {
            this.wording = wording;
            this.key = key;
        }

        Builder add(String label, String value) {
            facts.add(new Fact(wording.text("chart." + key + "." + label), value));
            return this;
        }

        Builder paired() {
            paired = true;
            return this;
        }

        ChartFacts build() {
            return new ChartFacts(wording.text("chart." + key), paired, facts);
        }
    }
}
