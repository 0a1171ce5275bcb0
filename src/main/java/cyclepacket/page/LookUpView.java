package cyclepacket.page;

import java.util.List;

/**
 * What each number in the window means for the next new-cartridge evening.
 *
 * @param dose the dose that the table is true for
 * @param leaving the box that ends
 * @param rows one for each mark that can occur
 */
public record LookUpView(String dose, String leaving, List<Evening> evenings) {
    public LookUpView {
        evenings = List.copyOf(evenings);
    }

    /** The numbers that can stand in the window on one evening. */
    public record Evening(DayName day, List<Row> rows) {
        public Evening {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One number.
     *
     * @param reading the number in the window
     * @param fromNew the amount to give from the new cartridge
     * @param nextDays the evenings on which the next new cartridge may follow; none when this one lasts
     */
    public record Row(String reading, String fromNew, List<DayName> nextDays) {
        public Row {
            nextDays = List.copyOf(nextDays);
        }
    }
}
