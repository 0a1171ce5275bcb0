package cyclepacket.cli;

import cyclepacket.packet.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** The options that say what changes. */
final class ReviseChanges {
    @Option(names = "--dose", paramLabel = "MEDICINE=AMOUNT@DAY", description = "Another amount a day from a day on.")
    private List<String> doses = List.of();

    @Option(names = "--hold", paramLabel = "MEDICINE@DATE[..DATE]", description = "No injection on these evenings.")
    private List<String> holds = List.of();

    @Option(names = "--stop", paramLabel = "MEDICINE@DATE", description = "No more of it from a date on.")
    private List<String> stops = List.of();

    @Option(names = "--start", paramLabel = "MEDICINE@DATE", description = "It begins, or begins again, on a date.")
    private List<String> starts = List.of();

    @Option(
            names = "--anchor",
            paramLabel = "ANCHOR=DAY",
            description = "A planned day, for example R=2027-03-15T08:30.")
    private List<String> anchors = List.of();

    @Option(names = "--call", paramLabel = "ANCHOR=DAY", description = "A day that was told, for example the trigger.")
    private List<String> calls = List.of();

    @Option(names = "--hour", paramLabel = "NAME=HH:MM@DATE", description = "Another clock time from a date on.")
    private List<String> hours = List.of();

    @Option(names = "--swap", paramLabel = "OLD=NEW@DATE", description = "Another product; give its --dose too.")
    private List<String> swaps = List.of();

    @Option(names = "--cancel", paramLabel = "DATE", description = "The cycle ends: nothing from this date on.")
    private Optional<String> cancel = Optional.empty();

    List<Change> all() {
        List<Change> all = new ArrayList<>();
        add(all, anchors, Change::anchor);
        add(all, calls, Change::call);
        add(all, swaps, Change::swap);
        add(all, doses, Change::dose);
        add(all, holds, Change::hold);
        add(all, stops, Change::stop);
        add(all, starts, Change::start);
        add(all, hours, Change::hour);
        cancel.ifPresent(day -> all.add(Change.cancel(day)));
        return all;
    }

    private static void add(List<Change> all, List<String> typed, Function<String, Change> read) {
        typed.stream().map(read).forEach(all::add);
    }
}
