package cyclepacket.cli;

import cyclepacket.finding.Finding;
import cyclepacket.packet.Recording;
import cyclepacket.packet.Unclear;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "record",
        description = "Writes what happened into a plan and says what it means. "
                + "What cannot be true is written all the same, marked in-question; it stops the packet until "
                + "a reason and a name stand beside it. Every other byte of the plan stays.",
        footerHeading = "%nFor example:%n",
        footer = {
            "  ... PLAN --medicine fsh-pen --evening 2027-03-08 --given 187.5 --window 0",
            "  ... PLAN --medicine fsh-pen --evening 2027-03-08 --given 187.5 --window 87.5 --plunger end --read-back",
            "  ... PLAN --medicine fsh-pen --evening 2027-03-08 --missed --try",
            "  ... PLAN --medicine fsh-pen --evening 2027-03-11 --received 300 --lot FA-2388 --expires 2028-04-30"
        },
        mixinStandardHelpOptions = true)
final class RecordCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient.")
    private Path plan;

    @Option(names = "--medicine", required = true, paramLabel = "ID", description = "Which medicine, as in the plan.")
    private String medicine;

    @Option(
            names = "--evening",
            required = true,
            paramLabel = "DATE",
            description = "The evening it belongs to, a late dose too; for a box the day it came or went.")
    private LocalDate evening;

    @ArgGroup(validate = false, heading = "What happened:%n")
    private RecordFacts facts = new RecordFacts();

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why a fact stands that looks impossible.")
    private Optional<String> reason = Optional.empty();

    @Option(names = "--by", paramLabel = "NAME", description = "Who accepts it.")
    private Optional<String> by = Optional.empty();

    @Option(names = "--explain", description = "Give the lines of that evening their reason and name.")
    private boolean explain;

    @Option(names = "--try", description = "Say what it would mean and write nothing.")
    private boolean dryRun;

    RecordCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Recording first = recording();
        tell(first);
        if (dryRun) {
            terminal.out().println("Nothing was written.");
            return ExitCode.DONE;
        }
        first.write();
        facts.insteadOf()
                .ifPresent(due -> terminal.say("note: write too what became of " + due
                        + " that evening, for example --medicine " + due + " --missed"));
        terminal.out().println("Written.");
        return ExitCode.DONE;
    }

    private Recording recording() throws IOException {
        if (explain) {
            return Recording.explained(plan, evening, medicine, asked(reason, "--reason"), asked(by, "--by"));
        }
        if (facts.received().isPresent()) {
            return Recording.received(plan, medicine, facts.box(evening));
        }
        if (facts.discarded().isPresent()) {
            return Recording.discarded(
                    plan, medicine, facts.discarded().get(), evening, asked(reason, "--reason"), asked(by, "--by"));
        }
        return Recording.of(plan, facts.happening(evening, medicine, reason, by));
    }

    private static String asked(Optional<String> value, String option) {
        return value.filter(text -> !text.isBlank())
                .orElseThrow(() -> new Unclear("Say " + option + " too. Nothing was written."));
    }

    private void tell(Recording recording) {
        terminal.out().println(recording.added());
        recording.words().forEach(sentence -> terminal.out().println("  " + sentence));
        for (Finding doubt : recording.doubts()) {
            terminal.out().println("  IN QUESTION: " + doubt.text() + ".");
            terminal.out().println("     " + doubt.mend() + ".");
        }
        if (!recording.doubts().isEmpty()) {
            terminal.out()
                    .println("  It is written as it was told. No packet is printed until a reason and a name"
                            + " stand beside it: --explain --reason TEXT --by NAME.");
        }
    }
}
