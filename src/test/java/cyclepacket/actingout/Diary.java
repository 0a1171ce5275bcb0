package cyclepacket.actingout;

import cyclepacket.actingout.Deed.Does;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.plan.RecordLine.Plunger;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes what happened as the lines of a plan's record: true in every word, and as incomplete as each deed says. */
record Diary(Pen pen, String medicine) {

    List<RecordLine> of(Story story, List<Evening> evenings) {
        List<RecordLine> lines = new ArrayList<>();
        for (Evening evening : evenings) {
            if (evening.isPast()) {
                story.acts().stream()
                        .filter(act -> act.date().equals(evening.date()))
                        .filter(act -> act.setting() == 1 || !isOneMissedEvening(evening))
                        .forEach(act -> lines.addAll(linesOf(act)));
            }
        }
        return lines;
    }

    /** The same lines without the numbers that nobody read back, which prove nothing but that a container ended. */
    static List<RecordLine> factsOf(List<RecordLine> lines) {
        return lines.stream().map(Diary::withoutUnconfirmedNumbers).toList();
    }

    private static RecordLine withoutUnconfirmedNumbers(RecordLine line) {
        if (line.readBack() || line.windows().isEmpty() || line.plunger().equals(Optional.of(Plunger.NOT_END))) {
            return line;
        }
        List<Dose> blank = line.windows().stream()
                .map(number -> number.isZero() ? number : dose(1))
                .toList();
        return new RecordLine(
                line.date(),
                line.medicine(),
                line.setting(),
                line.dialled(),
                line.given(),
                blank,
                line.plunger(),
                false,
                line.lost(),
                line.inQuestion(),
                line.reason(),
                line.by());
    }

    /** An evening without any injection is told in one line by some people, setting by setting by others. */
    private static boolean isOneMissedEvening(Evening evening) {
        return evening.deeds().stream().allMatch(deed -> deed.does() == Does.MISSED)
                && evening.deeds().get(0).writes().window();
    }

    private List<RecordLine> linesOf(Story.Act act) {
        List<RecordLine> lines = new ArrayList<>();
        if (act.lostBefore() > 0) {
            lines.add(
                    line(act, Optional.empty(), new Given.NotWritten(), List.of(), Optional.empty(), act.lostBefore()));
        }
        lines.add(
                switch (act.deed().does()) {
                    case MISSED -> line(act, Optional.empty(), new Given.Missed(), List.of(), Optional.empty(), 0);
                    case UNKNOWN -> unknownLine(act);
                    case BLOCKED_NEEDLE -> act.shown().isEmpty() ? blockedLine(act) : givenLine(act);
                    case ALL, OTHER_NUMBER, GIVES_UP_AT_STOP -> givenLine(act);
                });
        return lines;
    }

    /** Some remember the number at which the pen stopped, but not what they did then. */
    private RecordLine unknownLine(Story.Act act) {
        boolean remembered = act.deed().writes().window() && !act.shown().isEmpty();
        List<Dose> windows = remembered ? act.shown().stream().map(Diary::dose).toList() : List.of();
        Optional<Plunger> plunger = remembered ? Optional.of(Plunger.END) : Optional.empty();
        return line(act, Optional.empty(), new Given.Unknown(), windows, plunger, 0);
    }

    private RecordLine blockedLine(Story.Act act) {
        List<Dose> number = List.of(dose(act.deed().amount()));
        return line(
                act, Optional.empty(), new Given.Amount(dose(act.drawn())), number, Optional.of(Plunger.NOT_END), 0);
    }

    private RecordLine givenLine(Story.Act act) {
        boolean windowWritten = writesWindow(act);
        List<Dose> windows = new ArrayList<>();
        if (windowWritten && act.shown().isEmpty() && pen.window() == Window.OWED) {
            windows.add(dose(0));
        } else if (windowWritten) {
            act.shown().forEach(number -> windows.add(dose(number)));
        }
        return line(
                act,
                Optional.of(dose(act.dialled())).filter(number -> writesDialled(act)),
                new Given.Amount(dose(act.drawn() - act.lostWithin())),
                windows,
                windowWritten && !act.shown().isEmpty() && writesPlunger(act)
                        ? Optional.of(Plunger.END)
                        : Optional.empty(),
                act.lostWithin() + act.lostAfter());
    }

    private boolean writesDialled(Story.Act act) {
        return act.deed().writes().dialled() || act.deed().does() == Does.OTHER_NUMBER;
    }

    /** On a pen that shows what is left, a line with the number dialled and no window would say that nothing ended. */
    private boolean writesWindow(Story.Act act) {
        boolean gaveUp = act.drawn() < act.dialled();
        boolean wouldMislead = pen.window() == Window.LEFT
                && writesDialled(act)
                && !act.shown().isEmpty();
        return act.deed().writes().window() || gaveUp || wouldMislead;
    }

    private boolean writesPlunger(Story.Act act) {
        return act.deed().writes().plunger() || act.shown().get(0) == act.dialled();
    }

    private RecordLine line(
            Story.Act act,
            Optional<Dose> dialled,
            Given given,
            List<Dose> windows,
            Optional<Plunger> plunger,
            long lost) {
        return new RecordLine(
                act.date(),
                medicine,
                act.setting(),
                dialled,
                given,
                windows,
                plunger,
                act.deed().writes().readBack() && !windows.isEmpty(),
                Optional.of(dose(lost)).filter(amount -> lost > 0),
                false,
                Optional.empty(),
                Optional.empty());
    }

    private static Dose dose(long thousandths) {
        return new Dose(thousandths, DoseUnit.UNITS);
    }
}
