package cyclepacket.page;

import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/** The sentences with which a reader works the trail out again; a rule that this plan does not need is left out. */
final class ChartTrailRules {
    private final ChartWords words;
    private final MedicineLedger ledger;
    private final CartridgePen pen;
    private final HouseRules house;

    ChartTrailRules(ChartSource source, ChartWords words, MedicineLedger ledger, CartridgePen pen) {
        this.words = words;
        this.ledger = ledger;
        this.pen = pen;
        house = source.files().clinic().rules();
    }

    List<String> how() {
        List<String> how =
                new ArrayList<>(List.of(words.text("how.sums"), words.text("how.end"), words.text("how.owed")));
        boolean left = pen.window() == Window.LEFT;
        if (left) {
            how.add(words.fill("how.left", "step", words.amount(pen.dial().step())));
        }
        if (left && drawsWholeSteps()) {
            how.add(words.fill("how.steps", "step", words.amount(pen.dial().step())));
        }
        if (ledger.draws().stream().anyMatch(Draw::provesNoEnd)) {
            how.add(words.text("how.ran-through"));
        }
        if (ledger.draws().stream().anyMatch(this::provesTheLastFull)) {
            how.add(words.text("how.last"));
        }
        if (ledger.draws().stream().anyMatch(ChartTrailRules::isDrawnOtherwise)) {
            how.add(words.text("how.drawn"));
        }
        if (ledger.draws().stream().anyMatch(draw -> !draw.stops().isEmpty())) {
            how.add(words.text(left ? "how.read.left" : "how.read.owed"));
        }
        if (ledger.draws().stream().anyMatch(draw -> !draw.unknown().isZero())) {
            how.add(words.text("how.unknown"));
        }
        how.add(inUse());
        how.add(words.text("how.chance"));
        return how;
    }

    /** A loss of any size moves every later total off the marks. */
    private boolean drawsWholeSteps() {
        Dose step = pen.dial().step();
        return ledger.draws().stream()
                .allMatch(
                        draw -> draw.before().isMultipleOf(step) && draw.after().isMultipleOf(step));
    }

    /** Whether the last cartridge at home may be in use in a setting that was given in full and proves nothing else. */
    private boolean provesTheLastFull(Draw draw) {
        boolean lastIsOpen = ledger.containers().stream()
                .skip(Math.max(0, ledger.containers().size() - 1))
                .anyMatch(last -> last.firstOpening()
                        .filter(day -> !day.isAfter(draw.date()))
                        .isPresent());
        return lastIsOpen
                && draw.isRecorded()
                && !draw.provesNoEnd()
                && draw.given().filter(draw.dialled()::equals).isPresent();
    }

    private static boolean isDrawnOtherwise(Draw draw) {
        return draw.isRecorded() && !draw.after().equals(draw.before().plus(draw.dialled()));
    }

    private String inUse() {
        boolean first = house.inUseDayOne() == InUseDayOne.FIRST_USE;
        String days =
                words.fill(first ? "how.in-use.first" : "how.in-use.after", "days", Integer.toString(pen.openedDays()));
        boolean reached = ledger.days().stream()
                .flatMap(day -> day.changes().stream())
                .anyMatch(change -> change.cause() == DayChange.Cause.IN_USE_LIMIT);
        return reached ? days + " " + words.text("how.in-use.left") : days;
    }

    List<String> marks() {
        Marks marks = new Marks(pen.dial(), house);
        List<String> how = new ArrayList<>();
        how.add(words.fill(
                "marks.dial",
                "step",
                words.amount(pen.dial().step()),
                "rule",
                words.text("between." + ChartRules.lower(house.betweenMarks()))));
        how.add(small(marks));
        how.add(words.text("marks.forecast"));
        return how;
    }

    String small(Marks marks) {
        return words.fill(
                "marks.small",
                "smallest",
                words.amount(marks.smallest()),
                "rule",
                words.text("small." + ChartRules.lower(house.smallRemainder().rule())));
    }
}
