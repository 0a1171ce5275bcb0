package cyclepacket.ledger;

import cyclepacket.plan.Device.Window;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.plan.RecordLine.Plunger;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * What one line of the record means for one dial setting of a pen.
 *
 * @param drawn what left the containers, or at most left them when {@code unknown} is above zero
 * @param unknown how much of {@code drawn} may never have been drawn
 */
record RecordedSetting(
        Dose dialled, Dose drawn, Optional<Dose> given, Dose unknown, boolean provesNoEnd, List<Dose> stopWindows) {

    /** Reads a line; {@code doubt} is told of everything that cannot be so. */
    static RecordedSetting of(
            RecordLine line,
            Optional<Dose> ordered,
            Window window,
            DoseUnit unit,
            BiConsumer<RecordDoubt.Kind, String> doubt) {
        Dose zero = Dose.zero(unit);
        Dose dialled =
                line.dialled().or(() -> ordered).or(() -> line.given().known()).orElse(zero);
        Dose lost = line.lost().orElse(zero);
        List<Dose> stops = stopWindows(line, window, dialled, doubt);
        boolean proves = stops.isEmpty() && provesNoEnd(line, window);
        Dose fromOld = fromStopped(stops, window, dialled, doubt);
        if (!stops.isEmpty() && line.lost().isPresent()) {
            doubt.accept(RecordDoubt.Kind.LOSS_WITH_STOP, lost.toString());
        }
        if (line.given() instanceof Given.Unknown) {
            return new RecordedSetting(
                    dialled, dialled.plus(lost), Optional.empty(), dialled.minus(fromOld), false, stops);
        }
        Dose given = given(line, dialled, proves, !stops.isEmpty(), doubt);
        Dose least = proves && window == Window.OWED ? dialled : fromOld;
        if (given.isMoreThan(dialled)) {
            doubt.accept(RecordDoubt.Kind.GIVEN_ABOVE_DIALLED, given + " of " + dialled);
        } else if (given.plus(lost).isLessThan(least)) {
            doubt.accept(RecordDoubt.Kind.GIVEN_BELOW_OLD, given + " where " + least + " came out");
        }
        return new RecordedSetting(dialled, given.plus(lost).max(least), Optional.of(given), zero, proves, stops);
    }

    private static Dose given(
            RecordLine line,
            Dose dialled,
            boolean proves,
            boolean stopped,
            BiConsumer<RecordDoubt.Kind, String> doubt) {
        Optional<Dose> known = line.given().known();
        if (known.isEmpty() && !proves) {
            doubt.accept(
                    stopped ? RecordDoubt.Kind.WINDOW_WITHOUT_GIVEN : RecordDoubt.Kind.SAYS_NOTHING,
                    dialled.toString());
        }
        return known.orElse(dialled);
    }

    /** A number of zero alone proves it on a pen that shows what is owed; having dialled it all does on the other. */
    private static boolean provesNoEnd(RecordLine line, Window window) {
        return switch (window) {
            case OWED ->
                !line.windows().isEmpty()
                        && line.windows().stream().allMatch(Dose::isZero)
                        && line.plunger().filter(Plunger.NOT_END::equals).isEmpty();
            case LEFT -> line.dialled().isPresent() && line.windows().isEmpty();
        };
    }

    private static List<Dose> stopWindows(
            RecordLine line, Window window, Dose dialled, BiConsumer<RecordDoubt.Kind, String> doubt) {
        if (line.plunger().filter(Plunger.NOT_END::equals).isPresent()) {
            return List.of();
        }
        List<Dose> stops = new ArrayList<>(line.windows());
        if (window == Window.OWED) {
            // A zero says that the setting ran through; only the numbers before it are stops.
            stops.removeIf(Dose::isZero);
            boolean wholeSettingLeft = !stops.isEmpty() && stops.get(0).equals(dialled);
            if (wholeSettingLeft && line.plunger().isEmpty()) {
                doubt.accept(RecordDoubt.Kind.PLUNGER_NOT_SEEN, dialled.toString());
            }
        }
        return stops;
    }

    /** What the stopped containers gave together. */
    private static Dose fromStopped(
            List<Dose> stops, Window window, Dose dialled, BiConsumer<RecordDoubt.Kind, String> doubt) {
        Dose given = Dose.zero(dialled.unit());
        Dose limit = dialled;
        for (Dose shown : stops) {
            if (shown.isMoreThan(limit) || (window == Window.LEFT && shown.equals(limit))) {
                doubt.accept(RecordDoubt.Kind.WINDOW_ABOVE_DIALLED, shown + " of " + limit);
            }
            given = window == Window.OWED ? dialled.minus(shown.min(dialled)) : given.plus(shown);
            limit = window == Window.OWED ? shown : limit.minus(shown.min(limit));
        }
        return given.min(dialled);
    }

    /** Everything drawn when each container stopped. */
    List<Draw.Stop> stops(Dose before, Window window, boolean isConfirmed) {
        List<Draw.Stop> stops = new ArrayList<>();
        Dose total = before;
        for (Dose shown : stopWindows) {
            total = window == Window.OWED ? before.plus(dialled.minus(shown.min(dialled))) : total.plus(shown);
            stops.add(new Draw.Stop(shown, total, isConfirmed));
        }
        return stops;
    }
}
