package cyclepacket.cli;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Severity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Says on the error stream what was found. */
final class Report {
    private final Terminal terminal;

    Report(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Every finding with its place and mend, then how many of each grade. */
    void findings(List<Finding> findings) {
        if (!findings.isEmpty()) {
            terminal.err().print(FindingText.printShort(findings));
            terminal.say(count(findings));
        }
    }

    static String count(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        for (Severity severity : Severity.values()) {
            long count = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .count();
            if (count > 0) {
                text.append(text.isEmpty() ? "" : ", ")
                        .append(count)
                        .append(' ')
                        .append(severity.word())
                        .append(count > 1 ? "s" : "");
            }
        }
        return text.isEmpty() ? "no findings" : text.toString();
    }

    /** The clock is only compared here, on the screen; no page ever shows it. */
    void preparedOnAnotherDay(Optional<LocalDate> preparedOn) {
        LocalDate today = LocalDate.now(terminal.clock());
        preparedOn
                .filter(day -> !day.equals(today))
                .ifPresent(day -> terminal.say("note: the plan says it was prepared on " + day + ", and today is "
                        + today + "; the packet counts from " + day));
    }
}
