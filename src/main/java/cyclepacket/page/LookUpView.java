package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * What each number in the window means for the next new-cartridge evening.
 *
 * @param whileTrue the sentence that says how long the table is true
 * @param leaving the box that ends
 * @param evenings one for each injection in which it may end
 */
public record LookUpView(String whileTrue, String leaving, List<Evening> evenings) {
    public LookUpView {
        evenings = List.copyOf(evenings);
    }

    /**
     * The numbers that can stand in the window at one injection.
     *
     * @param injection which injection of a divided dose
     * @param then the amount of the next part of a divided dose, which is still to be given after this one
     */
    public record Evening(DayName day, Optional<String> injection, Optional<String> then, List<Row> rows) {
        public Evening {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One number.
     *
     * @param reading the number in the window
     * @param fromNew the amount to give from the new cartridge
     * @param next when the next new cartridge may follow, in words
     */
    public record Row(String reading, String fromNew, String next) {}
}
