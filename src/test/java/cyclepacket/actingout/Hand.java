package cyclepacket.actingout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The container in the pen, the unopened ones beside it, and nothing else that a patient could know or look up. */
final class Hand {
    private final Pen pen;
    private final List<Long> contents;
    private final List<LocalDate> openedOn = new ArrayList<>();
    private boolean loaded;
    private long left;

    Hand(Pen pen, List<Long> contents, Optional<Started> started) {
        this.pen = pen;
        this.contents = contents;
        started.ifPresent(before -> {
            load(before.openedOn());
            takeOut(before.used());
        });
    }

    /** Loads the next box if none is in the pen. False when there is no further box. */
    boolean load(LocalDate today) {
        if (loaded) {
            return true;
        }
        if (openedOn.size() == contents.size()) {
            return false;
        }
        left = contents.get(openedOn.size());
        openedOn.add(today);
        loaded = true;
        return true;
    }

    boolean isPastItsDays(LocalDate today) {
        return loaded && today.isAfter(pen.lastDayOf(openedOn.get(openedOn.size() - 1)));
    }

    /** The number of the box in the pen, or of the last one that was. */
    int box() {
        return openedOn.size();
    }

    /** What the pen would let out now. */
    long ready() {
        return loaded ? pen.letsOut(left) : 0;
    }

    /** What really lies in the open container. */
    long inside() {
        return loaded ? left : 0;
    }

    void takeOut(long amount) {
        if (!loaded || amount > left) {
            throw new IllegalStateException(amount + " out of " + left);
        }
        left -= amount;
    }

    void putAway() {
        loaded = false;
        left = 0;
    }

    List<LocalDate> openedOn() {
        return List.copyOf(openedOn);
    }

    /** The evening on which a box was opened; empty if it never was. */
    Optional<LocalDate> openedOn(int box) {
        return box <= openedOn.size() ? Optional.of(openedOn.get(box - 1)) : Optional.empty();
    }
}
