package cyclepacket.cli;

import cyclepacket.packet.Outcome;
import cyclepacket.packet.Press;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "packet",
        description = "Checks a plan and writes its packet and chart copy to OUT/<plan>/issue-<n>/. "
                + "A plan with a stop writes nothing. A chart copy carries its plan: packet chart.pdf makes "
                + "the same packet again.",
        mixinStandardHelpOptions = true)
final class PacketCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient, or a chart.pdf.")
    private Path plan;

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; by default the project's folder out.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--xhtml", description = "Also keep the page between template and PDF as packet.xhtml.")
    private boolean xhtml;

    @Option(names = "--json", description = "Print packet.json for another program.")
    private boolean json;

    PacketCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = out.orElse(terminal.home().resolve("out"));
        try (Press press = new Press(terminal.home())) {
            Outcome outcome = plan.toString().endsWith(".pdf")
                    ? press.printCarried(plan, folder, xhtml, terminal.clock().instant())
                    : press.print(plan, folder, xhtml, terminal.clock().instant());
            if (json) {
                terminal.out().print(outcome.json());
            }
            return new PacketReport(terminal).tell(outcome, !json);
        }
    }
}
