package cyclepacket.cli;

import cyclepacket.finding.FindingText;
import cyclepacket.finding.Refused;
import cyclepacket.packet.ChangedMeanwhile;
import cyclepacket.packet.Press;
import cyclepacket.packet.Unclear;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The commands and what each failure ends with. */
public final class CommandLines {
    private static final int HELP_WIDTH = 100;

    /** Every command by its name, in the order of the help. */
    private static final Map<String, Function<Terminal, Object>> ALL = all();

    private CommandLines() {}

    @Command(
            name = "cyclepacket",
            description = "Turns a clinic's protocol files and one patient's plan into a printed packet."
                    + " It computes and prints what was ordered. It never prescribes.",
            mixinStandardHelpOptions = true,
            version = "Cyclepacket " + Press.VERSION,
            synopsisSubcommandLabel = "COMMAND")
    static final class Top implements Callable<Integer> {
        private final Terminal terminal;

        Top(Terminal terminal) {
            this.terminal = terminal;
        }

        @Override
        public Integer call() {
            terminal.say("Say which command, for example: ./cyclepacket demo   or   ./cyclepacket --help");
            return ExitCode.USAGE;
        }
    }

    /** Runs one command line in this process. */
    public static int run(Terminal terminal, String... args) {
        PrintWriter out = new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8);
        CommandLine line = new CommandLine(new Top(terminal));
        asked(args).forEach(command -> line.addSubcommand(command.apply(terminal)));
        return line.setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setUsageHelpWidth(HELP_WIDTH)
                .registerConverter(LocalDate.class, Slip::date)
                .setParameterExceptionHandler((fault, typed) -> Slip.told(terminal, fault))
                .setExecutionExceptionHandler((fault, command, parsed) -> failed(terminal, fault))
                .execute(args);
    }

    /** The command that is named; all of them for help and for a slip. Setting up each one costs several milliseconds. */
    private static Collection<Function<Terminal, Object>> asked(String... args) {
        Function<Terminal, Object> named = args.length == 0 ? null : ALL.get(args[0]);
        return named == null ? ALL.values() : List.of(named);
    }

    private static Map<String, Function<Terminal, Object>> all() {
        Map<String, Function<Terminal, Object>> all = new LinkedHashMap<>();
        all.put("demo", DemoCommand::new);
        all.put("packet", PacketCommand::new);
        all.put("check", CheckCommand::new);
        all.put("ledger", LedgerCommand::new);
        all.put("supplies", SuppliesCommand::new);
        all.put("countersign", CountersignCommand::new);
        all.put("record", RecordCommand::new);
        all.put("revise", ReviseCommand::new);
        all.put("identify", IdentifyCommand::new);
        all.put("compare", CompareCommand::new);
        all.put("batch", BatchCommand::new);
        all.put("wording", WordingCommand::new);
        return all;
    }

    private static int failed(Terminal terminal, Exception fault) {
        if (fault instanceof NoSuchFileException missing) {
            terminal.say("There is no file " + missing.getFile());
            return ExitCode.USAGE;
        }
        if (fault instanceof Unclear) {
            terminal.say(fault.getMessage());
            return ExitCode.USAGE;
        }
        if (fault instanceof ChangedMeanwhile) {
            terminal.say(fault.getMessage());
            return ExitCode.STOPPED;
        }
        if (fault instanceof AccessDeniedException denied) {
            terminal.say(
                    "You may not read or write " + denied.getFile() + "; ask whoever keeps the files for the right");
            return ExitCode.USAGE;
        }
        if (fault instanceof IOException || fault instanceof UncheckedIOException) {
            terminal.say("A file could not be read or written: " + fault.getMessage());
            return ExitCode.USAGE;
        }
        if (fault instanceof Refused refused) {
            terminal.err().print(FindingText.print(List.of(refused.finding())));
            terminal.say("Nothing was written.");
            return ExitCode.STOPPED;
        }
        terminal.say("This is a fault of Cyclepacket, not of the plan. Nothing was written.");
        fault.printStackTrace(terminal.err());
        return ExitCode.FAULT;
    }
}
