package cyclepacket.ledger;

import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.plan.StockVial;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Volume;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which vial gives which dose, for vials that hold several. A dose is never drawn from two vials: a vial that holds less
 * than the whole next dose, with what hub and needle lose, is left, and so is one whose days are over.
 */
public final class VialLedger {
    private final StockVial vial;
    private final InUseDayOne dayOne;
    private final List<Container> containers;
    private final List<Draw> draws;
    private final int[] servedBy;
    private final List<DayChange> changes = new ArrayList<>();
    private final List<LocalDate> changeDays = new ArrayList<>();

    VialLedger(StockVial vial, InUseDayOne dayOne, List<Container> containers, List<Draw> draws) {
        this.vial = vial;
        this.dayOne = dayOne;
        this.containers = containers;
        this.draws = draws;
        servedBy = new int[draws.size()];
        walk();
    }

    private void walk() {
        int own = 0;
        Optional<LocalDate> opened = openedBefore(own);
        long left = own < containers.size() ? vial.holds(containers.get(own).least()) : 0;
        for (int index = 0; index < draws.size(); index++) {
            Draw draw = draws.get(index);
            long needed = vial.takes(draw.after().minus(draw.before()));
            while (own < containers.size()) {
                boolean isTooOld = opened.filter(day -> draw.date().isAfter(lastUsable(day)))
                        .isPresent();
                if (!isTooOld && left >= needed) {
                    break;
                }
                addChange(own, index, isTooOld);
                own++;
                opened = openedBefore(own);
                left = own < containers.size() ? vial.holds(containers.get(own).least()) : 0;
            }
            servedBy[index] = own;
            if (own < containers.size()) {
                opened = opened.or(() -> Optional.of(draw.date()));
                left -= needed;
            }
        }
    }

    private void addChange(int own, int index, boolean isTooOld) {
        Draw draw = draws.get(index);
        changeDays.add(draw.date());
        changes.add(new DayChange(
                containers.get(own).number(),
                draw.number(),
                index,
                true,
                isTooOld ? DayChange.Cause.IN_USE_LIMIT : DayChange.Cause.TOO_LITTLE_LEFT,
                Optional.empty(),
                draw.isRecorded()));
    }

    private Optional<LocalDate> openedBefore(int own) {
        return own < containers.size() ? containers.get(own).opened() : Optional.empty();
    }

    private LocalDate lastUsable(LocalDate opened) {
        return switch (dayOne) {
            case FIRST_USE -> opened.plusDays(vial.openedDays() - 1L);
            case DAY_AFTER -> opened.plusDays(vial.openedDays());
        };
    }

    /** The changes of one evening. */
    List<DayChange> changesOn(LocalDate date) {
        List<DayChange> own = new ArrayList<>();
        for (int index = 0; index < changes.size(); index++) {
            if (changeDays.get(index).equals(date)) {
                own.add(changes.get(index));
            }
        }
        return own;
    }

    /** The doses that the vials at home surely give, added up. */
    Dose total() {
        return totalWith(containers.size() - 1);
    }

    /** Everything drawn up to and with the last dose that vials up to this one serve; a vial that is not needed adds its label. */
    private Dose totalWith(int own) {
        Dose served = Dose.zero(vial.strength().amount().unit());
        int last = -1;
        for (int index = 0; index < draws.size(); index++) {
            if (servedBy[index] <= own) {
                served = draws.get(index).after();
                last = servedBy[index];
            }
        }
        int spareFrom = last + 1;
        boolean allServed = draws.isEmpty() || servedBy[draws.size() - 1] <= own;
        for (int spare = spareFrom; allServed && spare <= own; spare++) {
            served = served.plus(containers.get(spare).least());
        }
        return served;
    }

    List<ContainerLine> lines() {
        List<ContainerLine> lines = new ArrayList<>();
        for (int own = 0; own < containers.size(); own++) {
            Optional<LocalDate> firstUse = firstUse(own);
            Optional<LocalDate> opening = containers.get(own).opened().or(() -> firstUse);
            Optional<LocalDate> end = endOf(own);
            Dose total = totalWith(own);
            lines.add(new ContainerLine(
                    containers.get(own),
                    total,
                    total,
                    opening,
                    opening,
                    opening.map(this::lastUsable),
                    end,
                    end,
                    List.of()));
        }
        return lines;
    }

    private Optional<LocalDate> firstUse(int own) {
        for (int index = 0; index < draws.size(); index++) {
            if (servedBy[index] == own) {
                return Optional.of(draws.get(index).date());
            }
        }
        return Optional.empty();
    }

    private Optional<LocalDate> endOf(int own) {
        for (int index = 0; index < changes.size(); index++) {
            if (changes.get(index).leaving() == containers.get(own).number()) {
                return Optional.of(changeDays.get(index));
            }
        }
        return Optional.empty();
    }

    /**
     * How many whole doses of one volume a vial gives for sure.
     *
     * @param holds the liquid in the vial
     * @param dose the volume of one dose, above zero
     * @param loses what hub and needle lose each time
     */
    public static int reliableDoses(Volume holds, Volume dose, Volume loses) {
        return holds.wholeTimes(dose.plus(loses));
    }
}
