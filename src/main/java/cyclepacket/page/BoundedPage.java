package cyclepacket.page;

import freemarker.core.Environment;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.Writer;

/** A page while it is written; it takes so many characters and no more. */
final class BoundedPage extends Writer {
    private final StringBuilder text = new StringBuilder();
    private final int most;

    /** @param most characters */
    BoundedPage(int most) {
        this.most = most;
    }

    @Override
    public void write(char[] characters, int from, int length) throws IOException {
        if (length > most - text.length()) {
            throw new Full(new TemplateException("", Environment.getCurrentEnvironment()));
        }
        text.append(characters, from, length);
    }

    @Override
    public void flush() {
        // Everything is in memory already.
    }

    @Override
    public void close() {
        // Nothing is held open.
    }

    @Override
    public String toString() {
        return text.toString();
    }

    /** Too much was written; the cause tells where. */
    static final class Full extends IOException {
        private static final long serialVersionUID = 1L;

        private Full(TemplateException where) {
            super(where);
        }
    }
}
