package cyclepacket.page;

import java.util.List;

/**
 * The first sheet of a print run.
 *
 * @param printed what lies in the stack, in its order
 * @param others what was not printed and why
 */
public record CoverView(
        String date,
        String paper,
        String printedCount,
        String pageCount,
        String otherCount,
        List<Printed> printed,
        List<Other> others) {
    public CoverView {
        printed = List.copyOf(printed);
        others = List.copyOf(others);
    }

    /** One packet; initials only, because the sheet lies on a printer. */
    public record Printed(String number, String plan, String initials, String issue, String pages, String code) {}

    /** One plan that was not printed. */
    public record Other(String file, String why) {}
}
