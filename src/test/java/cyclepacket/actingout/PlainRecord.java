package cyclepacket.actingout;

/** Records whose proof the rules state in full: nothing lost, nothing unknown, no number of a blocked needle. */
final class PlainRecord {
    private PlainRecord() {}

    static boolean is(Case plan) {
        return plan.live(plan.truth()).acts().stream()
                .filter(act -> plan.isPast(act.date()))
                .allMatch(PlainRecord::isPlain);
    }

    private static boolean isPlain(Story.Act act) {
        boolean odd = act.deed().does() == Deed.Does.UNKNOWN || act.deed().does() == Deed.Does.BLOCKED_NEEDLE;
        boolean lost = act.lostBefore() + act.lostWithin() + act.lostAfter() > 0;
        boolean gaveUpUnconfirmed = act.drawn() < act.dialled()
                && act.deed().does() != Deed.Does.MISSED
                && !act.deed().writes().readBack();
        return !odd && !lost && !gaveUpUnconfirmed;
    }
}
