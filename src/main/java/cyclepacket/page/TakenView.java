package cyclepacket.page;

import java.util.List;

/**
 * What the page of a medicine without a needle needs.
 *
 * @param way {@code mouth}, {@code vagina}, {@code skin} or {@code nose}
 * @param piece {@code tablet}, {@code patch} and so on
 * @param halves true when a piece may be halved
 * @param grid the days on which it changes, one row each; only for a patch
 */
public record TakenView(String way, String piece, boolean halves, List<Change> grid) {
    public TakenView {
        grid = List.copyOf(grid);
    }

    /** One day of the grid. */
    public record Change(DayName day) {}
}
