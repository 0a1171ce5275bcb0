package cyclepacket.actingout;

import cyclepacket.actingout.Deed.Does;
import cyclepacket.plan.Device.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Acts out a course with known true contents, one setting after the other, as a patient with a pen would live it. */
final class Patient {
    private final Pen pen;
    private final Hand hand;
    private final List<End> ends = new ArrayList<>();
    private final List<Story.Act> acts = new ArrayList<>();
    private Optional<LocalDate> coveredUntil = Optional.empty();
    private Optional<LocalDate> firstShort = Optional.empty();
    private long shortBy;

    private Patient(Pen pen, List<Long> contents, Optional<Started> started) {
        this.pen = pen;
        this.hand = new Hand(pen, contents, started);
    }

    static Story live(Pen pen, List<Evening> evenings, List<Long> contents, Optional<Started> started) {
        Patient patient = new Patient(pen, contents, started);
        evenings.forEach(patient::live);
        return new Story(
                List.copyOf(patient.ends),
                List.copyOf(patient.acts),
                patient.hand.openedOn(),
                patient.coveredUntil,
                patient.firstShort,
                patient.shortBy);
    }

    private void live(Evening evening) {
        long shortBefore = shortBy;
        boolean looked = false;
        for (int setting = 1; setting <= evening.settings().size(); setting++) {
            long lostBefore = lose(evening.deed(setting).lostBefore());
            if (!looked && picksUpThePen(evening.deed(setting))) {
                throwAwayWhatIsTooOld(evening.date(), setting);
                looked = true;
            }
            turn(evening, setting, lostBefore);
        }
        if (shortBy > shortBefore && firstShort.isEmpty()) {
            firstShort = Optional.of(evening.date());
        }
        if (firstShort.isEmpty()) {
            coveredUntil = Optional.of(evening.date());
        }
    }

    private static boolean picksUpThePen(Deed deed) {
        return deed.does() != Does.MISSED;
    }

    private void throwAwayWhatIsTooOld(LocalDate today, int setting) {
        if (hand.isPastItsDays(today)) {
            ends.add(new End(hand.box(), today, setting, true, 0, 0));
            hand.putAway();
        }
    }

    /** Loses only what is there: a spill out of an empty or absent container cannot happen. */
    private long lose(long amount) {
        if (amount == 0 || amount > hand.ready()) {
            return 0;
        }
        hand.takeOut(amount);
        return amount;
    }

    private void turn(Evening evening, int setting, long lostBefore) {
        Deed deed = evening.deed(setting);
        long ordered = evening.settings().get(setting - 1);
        long dialled = deed.does() == Does.OTHER_NUMBER ? deed.amount() : ordered;
        List<Long> shown = new ArrayList<>();
        long drawn = inject(evening.date(), setting, deed, dialled, shown);
        long lostAfter = drawn == dialled ? lose(deed.lostAfter()) : 0;
        acts.add(new Story.Act(
                evening.date(),
                setting,
                ordered,
                dialled,
                drawn,
                shown,
                lostBefore,
                Math.min(deed.lostWithin(), drawn),
                lostAfter,
                deed));
    }

    private long inject(LocalDate today, int setting, Deed deed, long dialled, List<Long> shown) {
        long wanted = deed.does() == Does.MISSED ? 0 : deed.does() == Does.UNKNOWN ? deed.amount() : dialled;
        long drawn = 0;
        if (deed.does() == Does.UNKNOWN) {
            // Nobody knows what came of it, but the pen was made ready: the clock of its container has started.
            hand.load(today);
        }
        while (drawn < wanted) {
            if (!hand.load(today)) {
                shortBy += wanted - drawn;
                return drawn;
            }
            long now = Math.min(wanted - drawn, hand.ready());
            hand.takeOut(now);
            drawn += now;
            if (drawn < wanted) {
                stop(today, setting, dialled - drawn, now, shown);
                if (deed.does() == Does.GIVES_UP_AT_STOP) {
                    return drawn;
                }
            }
        }
        return drawn;
    }

    private void stop(LocalDate today, int setting, long owed, long cameOut, List<Long> shown) {
        long number = pen.window() == Window.OWED ? owed : cameOut;
        shown.add(number);
        ends.add(new End(hand.box(), today, setting, false, owed, number));
        hand.putAway();
    }
}
