package cyclepacket.page;

/**
 * How the document is laid out.
 *
 * @param language the folder of the wording, for example {@code en}
 * @param translated whether the language is made from another, and may need more room
 * @param foreign whether texts of the source stand in for some of its own
 * @param paper {@code letter} or {@code a4}
 * @param textSize {@code standard} or {@code large}
 */
public record LayoutView(String language, boolean translated, boolean foreign, String paper, String textSize) {}
