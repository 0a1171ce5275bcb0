package cyclepacket.page;

import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.LookUpRow;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Section 5 of the chart copy for one pen: which numbers fit an evening, and what a number means for the end after it. */
final class ChartCalls {
    private final ChartSource source;
    private final ChartWords words;
    private final MedicineLedger ledger;
    private final CartridgePen pen;

    ChartCalls(ChartSource source, ChartWords words, MedicineLedger ledger, CartridgePen pen) {
        this.source = source;
        this.words = words;
        this.ledger = ledger;
        this.pen = pen;
    }

    /** Empty when no evening is to come. */
    Optional<ChartView.Calls> view() {
        ChartTable evenings = evenings();
        return evenings.rows().isEmpty()
                ? Optional.empty()
                : Optional.of(new ChartView.Calls(
                        ledger.medicine().name() + " (" + ledger.medicine().id() + ")",
                        notes(),
                        evenings,
                        nextNotes(),
                        ledger.lookUp().isEmpty() ? Optional.empty() : Optional.of(nextEnds())));
    }

    private List<String> notes() {
        ChartRules rules = new ChartRules(source, words);
        List<String> notes = new ArrayList<>(List.of(
                words.text("calls.window." + ChartRules.lower(pen.window())),
                words.text("calls.fits.not"),
                words.fill(
                        "calls.line",
                        "line",
                        rules.offTable(source.files().clinic().rules())),
                new ChartTrailRules(source, words, ledger, pen)
                        .small(new Marks(pen.dial(), source.files().clinic().rules()))));
        // A call may change the dose of an evening that waits, and then its row is another one.
        if (ledger.days().stream().anyMatch(day -> day.evening().state() == Evening.State.PROVISIONAL)) {
            notes.add(trueWhile());
        }
        return notes;
    }

    private ChartTable evenings() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "calls", "date", "day", "injection", "#dial", "fits", "off");
        table.caption(words.fill(
                "calls.caption", "unit", words.amounts().unit(ledger.medicine().unit())));
        for (LedgerDay day : ledger.days()) {
            for (Draw draw : ledger.draws()) {
                if (draw.date().equals(day.evening().date()) && !draw.isRecorded()) {
                    ChartFits fits = new ChartFits(pen, source.files().clinic().rules(), day, draw);
                    boolean change = day.changes().stream().anyMatch(own -> own.setting() == draw.number());
                    table.row(
                            change,
                            List.of(
                                    words.day(draw.date()),
                                    day.evening().day(),
                                    Integer.toString(draw.number()),
                                    words.number(draw.dialled()),
                                    fits(day, draw, fits),
                                    off(fits)));
                }
            }
        }
        return table.build();
    }

    private String fits(LedgerDay day, Draw draw, ChartFits fits) {
        List<String> lines = new ArrayList<>();
        if (fits.wholeFits()) {
            lines.add(words.text(pen.window() == Window.OWED ? "calls.zero" : "calls.full"));
        }
        for (DayChange change : day.changes()) {
            if (change.setting() == draw.number()) {
                lines.add(ends(change, fits));
            }
        }
        return String.join("\n", lines);
    }

    private String ends(DayChange change, ChartFits fits) {
        String container = Integer.toString(change.leaving());
        if (change.owed().isEmpty()) {
            return words.fill("calls.limit", "container", container);
        }
        return fits.range(change.owed().get())
                .map(range -> words.fill("calls.ends", "numbers", words.numbers(range), "container", container))
                .orElseGet(() -> words.fill("calls.ends.small", "container", container));
    }

    private String off(ChartFits fits) {
        List<String> parts = new ArrayList<>();
        if (!fits.wholeFits()) {
            parts.add(words.text(pen.window() == Window.OWED ? "calls.zero" : "calls.full"));
        }
        fits.off().forEach(range -> parts.add(words.numbers(range)));
        return words.list(parts);
    }

    private List<String> nextNotes() {
        return ledger.lookUp().isEmpty()
                ? List.of(words.text("next.none"))
                : List.of(words.text("next.how"), trueWhile());
    }

    private String trueWhile() {
        List<Dose> doses = ledger.days().stream()
                .map(LedgerDay::evening)
                .filter(Evening::isToCome)
                .map(Evening::ordered)
                .distinct()
                .toList();
        return doses.size() == 1
                ? words.fill("next.while.dose", "dose", words.amount(doses.get(0)))
                : words.text("next.while");
    }

    private ChartTable nextEnds() {
        ChartTable.Builder table = ChartTable.of(
                words.wording(), "next", "date", "injection", "#window", "#new", "ends", "earliest", "latest");
        table.caption(words.fill(
                "next.caption", "unit", words.amounts().unit(ledger.medicine().unit())));
        for (LookUpRow row : ledger.lookUp()) {
            table.row(
                    words.day(row.date()),
                    Integer.toString(row.setting()),
                    words.number(row.window()),
                    words.number(row.fromNext()),
                    next(row),
                    row.next().map(end -> words.day(end.earliest())).orElse(words.text("none")),
                    row.next()
                            .map(end -> end.latest().map(words::day).orElse(words.text("containers.later")))
                            .orElse(words.text("none")));
        }
        return table.build();
    }

    private String next(LookUpRow row) {
        return row.next()
                .map(end -> words.fill("next.container", "container", Integer.toString(end.leaving())))
                .orElseGet(() -> words.text(row.hasNextContainer() ? "next.lasts" : "next.no-container"));
    }
}
