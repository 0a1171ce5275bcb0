package cyclepacket.page;

/**
 * How the document is laid out.
 *
 * @param language the folder of the wording, for example {@code en}
 * @param paper {@code letter} or {@code a4}
 * @param textSize {@code standard} or {@code large}
 */
public record LayoutView(String language, String paper, String textSize) {}
