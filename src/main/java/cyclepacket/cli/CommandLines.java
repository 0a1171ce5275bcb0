package cyclepacket.cli;

import cyclepacket.packet.ChangedMeanwhile;
import cyclepacket.packet.Press;
import cyclepacket.packet.Unclear;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The commands and what each failure ends with. */
public final class CommandLines {
    private CommandLines() {}

    @Command(
            name = "cyclepacket",
            description = {
                "Turns a clinic's protocol files and one patient's plan into a printed packet.",
                "It computes and prints what was ordered. It never prescribes."
            },
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
        return new CommandLine(new Top(terminal))
                .addSubcommand(new DemoCommand(terminal))
                .addSubcommand(new PacketCommand(terminal))
                .addSubcommand(new CheckCommand(terminal))
                .addSubcommand(new LedgerCommand(terminal))
                .addSubcommand(new SuppliesCommand(terminal))
                .addSubcommand(new CountersignCommand(terminal))
                .addSubcommand(new RecordCommand(terminal))
                .addSubcommand(new ReviseCommand(terminal))
                .addSubcommand(new IdentifyCommand(terminal))
                .addSubcommand(new CompareCommand(terminal))
                .addSubcommand(new BatchCommand(terminal))
                .addSubcommand(new WordingCommand(terminal))
                .setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setExecutionExceptionHandler((fault, command, parsed) -> failed(terminal, fault))
                .execute(args);
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
        terminal.say("This is a fault of Cyclepacket, not of the plan. Nothing was written.");
        fault.printStackTrace(terminal.err());
        return ExitCode.FAULT;
    }
}
