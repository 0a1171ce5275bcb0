package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/** Where each medicine is kept. */
public record StorageView(List<Row> rows) {
    public StorageView {
        rows = List.copyOf(rows);
    }

    /**
     * One medicine.
     *
     * @param unopened temperatures in both scales
     * @param fridge true when it needs the refrigerator before opening
     * @param opened temperatures in both scales once opened
     * @param openedDays days it may be used once opened
     * @param injected false for what is taken without a needle
     */
    public record Row(
            String medicine,
            String unopened,
            boolean fridge,
            Optional<String> opened,
            Optional<String> openedDays,
            boolean injected) {}
}
