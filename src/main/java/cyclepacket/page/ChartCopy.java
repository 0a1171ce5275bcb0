package cyclepacket.page;

import java.util.Objects;

/** The clinic's own copy of one issue as a self-contained XHTML document. */
public final class ChartCopy {
    /** The chart copy is for the clinic's staff, whatever language the patient reads. */
    public static final String LANGUAGE = "en";

    private final PageWriter writer;
    private final Wording wording;

    public ChartCopy(PageWriter writer) {
        this.writer = Objects.requireNonNull(writer, "writer");
        wording = writer.wording(LANGUAGE);
    }

    /** @throws TemplateFault if a template or its wording is broken */
    public String xhtml(ChartSource source) {
        return writer.write("chart/chart.ftlh", LANGUAGE, ChartViews.of(source, wording));
    }

    /** The title of the document, which names nobody. */
    public String title(ChartSource source) {
        return new ChartWords(wording)
                .fill(
                        "title",
                        "plan",
                        source.files().plan().id(),
                        "issue",
                        Integer.toString(source.files().plan().issue()));
    }
}
