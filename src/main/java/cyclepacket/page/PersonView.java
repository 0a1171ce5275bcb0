package cyclepacket.page;

import java.util.List;

/**
 * Who the packet is for.
 *
 * @param identifiers name and one more, in the order they are printed
 * @param initials for the door page, which shows nothing else of a person
 */
public record PersonView(String name, String initials, List<String> identifiers) {
    public PersonView {
        identifiers = List.copyOf(identifiers);
    }
}
