package cyclepacket.page;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The sheets of a print run: one before each packet, and the list on top. */
public final class BatchSheets {
    private final PageWriter writer;
    private final Wording wording;

    /** @param templates the folder with the page templates, style sheets and wording */
    public BatchSheets(Path templates, PageWriter writer) {
        this.writer = writer;
        wording = Wording.load(templates, ChartCopy.LANGUAGE);
    }

    /** The sheet before one packet, as XHTML. */
    public String separator(PacketFacts facts, int pages) {
        PacketViews views = new PacketViews(facts, wording);
        return writer.write(
                "batch/separator.ftlh",
                ChartCopy.LANGUAGE,
                new SeparatorView(views.issue(), views.person(), views.layout(), Integer.toString(pages)));
    }

    /** The initials that stand for the patient where a name would tell too much. */
    public String initials(PacketFacts facts) {
        return new PacketViews(facts, wording).person().initials();
    }

    /**
     * The list on top, as XHTML.
     *
     * @param pages how many pages lie in the stack, its separators not counted
     */
    public String cover(
            LocalDate date, String paper, int pages, List<CoverView.Printed> printed, List<CoverView.Other> others) {
        List<CoverView.Printed> rows = new ArrayList<>(printed);
        return writer.write(
                "batch/cover.ftlh",
                ChartCopy.LANGUAGE,
                new CoverView(
                        new ClockWords(wording).dateAndYear(date),
                        paper.toLowerCase(Locale.ROOT),
                        Integer.toString(printed.size()),
                        Integer.toString(pages),
                        Integer.toString(others.size()),
                        rows,
                        others));
    }
}
