package cyclepacket.actingout;

import cyclepacket.actingout.Deed.Does;
import cyclepacket.actingout.Deed.Writes;
import cyclepacket.plan.Device.Window;
import java.util.ArrayList;
import java.util.List;

/** Decides what was done on past evenings and how carefully it was written down. */
final class PastMaker {
    private final Chance chance;
    private final Pen pen;
    private final boolean onMarks;
    private final int windowWritten;
    private final int readBack;
    private final int oddities;
    private final int unknowns;
    private final int losses;

    PastMaker(Chance chance, Pen pen, boolean onMarks) {
        this.chance = chance;
        this.pen = pen;
        this.onMarks = onMarks;
        this.windowWritten = chance.oneOf(100, 100, 70, 30, 0);
        this.readBack = chance.oneOf(100, 100, 70, 0);
        this.oddities = chance.oneOf(0, 10, 30);
        this.unknowns = chance.oneOf(0, 0, 15, 40);
        this.losses = chance.oneOf(0, 0, 15);
    }

    List<Evening> live(List<Evening> evenings, int count) {
        List<Evening> lived = new ArrayList<>();
        for (int index = 0; index < evenings.size(); index++) {
            Evening evening = evenings.get(index);
            lived.add(index < count ? new Evening(evening.date(), evening.settings(), deeds(evening)) : evening);
        }
        return lived;
    }

    private List<Deed> deeds(Evening evening) {
        if (chance.in100(oddities / 3)) {
            Deed missed = new Deed(Does.MISSED, 0, 0, 0, 0, writes());
            return evening.settings().stream().map(setting -> missed).toList();
        }
        return evening.settings().stream().map(this::deed).toList();
    }

    private Deed deed(long setting) {
        long before = chance.in100(losses) ? loss() : 0;
        if (chance.in100(unknowns)) {
            return new Deed(Does.UNKNOWN, drawnOf(setting), before, 0, 0, writes());
        }
        if (chance.in100(oddities)) {
            return oddDeed(setting, before);
        }
        long within = chance.in100(losses) ? Math.min(loss(), setting) : 0;
        long after = within == 0 && chance.in100(losses) ? loss() : 0;
        return new Deed(Does.ALL, 0, before, within, after, writes());
    }

    private Deed oddDeed(long setting, long before) {
        if (pen.window() == Window.OWED && chance.in100(25)) {
            return new Deed(
                    Does.BLOCKED_NEEDLE, chance.markFrom(pen.step(), setting, pen.step()), before, 0, 0, writes());
        }
        if (chance.in100(10)) {
            return new Deed(Does.MISSED, 0, before, 0, 0, writes());
        }
        if (chance.in100(40)) {
            long other = chance.markFrom(pen.dialLeast(), pen.dialMost(), pen.step());
            return new Deed(Does.OTHER_NUMBER, other, before, 0, 0, writes());
        }
        return new Deed(Does.GIVES_UP_AT_STOP, 0, before, 0, 0, writes());
    }

    private long drawnOf(long setting) {
        return switch (chance.from(0, 3)) {
            case 0 -> 0;
            case 1 -> setting;
            default -> onMarks ? chance.markFrom(0, setting, pen.step()) : chance.from(0, setting);
        };
    }

    /** On a pen that shows what is left, a loss off the marks would leave a rest that no rule speaks of. */
    private long loss() {
        boolean marks = onMarks || pen.window() == Window.LEFT;
        long amount = chance.from(1L, 3 * pen.step());
        return marks ? Math.max(pen.step(), amount - amount % pen.step()) : amount;
    }

    private Writes writes() {
        return new Writes(chance.in100(windowWritten), chance.in100(readBack), chance.in100(80), chance.in100(25));
    }
}
