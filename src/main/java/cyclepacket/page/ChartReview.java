package cyclepacket.page;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.List;
import java.util.Optional;

/** Section 4 of the chart copy: what the checks found, and which warnings stand with whose reason. */
final class ChartReview {
    private final ChartSource source;
    private final ChartWords words;

    ChartReview(ChartSource source, ChartWords words) {
        this.source = source;
        this.words = words;
    }

    Optional<ChartTable> findings() {
        if (source.findings().isEmpty()) {
            return Optional.empty();
        }
        ChartTable.Builder table = ChartTable.of(words.wording(), "findings", "grade", "finding");
        for (Finding finding : source.findings()) {
            table.row(words.text("grade." + finding.severity().word()), text(finding));
        }
        return Optional.of(table.build());
    }

    private String text(Finding finding) {
        String mend = finding.mend().isBlank()
                ? ""
                : "\n" + words.fill("findings.mend", "mend", ChartWords.sentence(finding.mend()));
        return ChartWords.sentence(finding.text()) + mend + "\n"
                + words.fill("findings.where", "code", finding.code(), "place", place(finding.place()));
    }

    /** The file by its own name: the folders above it are those of one computer. */
    private static String place(Place place) {
        String file = place.file()
                .substring(Math.max(place.file().lastIndexOf('/'), place.file().lastIndexOf('\\')) + 1);
        return place.isLocated()
                ? file + ":" + place.line() + ":" + place.column()
                : (file + " " + place.pointer()).strip();
    }

    Optional<ChartTable> accepted() {
        List<ChartSource.Accepted> all = source.accepted();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        ChartTable.Builder table = ChartTable.of(words.wording(), "accepted", "warning", "reason", "by");
        for (ChartSource.Accepted one : all) {
            table.row(text(one.finding()), ChartWords.sentence(one.reason()), one.by());
        }
        return Optional.of(table.build());
    }
}
