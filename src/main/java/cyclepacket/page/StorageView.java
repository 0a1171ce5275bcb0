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
     * @param place where it is kept before opening: {@code fridge}, {@code either} or {@code room}
     * @param opened temperatures in both scales once opened
     * @param openedDays days it may be used once opened
     * @param injected false for what is taken without a needle
     */
    public record Row(
            String medicine,
            String unopened,
            String place,
            Optional<String> opened,
            Optional<String> openedDays,
            boolean injected) {}
}
