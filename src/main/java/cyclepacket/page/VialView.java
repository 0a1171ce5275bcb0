package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * What the page of a vial needs.
 *
 * @param kind {@code mixed}, {@code kept}, {@code drawn}, {@code diluted} or {@code oil}
 * @param syringe what the empty syringe is called
 * @param needle the needle that gives
 * @param otherNeedle the needle that mixes or draws, where there is one
 * @param strength what the label must say
 * @param oil which oil it is in
 * @param openedDays days it may be used once opened
 * @param doses how many injections one vial gives for sure, at the marks of this page
 * @param diluent the liquid for mixing, with its own drawing
 * @param marks the draw lines that hold, in the order of their first days
 * @param swabs how many swabs one injection takes
 * @param spareDiluents how many liquids come with the powder of the doses ahead and are not used
 * @param together the door names of medicines that may go into the same syringe
 */
public record VialView(
        String kind,
        String syringe,
        String needle,
        Optional<String> otherNeedle,
        Optional<String> strength,
        Optional<String> oil,
        Optional<String> openedDays,
        Optional<String> doses,
        Optional<Picture> diluent,
        List<MarkFrom> marks,
        String swabs,
        Optional<String> spareDiluents,
        List<String> together) {
    public VialView {
        marks = List.copyOf(marks);
        together = List.copyOf(together);
    }

    /** A draw line in words and as a drawing. */
    public record Picture(String mark, SyringeDrawing drawing) {}

    /**
     * A draw line and the day from which it holds.
     *
     * @param vials how many vials are mixed
     * @param order one number for each vial, in the order of mixing
     * @param hasRest true when something stays in the vial
     */
    public record MarkFrom(DayName from, String vials, List<String> order, Picture picture, boolean hasRest) {
        public MarkFrom {
            order = List.copyOf(order);
        }
    }
}
