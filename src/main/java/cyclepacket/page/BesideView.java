package cyclepacket.page;

import java.util.List;

/**
 * The patient's pages in two languages, text beside text, for staff on the phone.
 *
 * @param own the language the patient reads, and its own name
 * @param source the language it was made from, and its own name
 */
public record BesideView(
        IssueView issue, PersonView person, LayoutView layout, Tongues own, Tongues source, List<Part> parts) {
    public BesideView {
        parts = List.copyOf(parts);
    }

    /** A language by its tag and by its name. */
    public record Tongues(String tag, String name) {}

    /** One part of the packet under its heading. */
    public record Part(Row heading, List<Row> rows) {
        public Part {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One text in both languages.
     *
     * @param kind {@code heading}, {@code text}, {@code item} or {@code row}
     */
    public record Row(String kind, String own, String source) {}
}
