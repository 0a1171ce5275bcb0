package cyclepacket.packet;

import cyclepacket.intake.FlowLine;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What somebody told about one evening, as it was typed; the plan's own reader judges the values.
 *
 * @param given an amount, or {@code unknown}
 * @param windows each number at which the pen stopped
 * @param at when a late dose was really given
 * @param insteadOf the medicine that was due when this one was taken by mistake
 * @param loaded the box that was loaded
 * @param reason why a line stands that looks impossible
 * @param by who accepted it
 */
public record Happening(
        LocalDate evening,
        String medicine,
        Optional<Integer> setting,
        Optional<String> dialled,
        Optional<String> given,
        boolean missed,
        List<String> windows,
        Optional<String> plunger,
        boolean readBack,
        Optional<String> lost,
        Optional<String> at,
        Optional<String> insteadOf,
        Optional<Integer> loaded,
        Optional<String> reason,
        Optional<String> by) {
    private static final String AMOUNT = "\\d+(\\.\\d{1,3})?( [a-z]+)?";

    public Happening {
        Objects.requireNonNull(evening, "evening");
        Objects.requireNonNull(medicine, "medicine");
        windows = List.copyOf(windows);
        if (given.isEmpty() && !missed && lost.isEmpty() && loaded.isEmpty()) {
            throw new Unclear("This does not say what happened: --given, --missed, --lost or --loaded?");
        }
        dialled.ifPresent(Happening::requireAmount);
        given.filter(amount -> !amount.equals("unknown")).ifPresent(Happening::requireAmount);
        windows.forEach(Happening::requireAmount);
        lost.ifPresent(Happening::requireAmount);
    }

    static void requireAmount(String amount) {
        if (!amount.matches(AMOUNT)) {
            throw new Unclear("\"" + amount + "\" is not an amount; write for example 187.5.");
        }
    }

    /** The line for the plan. */
    String line(boolean inQuestion) {
        FlowLine line = new FlowLine().plain("date", evening).plain("medicine", medicine);
        setting.filter(number -> number > 1).ifPresent(number -> line.plain("setting", number));
        dialled.ifPresent(amount -> line.plain("dialled", amount));
        if (missed) {
            line.plain("missed", true);
        }
        given.ifPresent(amount -> line.plain("given", amount));
        if (windows.size() == 1) {
            line.plain("window", windows.get(0));
        } else if (!windows.isEmpty()) {
            line.plain("window", "[" + String.join(", ", windows) + "]");
        }
        plunger.ifPresent(where -> line.text("plunger", where));
        if (readBack) {
            line.plain("read-back", true);
        }
        lost.ifPresent(amount -> line.plain("lost", amount));
        at.ifPresent(hour -> line.text("at", hour));
        insteadOf.ifPresent(due -> line.text("instead-of", due));
        loaded.ifPresent(box -> line.plain("loaded", box));
        if (inQuestion) {
            line.plain("in-question", true);
        }
        reason.ifPresent(why -> line.text("reason", why));
        by.ifPresent(who -> line.text("by", who));
        return line.toString();
    }
}
