package cyclepacket.supply;

import java.util.Objects;
import java.util.Optional;

/**
 * One thing besides medicine that the plan uses.
 *
 * @param count how many for the rest of the course, spares counted, above zero
 * @param boxOf how many a box holds as it is sold, where the clinic says so
 * @param size the size of the container, where the clinic says so
 */
public record SupplyItem(Kind kind, int count, Optional<Integer> boxOf, Optional<String> size) {
    public SupplyItem {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(boxOf, "boxOf");
        Objects.requireNonNull(size, "size");
    }

    /** What can be on the list; the word is the one of files and of JSON. */
    public enum Kind {
        PEN_NEEDLE("pen needle"),
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
