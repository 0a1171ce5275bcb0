package cyclepacket.cli;

import cyclepacket.packet.Outcome;
import cyclepacket.packet.Press;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "demo",
        description = "Builds every example packet. All of its people, clinics and numbers are invented.",
        mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; by default the project's folder out.")
    private Optional<Path> out = Optional.empty();

    DemoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = out.orElse(terminal.home().resolve("out"));
        try (Press press = new Press(terminal.home())) {
            return all(press, folder);
        }
    }

    private int all(Press press, Path folder) throws IOException {
        int worst = ExitCode.DONE;
        for (Path plan : press.examplePlans()) {
            terminal.out().println(plan);
            terminal.out().flush();
            Outcome outcome = press.printExample(plan, folder, terminal.clock().instant());
            worst = Math.max(worst, new PacketReport(terminal).tell(outcome, true));
            terminal.out().println();
        }
        return worst;
    }
}
