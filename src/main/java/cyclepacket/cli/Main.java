package cyclepacket.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;

/** Starts the program with the real terminal and clock. */
public final class Main {
    private Main() {}

    /** @param args the command and its arguments */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Path home = Path.of(System.getProperty("cyclepacket.home", "."));
        int exit = CommandLines.run(new Terminal(in, out, err, Clock.systemDefaultZone(), home), args);
        out.flush();
        err.flush();
        System.exit(exit);
    }
}
