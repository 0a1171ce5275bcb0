package cyclepacket.cli;

import cyclepacket.packet.BatchLine;
import cyclepacket.packet.BatchWatch;
import java.util.Locale;

/** How far a print run is: a bar that is drawn over itself on a terminal, plain lines elsewhere. */
final class Progress implements BatchWatch {
    private static final int WIDTH = 40;

    private final Terminal terminal;
    private final boolean isBar;
    private int total;
    private int done;

    Progress(Terminal terminal, boolean isBar) {
        this.terminal = terminal;
        this.isBar = isBar;
    }

    @Override
    public void expects(int plans) {
        total = plans;
    }

    @Override
    public void done(BatchLine line) {
        done++;
        String state = line.state().name().toLowerCase(Locale.ROOT);
        if (isBar) {
            int full = total == 0 ? WIDTH : WIDTH * done / total;
            terminal.err().print("\r[" + "#".repeat(full) + ".".repeat(WIDTH - full) + "] " + done + " of " + total);
            terminal.err().flush();
        } else {
            terminal.say(done + " of " + total + "  " + state + "  " + line.file());
        }
    }

    void close() {
        if (isBar) {
            terminal.say("");
        }
    }
}
