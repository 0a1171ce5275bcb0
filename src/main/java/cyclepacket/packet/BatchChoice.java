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
        Map<String, Integer> latest = new HashMap<>();
        Map<Path, Reckoning> read = new HashMap<>();
        List<BatchLine> settled = new ArrayList<>();
        for (Path plan : plans) {
            try {
                Reckoning reckoning = Reckoning.of(plan).in(templates);
                read.put(plan, reckoning);
                reckoning.planAndIssue().ifPresent(own -> latest.merge(own.id(), own.issue(), Math::max));
            } catch (IOException unreadable) {
                settled.add(BatchLine.without(plan, State.FAILED, "it could not be read"));
            } catch (RuntimeException fault) {
                settled.add(BatchLine.without(plan, State.FAULT, "a fault of the program: " + fault));
            }
        }
        List<Path> toPrint = new ArrayList<>();
        for (Path plan : plans) {
            if (read.containsKey(plan) && isWanted(read.get(plan), on, all)) {
                String why = why(read.get(plan), latest);
                if (why.isEmpty()) {
                    toPrint.add(plan);
                } else {
                    boolean isStopped = read.get(plan).isStopped() && !why.endsWith("retires it");
                    settled.add(BatchLine.without(plan, read.get(plan), isStopped ? State.FAILED : State.LISTED, why));
                }
            }
        }
        return new BatchChoice(toPrint, settled);
    }

    /** A plan that cannot be read may have a visit that day: it is never left out without a word. */
    private static boolean isWanted(Reckoning reckoning, LocalDate on, boolean all) {
        return all
                || reckoning.planAndIssue().isEmpty()
                || reckoning.own().course().visits().stream()
                        .anyMatch(visit -> visit.date().equals(on));
    }

    private static String why(Reckoning reckoning, Map<String, Integer> latest) {
        if (reckoning.planAndIssue().isEmpty()) {
            return Batch.firstStop(reckoning.findings());
        }
        Plan own = reckoning.own().files().plan();
        if (own.issue() < latest.get(own.id())) {
            return "issue " + latest.get(own.id()) + " of the same plan retires it";
        }
        if (reckoning.isStopped()) {
            return Batch.firstStop(reckoning.findings());
        }
        return reckoning.isDraft() ? "a draft: " + String.join(", and ", reckoning.draftReasons()) : "";
    }
}
