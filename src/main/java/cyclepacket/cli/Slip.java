package cyclepacket.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said of a slip on the command line: two or three lines, because a whole help text would push them off the screen. */
final class Slip {
    private Slip() {}

    static LocalDate date(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException noDate) {
            throw new TypeConversionException("\"" + typed + "\" is not a date; write for example 2027-03-09");
        }
    }

    static int told(Terminal terminal, ParameterException fault) {
        terminal.say(fault.getMessage());
        if (fault instanceof UnmatchedArgumentException unknown) {
            List<String> near = unknown.getSuggestions();
            if (!near.isEmpty()) {
                terminal.say("Did you mean: " + String.join(", ", near));
            }
        }
        String command = fault.getCommandLine().getCommandSpec().qualifiedName(" ");
        terminal.say("All about it: ./" + command + " --help");
        return ExitCode.USAGE;
    }
}
