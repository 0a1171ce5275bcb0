package cyclepacket.packet;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * What became of one plan of a print run.
 *
 * @param file plan and issue, or the name of a file that cannot be read
 * @param why one sentence without a full stop; empty for a packet
 * @param initials for the list on top
 */
public record BatchLine(
        Path plan,
        String file,
        State state,
        String why,
        String id,
        int issue,
        String initials,
        int pages,
        String code) {
    public BatchLine {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(initials, "initials");
        Objects.requireNonNull(code, "code");
    }

    /** How it ended. */
    public enum State {
        /** A final packet lies in its folder. */
        PRINTED,
        /** Nothing is wrong with it, and it is no packet: a draft, or an issue that a later one retires. */
        LISTED,
        /** It could not be read, or a stop forbids it. */
        FAILED,
        /** The program itself failed on it. */
        FAULT
    }

    static BatchLine without(Path plan, State state, String why) {
        return new BatchLine(plan, plan.getFileName().toString(), state, why, "", 0, "", 0, "");
    }

    /** A file may be named after a person; a plan that can be read is named by its id. */
    static BatchLine without(Path plan, Reckoning reckoning, State state, String why) {
        BatchLine line = without(plan, state, why);
        return new BatchLine(plan, name(reckoning).orElse(line.file()), state, why, "", 0, "", 0, "");
    }

    static Optional<String> name(Reckoning reckoning) {
        return reckoning.planAndIssue().map(own -> own.id() + ", issue " + own.issue());
    }

    public boolean isPrinted() {
        return state == State.PRINTED;
    }
}
