package cyclepacket.cli;

import cyclepacket.packet.Revise;
import cyclepacket.packet.Revising;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "revise",
        description =
                "Makes the next issue of a plan from what was given: raises the issue number, names the issue it retires, "
                        + "shows every day before and after, and writes the plan when you say yes. Countersign and overrides lapse.",
        footerHeading = "%nFor example:%n",
        footer = {
            "  ... PLAN --order ORD-1192 --by NAME --to \"the patient\" --on 2027-03-09 --read-back \\",
            "      --dose fsh-pen=212.5@2027-03-09 --anchor R=2027-03-15T08:30"
        },
        mixinStandardHelpOptions = true)
final class ReviseCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient.")
    private Path plan;

    @Option(names = "--order", required = true, paramLabel = "REF", description = "The reference of the order.")
    private String order;

    @Option(names = "--ordered-by", paramLabel = "NAME", description = "The prescriber; by default as before.")
    private Optional<String> orderedBy = Optional.empty();

    @Option(names = "--ordered-on", paramLabel = "DATE", description = "The day of the order; by default --on.")
    private Optional<LocalDate> orderedOn = Optional.empty();

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who prepares this issue.")
    private String by;

    @Option(names = "--called-by", paramLabel = "NAME", description = "Who called; by default who prepares.")
    private Optional<String> calledBy = Optional.empty();

    @Option(names = "--to", required = true, paramLabel = "WHOM", description = "Who took the call.")
    private String to;

    @Option(names = "--on", paramLabel = "DATE", description = "The day of the call; by default today.")
    private Optional<LocalDate> on = Optional.empty();

    @Option(names = "--read-back", description = "Everything was read back on the phone.")
    private boolean readBack;

    @ArgGroup(validate = false, heading = "What changes (each may be given several times):%n")
    private ReviseChanges changes = new ReviseChanges();

    @Option(names = "--yes", description = "Write without asking, for scripts.")
    private boolean yes;

    @Option(names = "--out", paramLabel = "DIR", description = "Where the register lies; by default the folder out.")
    private Optional<Path> out = Optional.empty();

    ReviseCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Revise revise = new Revise(
                order,
                orderedBy,
                orderedOn,
                by,
                calledBy,
                to,
                on.orElse(LocalDate.now(terminal.clock())),
                readBack,
                changes.all());
        Path folder = out.orElse(terminal.home().resolve("out"));
        Revising next = Revising.of(plan, folder, terminal.home(), revise);
        new Report(terminal).findings(next.findings());
        if (next.isStopped()) {
            terminal.say("Nothing was written; the lines above are those of the plan as it would be. Mend what stops"
                    + " first. Evenings that nobody told of: ./cyclepacket record");
            return ExitCode.STOPPED;
        }
        show(next);
        if (!yes && !isConfirmed(next)) {
            terminal.say("Nothing was written.");
            return ExitCode.STOPPED;
        }
        next.write();
        terminal.out()
                .println("Written: issue " + next.issue() + ", replaces issue " + next.replaces()
                        + ". Next: ./cyclepacket countersign, then ./cyclepacket packet.");
        return ExitCode.DONE;
    }

    private void show(Revising next) {
        next.doubts().forEach(doubt -> terminal.say("note: " + doubt));
        if (!readBack) {
            terminal.say("note: nobody read this back yet; say --read-back once it was");
        }
        terminal.out()
                .println("From issue " + next.replaces() + " to issue " + next.issue() + ", days from " + next.on()
                        + " on that differ:");
        terminal.out().print(next.table().isEmpty() ? "   none\n" : next.table());
        next.teachAgain().forEach(terminal.out()::println);
        terminal.out().println("On the phone:");
        next.say().forEach(sentence -> terminal.out().println("   " + sentence));
        terminal.out().flush();
    }

    private boolean isConfirmed(Revising next) throws IOException {
        terminal.err().print("Write issue " + next.issue() + "? (yes or no): ");
        terminal.err().flush();
        String answer = terminal.in().readLine();
        return answer != null && answer.strip().toLowerCase(Locale.ROOT).equals("yes");
    }
}
