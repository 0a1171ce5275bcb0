package cyclepacket.cli;

import cyclepacket.packet.Countersigning;
import cyclepacket.packet.Question;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "countersign",
        description =
                "The second person keys the values in again, from the order and the call note and not from the page. "
                        + "When all agree, one line is added to the plan. Any later edit voids it.",
        mixinStandardHelpOptions = true)
final class CountersignCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "PLAN", description = "The plan file of one patient.")
    private Path plan;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "The second person; not the preparer.")
    private String by;

    @Option(names = "--on", paramLabel = "DATE", description = "The day to write; by default today.")
    private Optional<LocalDate> on = Optional.empty();

    CountersignCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Countersigning signing = Countersigning.of(plan, by);
        new Report(terminal).findings(signing.findings());
        if (signing.refusal().isPresent()) {
            terminal.say(signing.refusal().get());
            return ExitCode.STOPPED;
        }
        List<String> answers = new ArrayList<>();
        for (Question question : signing.questions()) {
            terminal.err().print(question.asks() + ": ");
            terminal.err().flush();
            String answer = terminal.in().readLine();
            if (answer == null) {
                terminal.say("");
                terminal.say("The answers ended early. Nothing was written.");
                return ExitCode.STOPPED;
            }
            answers.add(answer);
        }
        return finish(signing, answers);
    }

    private int finish(Countersigning signing, List<String> answers) throws IOException {
        List<String> different = signing.different(answers);
        if (!different.isEmpty()) {
            different.forEach(name -> terminal.say("Not the plan's value: " + name));
            terminal.say("Nothing was written. Look at the order and the call note together.");
            return ExitCode.STOPPED;
        }
        String code = signing.write(on.orElse(LocalDate.now(terminal.clock())));
        terminal.out().println("Countersigned by " + by + ", code " + code);
        return ExitCode.DONE;
    }
}
