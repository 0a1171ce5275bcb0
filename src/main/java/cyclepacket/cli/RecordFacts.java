package cyclepacket.cli;

import cyclepacket.packet.Box;
import cyclepacket.packet.Happening;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that say what happened. */
final class RecordFacts {
    @Option(names = "--given", paramLabel = "AMOUNT", description = "All that reached the patient, or unknown.")
    private Optional<String> given = Optional.empty();

    @Option(names = "--missed", description = "The evening passed without this injection.")
    private boolean missed;

    @Option(names = "--window", paramLabel = "NUMBER", description = "The number in the window when the pen stopped.")
    private List<String> windows = List.of();

    @Option(names = "--plunger", paramLabel = "WHERE", description = "end or not-end.")
    private Optional<String> plunger = Optional.empty();

    @Option(names = "--read-back", description = "The number was read aloud and repeated.")
    private boolean readBack;

    @Option(
            names = "--dialled",
            paramLabel = "AMOUNT",
            description = "The number that was set, if not the ordered one.")
    private Optional<String> dialled = Optional.empty();

    @Option(names = "--setting", paramLabel = "N", description = "Which injection of that evening, from 1.")
    private Optional<Integer> setting = Optional.empty();

    @Option(names = "--lost", paramLabel = "AMOUNT", description = "Medicine that left the box and reached nobody.")
    private Optional<String> lost = Optional.empty();

    @Option(names = "--late-at", paramLabel = "DAYTHOUR", description = "When a late dose was given: 2027-03-09T07:05.")
    private Optional<String> at = Optional.empty();

    @Option(
            names = "--instead-of",
            paramLabel = "ID",
            description = "The medicine that was due; this one was a mistake.")
    private Optional<String> insteadOf = Optional.empty();

    @Option(names = "--loaded", paramLabel = "BOX", description = "The number of the box that was loaded.")
    private Optional<Integer> loaded = Optional.empty();

    @Option(names = "--received", paramLabel = "SIZE", description = "A box of this size came.")
    private Optional<String> received = Optional.empty();

    @Option(names = "--count", paramLabel = "N", description = "How many alike came.")
    private Optional<Integer> count = Optional.empty();

    @Option(names = "--lot", paramLabel = "LOT", description = "The lot on the box.")
    private Optional<String> lot = Optional.empty();

    @Option(names = "--expires", paramLabel = "DATE", description = "The last day on the box.")
    private Optional<LocalDate> expires = Optional.empty();

    @Option(names = "--discarded", paramLabel = "BOX", description = "The number of a box that was thrown away.")
    private Optional<Integer> discarded = Optional.empty();

    Optional<String> received() {
        return received;
    }

    Optional<Integer> discarded() {
        return discarded;
    }

    Optional<String> insteadOf() {
        return insteadOf;
    }

    Box box(LocalDate day) {
        return new Box(received.orElseThrow(), count, lot, expires, day);
    }

    Happening happening(LocalDate evening, String medicine, Optional<String> reason, Optional<String> by) {
        return new Happening(
                evening, medicine, setting, dialled, given, missed, windows, plunger, readBack, lost, at, insteadOf,
                loaded, reason, by);
    }
}
