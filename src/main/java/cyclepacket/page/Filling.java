package cyclepacket.page;

import java.time.Duration;
import java.util.Map;

/**
 * One template being filled, within limits.
 *
 * @param longest how long it may take
 * @param most how many characters the page may have
 */
record Filling(String name, TemplateThread.Source source, Map<String, Object> seen, Duration longest, int most) {
    /** Looks this often whether the time is over; a computer that slept in between costs one look. */
    private static final long LOOK_MILLIS = 20;

    /** How long a template that was told to stop may take until its next loop. */
    private static final Duration GRACE = Duration.ofMillis(200);

    /**
     * The page.
     *
     * @throws TemplateFault with the place, if the template fails, takes too long or writes too much
     */
    String text() {
        TemplateThread own = start(0);
        if (!ends(own, longest)) {
            own.interrupt();
            ends(own, GRACE);
            throw TemplatePlaces.of(name, own.place()).hung("takes longer than " + longest.toMillis() + " ms");
        }
        own.failure().ifPresent(failure -> {
            throw fault(failure, own);
        });
        return own.page();
    }

    private TemplateFault fault(Throwable failure, TemplateThread own) {
        if (failure instanceof Error) {
            String what = failure instanceof StackOverflowError
                    ? "calls itself without end"
                    : "needs more memory than there is";
            return again(own.asked()).fault(what, failure);
        }
        if (failure instanceof BoundedPage.Full) {
            return TemplatePlaces.of(name, failure).fault("writes more than " + most + " characters", failure);
        }
        if (failure instanceof TemplateFault known) {
            return known;
        }
        return TemplatePlaces.of(name, failure).fault("cannot be filled: " + TemplatePlaces.words(failure), failure);
    }

    /** The stack is gone by the time an error arrives, so the same steps are taken again, up to the one before it. */
    private TemplatePlaces again(int step) {
        TemplateThread second = start(step);
        if (!ends(second, longest)) {
            second.interrupt();
        }
        return TemplatePlaces.of(name, second.place());
    }

    private TemplateThread start(int stopAt) {
        TemplateThread thread = new TemplateThread(source, seen, most, stopAt);
        thread.start();
        return thread;
    }

    private boolean ends(TemplateThread thread, Duration limit) {
        try {
            for (long look = 0; look <= limit.toMillis() / LOOK_MILLIS && thread.isAlive(); look++) {
                thread.join(LOOK_MILLIS);
            }
            return !thread.isAlive();
        } catch (InterruptedException stop) {
            thread.interrupt();
            Thread.currentThread().interrupt();
            throw new TemplateFault("writing " + name + " was interrupted", stop);
        }
    }
}
