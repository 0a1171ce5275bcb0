package cyclepacket.cli;

import cyclepacket.packet.Reckoning;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "supplies",
        description = "Shows what to order and by when, and what each way to buy leaves over.",
        mixinStandardHelpOptions = true)
final class SuppliesCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient.")
    private Path plan;

    @Option(names = "--json", description = "Print the list as JSON for another program.")
    private boolean json;

    SuppliesCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Reckoning reckoning = Reckoning.of(plan);
        new Report(terminal).findings(reckoning.findings());
        if (reckoning.areSumsStopped()) {
            terminal.say("No list of supplies: a finding above touches its sums.");
            return ExitCode.STOPPED;
        }
        terminal.out().print(json ? reckoning.suppliesJson() : reckoning.suppliesTable());
        return ExitCode.DONE;
    }
}
