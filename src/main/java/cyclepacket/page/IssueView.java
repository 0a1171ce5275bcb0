package cyclepacket.page;

import java.util.Optional;

/**
 * Which document this is.
 *
 * @param code the short code that only this issue has
 * @param draft true until a second person has countersigned
 * @param started true once the first injection was called
 * @param clinic the clinic's name
 * @param prepared the day it was prepared, with its year
 * @param replaced the issue to throw away
 */
public record IssueView(
        String plan,
        String number,
        String code,
        boolean draft,
        boolean started,
        String clinic,
        String prepared,
        Optional<Replaced> replaced) {

    /**
     * The issue that this one retires.
     *
     * @param date the day it was prepared, where that is known
     */
    public record Replaced(String number, Optional<String> date) {}
}
