package cyclepacket.packet;

import cyclepacket.packet.BatchLine.State;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which plans of a folder are printed.
 *
 * @param toPrint final packets to be
 * @param settled plans that are no packet, each with the reason
 */
record BatchChoice(List<Path> toPrint, List<BatchLine> settled) {
    BatchChoice {
        toPrint = List.copyOf(toPrint);
        settled = List.copyOf(settled);
    }

    static BatchChoice of(Path templates, List<Path> plans, LocalDate on, boolean all) {
        List<Seen> seen = plans.parallelStream()
                .map(plan -> Seen.of(templates, plan, on, all))
                .toList();
        Map<String, Integer> latest = new HashMap<>();
        seen.forEach(each -> latest.merge(each.id(), each.issue(), Math::max));
        List<Path> toPrint = new ArrayList<>();
        List<BatchLine> settled = new ArrayList<>();
        for (Seen each : seen) {
            if (each.isWanted() && each.issue() < latest.get(each.id())) {
                settled.add(each.line(State.LISTED, "issue " + latest.get(each.id()) + " of the same plan retires it"));
            } else if (each.isWanted()) {
                each.kept().ifPresentOrElse(settled::add, () -> toPrint.add(each.plan()));
            }
        }
        return new BatchChoice(toPrint, settled);
    }

    /**
     * What a plan says of itself; the plan is read anew when its turn comes, so that a long run holds few at a time.
     *
     * @param file plan and issue, or the file's name
     * @param id empty when it cannot be read
     * @param kept why it is no packet, whatever other plans say
     */
    private record Seen(Path plan, String file, String id, int issue, boolean isWanted, Optional<BatchLine> kept) {
        static Seen of(Path templates, Path plan, LocalDate on, boolean all) {
            try {
                return of(plan, Reckoning.of(plan).in(templates), on, all);
            } catch (IOException unreadable) {
                return unread(BatchLine.without(plan, State.FAILED, "it could not be read"));
            } catch (RuntimeException fault) {
                return unread(BatchLine.without(plan, State.FAULT, "a fault of the program: " + fault));
            }
        }

        private static Seen unread(BatchLine line) {
            return new Seen(line.plan(), line.file(), "", 0, true, Optional.of(line));
        }

        private static Seen of(Path plan, Reckoning reckoning, LocalDate on, boolean all) {
            String why = why(reckoning);
            State state = reckoning.isStopped() ? State.FAILED : State.LISTED;
            return new Seen(
                    plan,
                    BatchLine.without(plan, reckoning, state, why).file(),
                    reckoning.planAndIssue().map(Plan::id).orElse(""),
                    reckoning.planAndIssue().map(Plan::issue).orElse(0),
                    BatchChoice.isWanted(reckoning, on, all),
                    why.isEmpty() ? Optional.empty() : Optional.of(BatchLine.without(plan, reckoning, state, why)));
        }

        BatchLine line(State state, String why) {
            return new BatchLine(plan, file, state, why, "", 0, "", 0, "");
        }
    }

    /** A plan that cannot be read may have a visit that day: it is never left out without a word. */
    private static boolean isWanted(Reckoning reckoning, LocalDate on, boolean all) {
        return all
                || reckoning.planAndIssue().isEmpty()
                || reckoning.own().course().visits().stream()
                        .anyMatch(visit -> visit.date().equals(on));
    }

    private static String why(Reckoning reckoning) {
        if (reckoning.planAndIssue().isEmpty() || reckoning.isStopped()) {
            return Batch.firstStop(reckoning.findings());
        }
        return reckoning.isDraft() ? "a draft: " + String.join(", and ", reckoning.draftReasons()) : "";
    }
}
