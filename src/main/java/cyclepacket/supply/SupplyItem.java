package cyclepacket.supply;

import cyclepacket.plan.Device.Needle;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing besides medicine that the plan uses.
 *
 * @param count how many for the rest of the course, spares counted, above zero
 * @param boxOf how many a box holds as it is sold, where the clinic says so
 * @param size the size of the container, where the clinic says so, or what the syringe is called
 * @param needle the size of the needle, for vials
 */
public record SupplyItem(
        Kind kind, int count, Optional<Integer> boxOf, Optional<String> size, Optional<Needle> needle) {
    public SupplyItem(Kind kind, int count, Optional<Integer> boxOf, Optional<String> size) {
        this(kind, count, boxOf, size, Optional.empty());
    }

    public SupplyItem {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(boxOf, "boxOf");
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(needle, "needle");
    }

    /** What can be on the list; the word is the one of files and of JSON. */
    public enum Kind {
        PEN_NEEDLE("pen needle"),
        EMPTY_SYRINGE("empty syringe"),
        INJECTION_NEEDLE("injection needle"),
        MIXING_NEEDLE("mixing needle"),
        DRAWING_NEEDLE("drawing needle"),
        ALCOHOL_SWAB("alcohol swab"),
        SOAP("soap"),
        GAUZE_PAD("gauze pad"),
        SHARPS_CONTAINER("sharps container");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The key of the clinic file, for example {@code pen-needle}. */
        public String key() {
            return word.replace(' ', '-');
        }
    }

    /** Whole boxes as sold; empty when the clinic does not say how they are sold. */
    public Optional<Integer> boxes() {
        return boxOf.map(size -> (count + size - 1) / size);
    }
}
