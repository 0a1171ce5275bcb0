package cyclepacket.page;

import cyclepacket.ledger.Container;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Protocol;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.Revision;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Section 2 of the chart copy: the doses in force, the stock and the record, as they were told. */
final class ChartInputs {
    private final ChartSource source;
    private final ChartWords words;
    private final Plan plan;

    ChartInputs(ChartSource source, ChartWords words) {
        this.source = source;
        this.words = words;
        plan = source.files().plan();
    }

    List<ChartTable> tables() {
        List<ChartTable> tables = new ArrayList<>(List.of(doses(), stock()));
        new ChartMeasures(source, words).table().ifPresent(tables::add);
        if (!plan.record().isEmpty()) {
            tables.add(record());
        }
        if (!plan.revised().isEmpty()) {
            tables.add(revised());
        }
        return tables;
    }

    /** The generic name, with the name in the files where two medicines share the generic one. */
    static String name(ChartSource source, Medicine medicine) {
        long alike = source.files().medicines().values().stream()
                .filter(other -> other.name().equals(medicine.name()))
                .count();
        return alike > 1 ? medicine.name() + "\n(" + medicine.id() + ")" : medicine.name();
    }

    private ChartTable doses() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "doses", "medicine", "days", "from", "#amount", "time", "order");
        table.caption(words.text("doses"));
        for (Protocol.Row row : source.files().protocol().rows()) {
            Optional<Medicine> medicine = source.files().medicine(row.medicine());
            if (medicine.isPresent()) {
                addDoses(table, row, medicine.get());
            }
        }
        return table.build();
    }

    private void addDoses(ChartTable.Builder table, Protocol.Row row, Medicine medicine) {
        String days = row.firstDay().equals(row.lastDay())
                ? row.firstDay().toString()
                : words.fill(
                        "doses.days.range",
                        "first",
                        row.firstDay().toString(),
                        "last",
                        row.lastDay().toString());
        String time = row.isExact()
                ? words.text("doses.exact")
                : row.pattern().times().stream()
                        .map(name -> Optional.ofNullable(plan.times().get(name))
                                .map(words::time)
                                .orElse(name))
                        .collect(Collectors.joining("\n"));
        if (row.amount().isPresent()) {
            table.row(
                    name(source, medicine),
                    days,
                    from(row.firstDay()),
                    words.amount(row.amount().get()),
                    time,
                    words.text("doses.protocol"));
            return;
        }
        for (Plan.DoseLine line : plan.doses().getOrDefault(row.medicine(), List.of())) {
            table.row(
                    name(source, medicine),
                    days,
                    from(line.from()),
                    words.amount(line.amount()),
                    time,
                    line.order().orElse(words.text("not-told")));
        }
    }

    private String from(DayMark mark) {
        return source.course().anchors().date(mark).map(words::day).orElse(mark.toString());
    }

    private ChartTable stock() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "stock", "medicine", "box", "#size", "lot", "expires", "gives");
        table.caption(words.text("stock"));
        for (Medicine medicine : source.files().medicines().values()) {
            List<Plan.Stock> lines = plan.onHand().getOrDefault(medicine.id(), List.of());
            List<Container> containers = Container.of(medicine, lines);
            for (int line = 0; line < lines.size(); line++) {
                int own = line;
                List<Container> alike = containers.stream()
                        .filter(container -> container.stock() == own)
                        .toList();
                addStock(table, medicine, lines.get(line), alike);
            }
        }
        return table.build();
    }

    private void addStock(ChartTable.Builder table, Medicine medicine, Plan.Stock stock, List<Container> alike) {
        String box = alike.isEmpty()
                ? words.text("none")
                : boxes(alike.get(0).number(), alike.get(alike.size() - 1).number());
        String opened = stock.opened()
                .map(day -> "\n" + words.fill("stock.opened", "day", words.date(day)))
                .orElse("");
        String used = stock.used()
                .map(dose -> "\n" + words.fill("stock.used", "amount", words.amount(dose)))
                .orElse("");
        String moved = stock.received()
                        .map(day -> "\n" + words.fill("stock.received", "day", words.date(day)))
                        .orElse("")
                + stock.discarded()
                        .map(day -> "\n"
                                + words.fill(
                                        "stock.discarded",
                                        "day",
                                        words.date(day),
                                        "reason",
                                        stock.reason().orElse("")))
                        .orElse("");
        table.row(
                name(source, medicine),
                box,
                words.amount(stock.size()),
                stock.lot().orElse(words.text("not-told")) + opened + used + moved,
                stock.expires().map(this::dateAndYear).orElse(words.text("not-told")),
                alike.isEmpty() ? words.text("none") : gives(alike.get(0)));
    }

    private String gives(Container container) {
        return container.least().equals(container.most())
                ? words.amount(container.most())
                : ChartWords.unbroken(words.fill(
                        "range", "least", words.number(container.least()), "most", words.amount(container.most())));
    }

    private String boxes(int first, int last) {
        return first == last
                ? Integer.toString(first)
                : ChartWords.unbroken(words.fill("range", "least", "" + first, "most", "" + last));
    }

    private String dateAndYear(LocalDate date) {
        return words.date(date) + AmountWords.NO_BREAK + date.getYear();
    }

    /** What each issue changed, whose order it was, and who told it to whom. */
    private ChartTable revised() {
        ChartTable.Builder table = ChartTable.of(words.wording(), "revised", "#issue", "what", "order", "call");
        table.caption(words.text("revised"));
        for (Revision line : plan.revised()) {
            table.row(
                    Integer.toString(line.issue()),
                    what(line),
                    line.order().orElse(words.text("not-told")),
                    words.fill(
                            line.readBack() ? "revised.called" : "revised.called.unread",
                            "by",
                            line.by(),
                            "to",
                            line.to(),
                            "on",
                            words.date(line.on())));
        }
        return table.build();
    }

    private String what(Revision line) {
        String of = line.of()
                .map(id -> source.files().medicine(id).map(Medicine::name).orElse(id))
                .orElse("");
        String now = line.now()
                .map(id -> source.files().medicine(id).map(Medicine::name).orElse(id))
                .orElse("");
        String last = line.lastDay()
                .filter(day -> !line.from().equals(Optional.of(day)))
                .map(day -> " " + words.fill("revised.until", "day", words.day(day)))
                .orElse("");
        return words.fill(
                        "revised.what." + line.what().name().toLowerCase(Locale.ROOT),
                        "of",
                        of,
                        "now",
                        now,
                        "from",
                        line.from().map(words::day).orElse(""))
                + last;
    }

    private ChartTable record() {
        ChartTable.Builder table = ChartTable.of(words.wording(), "record", "date", "medicine", "#injection", "told");
        table.caption(words.text("record"));
        for (RecordLine line : plan.record()) {
            String medicine =
                    source.files().medicine(line.medicine()).map(Medicine::name).orElse(line.medicine());
            table.row(
                    words.day(line.date()), medicine, Integer.toString(line.setting()), new ChartTold(words).of(line));
        }
        return table.build();
    }
}
