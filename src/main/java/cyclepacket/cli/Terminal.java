package cyclepacket.cli;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;

/**
 * What the program has of the outside world.
 *
 * @param home the project's folder, with templates and plans below it
 */
public record Terminal(BufferedReader in, PrintStream out, PrintStream err, Clock clock, Path home) {
    public Terminal {
        Objects.requireNonNull(in, "in");
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(err, "err");
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(home, "home");
    }

    void say(String line) {
        err.println(line);
        err.flush();
    }
}
