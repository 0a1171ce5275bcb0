package cyclepacket.page;

import freemarker.core.Environment;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.util.Map;
import java.util.Optional;

/**
 * Fills one template, and can be stopped in any loop, macro or include: each of them asks whether this thread was
 * interrupted. The asking is counted, so that a second run can stop at the very place where a first one broke.
 */
final class TemplateThread extends Thread {
    /** In bytes; a second run must get as deep as the first, whatever the compiler has made of it meanwhile. */
    private static final long DEEP_STACK = 64L << 20;

    private final Source source;
    private final Map<String, Object> seen;
    private final BoundedPage page;
    private final int stopAt;
    private volatile Environment environment;
    private volatile TemplateException stopped;
    private volatile Throwable failure;
    private int asked;

    /** Where the template comes from; reading it is part of the work. */
    @FunctionalInterface
    interface Source {
        Template template() throws java.io.IOException;
    }

    /** @param stopAt which asking ends the run; 0 for none */
    TemplateThread(Source source, Map<String, Object> seen, int most, int stopAt) {
        super(null, null, "page-writer", stopAt == 0 ? 0 : DEEP_STACK);
        this.source = source;
        this.seen = seen;
        this.page = new BoundedPage(most);
        this.stopAt = stopAt;
        setDaemon(true);
    }

    @Override
    public void run() {
        try {
            environment = source.template().createProcessingEnvironment(seen, page);
            environment.process();
        } catch (Exception | StackOverflowError | OutOfMemoryError fault) {
            failure = fault;
        } finally {
            // What the template made is let go, or a second run would find the memory as full as the first left it.
            environment = null;
        }
    }

    @Override
    public boolean isInterrupted() {
        boolean isEnough = super.isInterrupted();
        if (currentThread() == this) {
            asked++;
            isEnough = isEnough || asked == stopAt;
            if (isEnough && stopped == null) {
                stopped = new TemplateException("", Environment.getCurrentEnvironment());
            }
        }
        return isEnough;
    }

    /** What went wrong; empty after a whole page. Only for a thread that has ended. */
    Optional<Throwable> failure() {
        return Optional.ofNullable(failure);
    }

    /** Where it was stopped, else where it stands: it may hang inside one expression, which asks nothing. */
    Optional<TemplateException> place() {
        Environment now = environment;
        if (stopped != null || now == null) {
            return Optional.ofNullable(stopped);
        }
        return Optional.of(new TemplateException("", now));
    }

    /** How often a loop, macro or include asked. Only for a thread that has ended. */
    int asked() {
        return asked;
    }

    String page() {
        return page.toString();
    }
}
