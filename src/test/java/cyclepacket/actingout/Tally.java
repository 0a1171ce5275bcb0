package cyclepacket.actingout;

import cyclepacket.actingout.Deed.Does;
import cyclepacket.plan.Device.Window;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Counts the plans that met each situation, so that a generator that stops making one is noticed. */
final class Tally {
    private final Map<Met, Integer> counts = new EnumMap<>(Met.class);

    /** The situations, each with the least number of plans in ten thousand that must meet it. */
    enum Met {
        OWED_PEN(4000),
        LEFT_PEN(4000),
        SPLIT_DOSE(3000),
        DOSE_CHANGE(4000),
        STARTED_BEFORE(1000),
        IN_USE_LIMIT(1000),
        DAY_AFTER_RULE(2000),
        RECORD(3000),
        UNKNOWN(500),
        UNKNOWN_WITH_AN_END(50),
        READING(500),
        MISSING_READ_BACK(400),
        END_NOT_WRITTEN(300),
        TWO_ENDS_IN_ONE_EVENING(800),
        TWO_STOPS_IN_ONE_SETTING(800),
        NOTHING_CAME_OUT(500),
        SMALL_REMAINDER(300),
        PARTIAL(200),
        MISSED(300),
        OTHER_NUMBER(300),
        BLOCKED_NEEDLE(100),
        LOST(500),
        RECORD_WITH_IN_USE_LIMIT(200),
        RUNS_OUT(1000),
        LASTS(1000);

        private final int leastInTenThousand;

        Met(int leastInTenThousand) {
            this.leastInTenThousand = leastInTenThousand;
        }
    }

    void count(Case plan, Story story) {
        add(Met.OWED_PEN, plan.pen().window() == Window.OWED);
        add(Met.LEFT_PEN, plan.pen().window() == Window.LEFT);
        add(
                Met.SPLIT_DOSE,
                plan.evenings().stream().anyMatch(evening -> evening.settings().size() > 1));
        add(Met.STARTED_BEFORE, plan.started().isPresent());
        add(
                Met.DOSE_CHANGE,
                plan.evenings().stream().map(Evening::dose).distinct().count() > 1);
        add(Met.DAY_AFTER_RULE, plan.pen().dayAfter());
        add(Met.IN_USE_LIMIT, story.ends().stream().anyMatch(End::inUseLimit));
        add(
                Met.TWO_ENDS_IN_ONE_EVENING,
                ends(story) > story.ends().stream().map(End::date).distinct().count());
        add(
                Met.TWO_STOPS_IN_ONE_SETTING,
                story.acts().stream().anyMatch(act -> act.shown().size() > 1));
        add(Met.NOTHING_CAME_OUT, story.acts().stream().anyMatch(act -> cameToNothing(plan, act)));
        add(
                Met.SMALL_REMAINDER,
                story.ends().stream()
                        .anyMatch(end ->
                                !end.inUseLimit() && end.owed() < plan.pen().dialLeast()));
        add(Met.RUNS_OUT, story.firstShort().isPresent());
        add(Met.LASTS, story.firstShort().isEmpty());
        countPast(plan, story);
    }

    private void countPast(Case plan, Story story) {
        List<Story.Act> past =
                story.acts().stream().filter(act -> plan.isPast(act.date())).toList();
        List<Story.Act> stops =
                past.stream().filter(act -> !act.shown().isEmpty()).toList();
        add(Met.RECORD, plan.hasPast());
        add(Met.UNKNOWN, did(past, Does.UNKNOWN));
        add(Met.UNKNOWN_WITH_AN_END, did(stops, Does.UNKNOWN));
        add(Met.MISSED, did(past, Does.MISSED));
        add(Met.OTHER_NUMBER, did(past, Does.OTHER_NUMBER));
        add(Met.BLOCKED_NEEDLE, did(past, Does.BLOCKED_NEEDLE));
        add(Met.PARTIAL, did(stops, Does.GIVES_UP_AT_STOP));
        add(Met.LOST, past.stream().anyMatch(act -> act.lostBefore() + act.lostWithin() + act.lostAfter() > 0));
        add(
                Met.READING,
                stops.stream()
                        .anyMatch(act -> act.deed().writes().window()
                                && act.deed().writes().readBack()));
        add(
                Met.MISSING_READ_BACK,
                stops.stream()
                        .anyMatch(act -> act.deed().writes().window()
                                && !act.deed().writes().readBack()));
        add(
                Met.END_NOT_WRITTEN,
                stops.stream().anyMatch(act -> !act.deed().writes().window()));
        add(
                Met.RECORD_WITH_IN_USE_LIMIT,
                plan.hasPast() && story.ends().stream().anyMatch(End::inUseLimit));
    }

    private static boolean did(List<Story.Act> acts, Does deed) {
        return acts.stream().anyMatch(act -> act.deed().does() == deed);
    }

    private static boolean cameToNothing(Case plan, Story.Act act) {
        long nothing = plan.pen().window() == Window.OWED ? act.dialled() : 0;
        return !act.shown().isEmpty() && act.shown().get(0) == nothing;
    }

    private static long ends(Story story) {
        return story.ends().size();
    }

    private void add(Met met, boolean happened) {
        counts.merge(met, happened ? 1 : 0, Integer::sum);
    }

    /** Situations met by too few of {@code plans}. */
    List<String> missed(int plans) {
        return counts.entrySet().stream()
                .filter(met -> met.getValue() * 10_000L < (long) met.getKey().leastInTenThousand * plans)
                .map(met -> met.getKey() + " only " + met.getValue())
                .toList();
    }

    @Override
    public String toString() {
        return counts.toString();
    }
}
