package cyclepacket.intake;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One value of a file together with where it stands. */
sealed interface Tree {
    /** Where a finding about this value points. */
    Spot spot();

    /** Just behind its last character. */
    Spot end();

    /** Keys and values in the order of the file. */
    record Mapping(Spot spot, Spot end, boolean isFlow, Map<String, Entry> entries) implements Tree {
        public Mapping {
            // Map.copyOf would lose the order of the file.
            entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }
    }

    /** A key of a mapping, its own place and its value. */
    record Entry(Spot key, Tree value) {}

    /** Values in the order of the file. */
    record Sequence(Spot spot, Spot end, List<Tree> items) implements Tree {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** A single value, kept as it was written. */
    record Scalar(Spot spot, Spot end, Kind kind, String written) implements Tree {
        /** Only for {@link Kind#NUMBER}. */
        BigDecimal number() {
            return new BigDecimal(written);
        }
    }

    /** What a single value is. */
    enum Kind {
        TEXT,
        NUMBER,
        TRUTH,
        /** A key with nothing behind it, or YAML's words for nothing. */
        NOTHING,
        /** Something that was found and reported already; nobody reads on below it. */
        REFUSED
    }
}
