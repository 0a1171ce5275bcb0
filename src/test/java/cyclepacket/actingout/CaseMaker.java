package cyclepacket.actingout;

import cyclepacket.plan.Device.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes random plans: pens of both kinds, doses that change and split, boxes small and large, and a past or none. */
final class CaseMaker {
    static final LocalDate FIRST_EVENING = LocalDate.parse("2027-04-02");

    private final long seed;
    private final Chance chance;
    private final Pen pen;
    private final boolean onMarks;

    private CaseMaker(long seed) {
        this.seed = seed;
        this.chance = Chance.seeded(seed);
        this.pen = pen();
        this.onMarks = chance.in100(35);
    }

    static Case make(long seed) {
        CaseMaker maker = new CaseMaker(seed);
        List<Evening> evenings = maker.evenings();
        List<Box> boxes = maker.boxes(evenings);
        List<Long> truth = new Worlds(maker.chance, maker.pen, boxes).any(maker.onMarks);
        Case plan = new Case(seed, maker.pen, boxes, maker.started(boxes.get(0)), evenings, truth);
        return maker.chance.in100(55) ? maker.withPast(plan) : plan;
    }

    private Pen pen() {
        long step = chance.oneOf(12_500, 12_500, 25_000, 5_000, 500);
        long most = step * chance.from(8, 36);
        return new Pen(
                chance.in100(50) ? Window.OWED : Window.LEFT,
                step * chance.oneOf(1, 1, 1, 2),
                step,
                most,
                chance.in100(60) ? 28 : chance.from(1, 6),
                chance.in100(30),
                chance.in100(40));
    }

    private List<Evening> evenings() {
        int count = chance.from(4, 13);
        List<Evening> evenings = new ArrayList<>();
        long dose = dose();
        for (int day = 0; day < count; day++) {
            if (chance.in100(12)) {
                dose = dose();
            }
            evenings.add(Evening.toCome(FIRST_EVENING.plusDays(day), pen.settingsOf(dose)));
        }
        return evenings;
    }

    /** A dose of which every part can be dialled; one in three is larger than the dial. */
    private long dose() {
        while (true) {
            boolean large = chance.in100(35);
            long dose = large
                    ? chance.markFrom(pen.dialMost() + pen.step(), pen.dialMost() * 5 / 2, pen.step())
                    : chance.markFrom(pen.dialLeast(), pen.dialMost(), pen.step());
            if (pen.settingsOf(dose).stream().allMatch(part -> part >= pen.dialLeast())) {
                return dose;
            }
        }
    }

    private List<Box> boxes(List<Evening> evenings) {
        long need = evenings.stream().mapToLong(Evening::dose).sum();
        long usual = Math.max(need / chance.from(1, 8), 3 * pen.step());
        int count = chance.from(1, 7);
        boolean small = chance.in100(15);
        List<Box> boxes = new ArrayList<>();
        for (int box = 0; box < count; box++) {
            boxes.add(box(small ? evenings.get(0).dose() / chance.from(2, 4) + 2 * pen.step() : usual));
        }
        return boxes;
    }

    private Box box(long usual) {
        long label = Math.max(usual * chance.oneOf(50, 100, 100, 150) / 100, 2 * pen.step());
        long least = onMarks ? chance.markFrom(label, label, pen.step()) : label - chance.from(0L, pen.step() / 2);
        long over = label * chance.oneOf(0, 3, 10, 15, 20, 25) / 100;
        long most = least + (onMarks ? over - over % pen.step() : over);
        return new Box(least, most);
    }

    private Optional<Started> started(Box first) {
        if (!chance.in100(15)) {
            return Optional.empty();
        }
        long most = first.least() - pen.step();
        long used = onMarks ? chance.markFrom(0, most, pen.step()) : chance.from(0, most);
        return Optional.of(new Started(FIRST_EVENING.minusDays(chance.from(1, 5)), used));
    }

    private Case withPast(Case plan) {
        PastMaker past = new PastMaker(chance, pen, onMarks);
        List<Evening> lived =
                past.live(plan.evenings(), chance.from(1, plan.evenings().size()));
        Case told = new Case(seed, pen, plan.boxes(), plan.started(), lived, plan.truth());
        int count = told.pastEvenings();
        while (count > 0 && !told.isPossible(told.live(told.truth()))) {
            count--;
            told = told.withPast(count);
        }
        return told;
    }
}
