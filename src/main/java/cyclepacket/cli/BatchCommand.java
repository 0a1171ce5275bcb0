package cyclepacket.cli;

import cyclepacket.packet.Batch;
import cyclepacket.packet.BatchLine;
import cyclepacket.packet.BatchLine.State;
import cyclepacket.packet.BatchReport;
import cyclepacket.packet.Unclear;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "batch",
        description =
                "Prints every countersigned plan of a folder that has a visit on a day, on all cores, with a separator "
                        + "sheet before each and a cover list on top. What is no packet is listed with the reason. "
                        + "Ends with 1 when a plan failed, and the rest is printed all the same.",
        mixinStandardHelpOptions = true)
final class BatchCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "DIR", description = "A folder with plans.")
    private Path folder;

    @Option(names = "--on", required = true, paramLabel = "DATE", description = "The day of the visits.")
    private LocalDate on;

    @Option(names = "--all", description = "Every plan, whether it has a visit that day or not.")
    private boolean all;

    @Option(names = "--workers", paramLabel = "N", description = "How many at a time; by default one a core.")
    private Optional<Integer> workers = Optional.empty();

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; by default the project's folder out.")
    private Optional<Path> out = Optional.empty();

    BatchCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new Unclear(folder + " is no folder; name the one with the plans, for example plans/patients.");
        }
        List<Path> plans = Batch.plansIn(folder);
        // Only a real terminal can draw over a line; a file or a pipe gets one line a plan.
        Progress progress = new Progress(terminal, System.console() != null);
        int cores = workers.orElse(Runtime.getRuntime().availableProcessors());
        Batch batch = new Batch(
                terminal.home(),
                out.orElse(terminal.home().resolve("out")),
                on,
                terminal.clock().instant(),
                Math.max(1, cores));
        BatchReport report = batch.run(plans, all, progress);
        progress.close();
        return tell(plans.size(), report);
    }

    private int tell(int plans, BatchReport report) {
        report.lines().stream().filter(line -> !line.isPrinted()).forEach(this::other);
        long failed = report.count(State.FAILED) + report.count(State.FAULT);
        terminal.out()
                .println(plans + " plans in the folder: " + report.count(State.PRINTED) + " printed, "
                        + report.count(State.LISTED) + " listed, " + failed + " failed, "
                        + (plans - report.lines().size()) + " without a visit on " + on + ".");
        terminal.out().println(report.folder() + "   print this folder in the order of its names");
        if (report.count(State.FAULT) > 0) {
            return ExitCode.FAULT;
        }
        return failed > 0 ? ExitCode.STOPPED : ExitCode.DONE;
    }

    private void other(BatchLine line) {
        String state = line.state() == State.LISTED ? "listed" : "FAILED";
        terminal.out().println(state + "  " + line.file() + ": " + line.why());
    }
}
