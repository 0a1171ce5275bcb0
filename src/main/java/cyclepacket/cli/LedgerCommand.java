package cyclepacket.cli;

import cyclepacket.packet.Reckoning;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "ledger",
        description = "Shows which cartridge gives which dose, and on which evening it may run dry.",
        mixinStandardHelpOptions = true)
final class LedgerCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient.")
    private Path plan;

    @ArgGroup
    private Form form = new Form();

    /** For a person by default. */
    static final class Form {
        @Option(names = "--json", description = "Print the ledger as JSON for another program.")
        private boolean json;

        @Option(names = "--csv", description = "Print the ledger as comma-separated values.")
        private boolean csv;
    }

    LedgerCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Reckoning reckoning = Reckoning.of(plan);
        new Report(terminal).findings(reckoning.findings());
        if (reckoning.areSumsStopped()) {
            terminal.say("No ledger: a finding above touches its sums.");
            return ExitCode.STOPPED;
        }
        if (form.json) {
            terminal.out().print(reckoning.ledgerJson());
        } else if (form.csv) {
            terminal.out().print(reckoning.ledgerCsv());
        } else {
            terminal.out().print(reckoning.ledgerTable());
        }
        return ExitCode.DONE;
    }
}
