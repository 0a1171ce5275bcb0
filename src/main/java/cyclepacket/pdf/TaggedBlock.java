package cyclepacket.pdf;

import java.util.Objects;

/**
 * One block of a tagged PDF as a reader hears it.
 *
 * @param page from 1
 * @param role the standard structure type, for example {@code P}, {@code LBody}, {@code H1} or {@code TD}
 * @param language the tag of the passage, or of the document
 */
public record TaggedBlock(int page, String role, String language, String text) {
    public TaggedBlock {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(text, "text");
    }

    /** Whether it is a paragraph or the text of a list item. */
    public boolean isRunning() {
        return role.equals("P") || role.equals("LBody");
    }
}
