package cyclepacket.cli;

import cyclepacket.packet.Outcome;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells how a packet came out. */
final class PacketReport {
    private final Terminal terminal;

    PacketReport(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * Says what was found on the error stream and, unless another program is listening, what was written.
     *
     * @return the exit code
     */
    int tell(Outcome outcome, boolean toPerson) {
        Report report = new Report(terminal);
        report.findings(outcome.findings());
        if (outcome.written().isEmpty()) {
            terminal.say("No packet was written.");
            outcome.earlier().ifPresent(this::sayEarlier);
            return ExitCode.STOPPED;
        }
        report.preparedOnAnotherDay(outcome.preparedOn());
        Outcome.Written written = outcome.written().get();
        if (toPerson) {
            terminal.out().println(written.folder().resolve("packet.pdf") + "   for the patient");
            if (Files.exists(written.folder().resolve("cards.pdf"))) {
                terminal.out().println(written.folder().resolve("cards.pdf") + "   for the patient");
            }
            terminal.out().println(written.folder().resolve("chart.pdf") + "   for the clinic");
            terminal.out()
                    .println("code " + written.code() + (written.isDraft() ? "   DRAFT" : "   final")
                            + (written.isReprint() ? "   printed before: the same code again, no new issue" : ""));
            written.draftReasons().forEach(reason -> terminal.out().println("   draft because " + reason));
        }
        return ExitCode.DONE;
    }

    private void sayEarlier(Path folder) {
        terminal.say("Do not hand out the packet of an earlier run in " + folder);
    }
}
