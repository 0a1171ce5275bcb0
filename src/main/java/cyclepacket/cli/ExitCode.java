package cyclepacket.cli;

/** What the process ends with. */
final class ExitCode {
    static final int DONE = 0;
    /** A finding of grade stop; nothing was written. */
    static final int STOPPED = 1;
    /** A command line that cannot be understood, or a file that cannot be read. */
    static final int USAGE = 2;
    /** A fault of the program itself. */
    static final int FAULT = 3;

    private ExitCode() {}
}
