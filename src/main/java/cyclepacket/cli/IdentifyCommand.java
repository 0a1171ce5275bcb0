package cyclepacket.cli;

import cyclepacket.packet.Identifying;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "identify",
        description = "Says which issue a page or a PDF is, and whether a later one retired it. "
                + "Ends with 0 for the issue in force and with 1 for any other.",
        mixinStandardHelpOptions = true)
final class IdentifyCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "CODE|FILE", description = "The code at the foot of a page, or a PDF.")
    private String codeOrFile;

    @Option(names = "--out", paramLabel = "DIR", description = "Where the registers lie; by default the folder out.")
    private Optional<Path> out = Optional.empty();

    IdentifyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Identifying known =
                Identifying.of(codeOrFile, out.orElse(terminal.home().resolve("out")));
        known.lines().forEach(terminal.out()::println);
        return known.isInForce() ? ExitCode.DONE : ExitCode.STOPPED;
    }
}
