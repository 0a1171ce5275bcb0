package cyclepacket.cli;

import cyclepacket.packet.Comparing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "compare",
        description = "Shows every day on which two plans, issues or PDFs differ, as a patient reads them.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "A", description = "A plan, a PDF, the folder of an issue, or a code.")
    private String before;

    @Parameters(index = "1", paramLabel = "B", description = "Another one.")
    private String now;

    @Option(names = "--out", paramLabel = "DIR", description = "Where the registers lie; by default the folder out.")
    private Optional<Path> out = Optional.empty();

    CompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Comparing both =
                new Comparing(terminal.home(), out.orElse(terminal.home().resolve("out")));
        terminal.out().println("before: " + both.title(before));
        terminal.out().println("now:    " + both.title(now));
        String table = both.table(before, now);
        terminal.out().print(table.isEmpty() ? "No day differs.\n" : table);
        return ExitCode.DONE;
    }
}
