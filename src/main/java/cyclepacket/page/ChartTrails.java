package cyclepacket.page;

import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Section 3 of the chart copy for one pen: contents, injections and every evening on which a cartridge may end, complete
 * enough that the last follows from the first two by the printed sentences alone.
 */
final class ChartTrails {
    private final ChartWords words;
    private final MedicineLedger ledger;
    private final CartridgePen pen;
    private final Marks marks;
    private final ChartTrailRules rules;

    ChartTrails(ChartSource source, ChartWords words, MedicineLedger ledger, CartridgePen pen) {
        this.words = words;
        this.ledger = ledger;
        this.pen = pen;
        marks = new Marks(pen.dial(), source.files().clinic().rules());
        rules = new ChartTrailRules(source, words, ledger, pen);
    }

    ChartView.Trail view() {
        boolean ends = ledger.days().stream().anyMatch(day -> !day.changes().isEmpty());
        return new ChartView.Trail(
                ledger.medicine().name() + " (" + ledger.medicine().id() + ")",
                containers(),
                injections(),
                rules.how(),
                ends ? Optional.of(changes()) : Optional.empty(),
                rules.marks());
    }

    private ChartTable containers() {
        ChartTable.Builder table = ChartTable.of(
                words.wording(),
                "containers",
                "number",
                "#label",
                "#least",
                "#most",
                "#a",
                "#b",
                "opened",
                "safe",
                "earliest",
                "latest");
        table.caption(caption("containers"));
        for (ContainerLine line : ledger.containers()) {
            boolean canEnd = line.firstEnd().isPresent();
            table.row(
                    Integer.toString(line.container().number()),
                    words.number(line.container().label()),
                    words.number(line.container().least()),
                    words.number(line.container().most()),
                    words.number(line.leastTotal()),
                    most(line.mostTotal()),
                    words.date(line.firstOpening(), "containers.unopened"),
                    words.date(line.firstOpening().flatMap(opened -> line.lastSafeDay()), "containers.unopened"),
                    words.date(line.firstEnd(), "containers.never"),
                    words.date(line.lastEnd(), canEnd ? "containers.later" : "containers.never"));
        }
        return table.build();
    }

    private String most(Dose total) {
        return words.boundAbove(total)
                .map(bound -> words.text("containers.below") + "\n" + words.number(bound))
                .orElseGet(() -> words.number(total));
    }

    private String caption(String key) {
        return words.fill(key, "unit", words.amounts().unit(ledger.medicine().unit()));
    }

    private ChartTable injections() {
        ChartTable.Builder table = ChartTable.of(
                words.wording(), "injections", "date", "day", "injection", "#dialled", "#before", "#after", "known");
        table.caption(injectionsCaption());
        Dose total = Dose.zero(ledger.medicine().unit());
        for (LedgerDay day : ledger.days()) {
            List<Draw> draws = ledger.draws().stream()
                    .filter(draw -> draw.date().equals(day.evening().date()))
                    .toList();
            if (draws.isEmpty()) {
                String zero = words.number(Dose.zero(ledger.medicine().unit()));
                table.row(
                        words.day(day.evening().date()),
                        name(day.evening()),
                        words.text("none"),
                        zero,
                        words.number(total),
                        words.number(total),
                        words.text("injections.missed"));
            }
            for (Draw draw : draws) {
                table.row(!day.changes().isEmpty(), row(day, draw));
                total = draw.after();
            }
        }
        return table.build();
    }

    private String injectionsCaption() {
        List<LedgerDay> days = ledger.days();
        return days.isEmpty()
                ? caption("injections.empty")
                : words.fill(
                        "injections",
                        "unit",
                        words.amounts().unit(ledger.medicine().unit()),
                        "first",
                        words.fullDate(days.get(0).evening().date()),
                        "last",
                        words.fullDate(days.get(days.size() - 1).evening().date()));
    }

    private String name(Evening evening) {
        return evening.day().isEmpty() ? words.text("injections.extra") : evening.day();
    }

    private List<String> row(LedgerDay day, Draw draw) {
        return List.of(
                words.day(draw.date()),
                name(day.evening()),
                Integer.toString(draw.number()),
                words.number(draw.dialled()),
                words.number(draw.before()),
                words.number(draw.after()),
                known(day.evening(), draw));
    }

    private String known(Evening evening, Draw draw) {
        if (!draw.isRecorded()) {
            return words.text(evening.state() == Evening.State.PROVISIONAL ? "injections.waits" : "injections.planned");
        }
        boolean all = draw.given().filter(draw.dialled()::equals).isPresent();
        String given = draw.given()
                .map(dose -> all
                        ? words.text("injections.given")
                        : words.fill("injections.given.part", "given", words.number(dose)))
                .orElseGet(() -> words.fill("injections.unknown", "most", words.number(draw.unknown())));
        return all && !draw.stops().isEmpty() ? reading(draw) : given + ", " + reading(draw);
    }

    private String reading(Draw draw) {
        if (draw.provesNoEnd()) {
            return words.text("injections.ran-through");
        }
        if (draw.stops().isEmpty()) {
            return words.text("injections.not-told");
        }
        String stops = draw.stops().stream().map(this::stop).collect(Collectors.joining(", "));
        return stops + ", "
                + words.text(draw.stops().get(0).isConfirmed() ? "injections.read-back" : "injections.not-confirmed");
    }

    /** A number that belongs to no cartridge at home is a finding of its own; the trail still shows it. */
    private String stop(Draw.Stop stop) {
        return ledger.containers().stream()
                .filter(line -> line.read().contains(stop))
                .findFirst()
                .map(line -> words.fill(
                        "injections.stopped",
                        "box",
                        Integer.toString(line.container().number()),
                        "number",
                        words.number(stop.window())))
                .orElseGet(() -> words.fill("injections.stopped.nobox", "number", words.number(stop.window())));
    }

    private ChartTable changes() {
        boolean left = pen.window() == Window.LEFT;
        ChartTable.Builder table = left
                ? ChartTable.of(
                        words.wording(),
                        "changes",
                        "leaving",
                        "date",
                        "day",
                        "injection",
                        "chance",
                        "owed",
                        "printed",
                        "window")
                : ChartTable.of(
                        words.wording(), "changes", "leaving", "date", "day", "injection", "chance", "owed", "printed");
        table.caption(caption("changes"));
        for (LedgerDay day : ledger.days()) {
            for (DayChange change : day.changes()) {
                List<String> cells = new ArrayList<>(List.of(
                        Integer.toString(change.leaving()),
                        words.day(day.evening().date()),
                        name(day.evening()),
                        Integer.toString(change.setting()),
                        chance(change),
                        change.owed().map(words::owed).orElse(words.text("changes.limit")),
                        change.owed().map(owed -> printed(change, owed)).orElse(words.text("changes.limit.printed"))));
                if (left) {
                    cells.add(change.owed().map(owed -> window(change, owed)).orElse(words.text("none")));
                }
                table.row(false, cells);
            }
        }
        return table.build();
    }

    private String chance(DayChange change) {
        return words.text(
                change.isRead() ? "changes.recorded" : change.isCertain() ? "changes.certain" : "changes.possible");
    }

    private String printed(DayChange change, Owed owed) {
        if (change.isRead()) {
            return words.text("changes.read");
        }
        Optional<String> range = marks.printed(owed).map(words::numbers);
        return range.orElse(words.text("changes.small"));
    }

    /** What a pen that shows what is left stops at: the setting less what the next container gives. */
    private String window(DayChange change, Owed owed) {
        Dose dialled = ledger.draws().get(change.draw()).dialled();
        return words.numbers(
                dialled.minus(owed.most().min(dialled)),
                dialled.minus(owed.least().min(dialled)));
    }
}
