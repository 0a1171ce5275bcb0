package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The cartridges of one pen: when each is expected to end, and what to find in the table then.
 *
 * @param window {@code owed} or {@code left}
 * @param openedDays days a cartridge may be used once opened, the first use counted
 * @param card what the new-cartridge card fills in
 * @param strip one cell an evening
 * @param endings what is expected of each coming end
 * @param boxes the cartridges at home, in the order they are loaded
 */
public record CartridgesView(
        String medicine,
        String doorName,
        String window,
        String openedDays,
        CardFacts card,
        List<Cell> strip,
        List<Ending> endings,
        List<Box> boxes,
        Optional<LookUpView> lookUp) {
    public CartridgesView {
        strip = List.copyOf(strip);
        endings = List.copyOf(endings);
        boxes = List.copyOf(boxes);
    }

    /**
     * One evening of the strip.
     *
     * @param boxes the box or boxes that may be in the pen, in order
     * @param mark {@code none}, {@code expect}, {@code maybe} or {@code past}
     */
    public record Cell(DayName day, List<String> boxes, String mark) {
        public Cell {
            boxes = List.copyOf(boxes);
        }
    }

    /**
     * One coming end.
     *
     * @param days the evenings on which it may happen
     * @param sure true when it happens on one evening for every possible content
     * @param limit true when the cartridge is left because its days are over
     * @param next the box to load; empty when there is none at home
     * @param readings the numbers the window may show, by evening, on dial marks
     * @param wholeOwed true when the pen may give nothing of that evening's setting
     * @param small the smallest number that is printed, when the window may also show less
     * @param waits true when the evening is still to be called
     */
    public record Ending(
            String leaving,
            List<DayName> days,
            boolean sure,
            boolean limit,
            Optional<String> next,
            List<Reading> readings,
            boolean wholeOwed,
            Optional<String> small,
            boolean waits) {
        public Ending {
            days = List.copyOf(days);
            readings = List.copyOf(readings);
        }
    }

    /**
     * The numbers that the window may show at one injection, for example {@code 37.5 to 150 units}.
     *
     * @param injection which injection of a divided dose
     */
    public record Reading(DayName day, Optional<String> injection, String range) {}

    /**
     * One cartridge.
     *
     * @param opened the day it was opened, when that is known
     * @param latestSafe the last day it may be used, counted from the earliest possible opening
     */
    public record Box(
            String number, String size, Optional<String> lot, Optional<DayName> opened, Optional<DayName> latestSafe) {}

    /**
     * Facts for the new-cartridge card.
     *
     * @param hold seconds to hold
     * @param divided true when an evening to come has its dose in more than one setting
     * @param example a number to practise with that is nowhere in this plan
     * @param betweenMarks the clinic's rule for a number between two marks: {@code up}, {@code nearest} or {@code call}
     * @param small below this amount the clinic's rule {@code smallRemainder} holds: {@code give}, {@code skip} or
     *     {@code call}
     * @param offTable the clinic's own line for an evening or a number that is not listed
     */
    public record CardFacts(
            String unit,
            String hold,
            boolean divided,
            Optional<String> example,
            String betweenMarks,
            String small,
            String smallRemainder,
            Optional<String> offTable) {}
}
