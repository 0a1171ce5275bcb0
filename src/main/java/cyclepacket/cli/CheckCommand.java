package cyclepacket.cli;

import cyclepacket.packet.Reckoning;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "check",
        description = "Says everything that is wrong with a plan, and how to mend it. Writes nothing.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient.")
    private Path plan;

    @Option(names = "--json", description = "Print the findings for another program.")
    private boolean json;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Reckoning reckoning = Reckoning.of(plan).in(terminal.home().resolve("templates"));
        if (json) {
            terminal.out().print(reckoning.findingsJson());
        } else {
            terminal.out().print(cyclepacket.finding.FindingText.printShort(reckoning.findings()));
            terminal.out().println(Report.count(reckoning.findings()));
        }
        return reckoning.isStopped() ? ExitCode.STOPPED : ExitCode.DONE;
    }
}
