package cyclepacket.page;

import cyclepacket.plan.ExtraPart;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** Writes views as XHTML with the templates of one folder; opens no file outside it. */
public final class PageWriter {
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private final Path templates;
    private final SafeConfiguration configuration;
    private final Duration longest;
    private final Map<String, Wording> wordings = new ConcurrentHashMap<>();

    /** @param templates the folder with the page templates, style sheets, drawings and wording */
    public PageWriter(Path templates) {
        this(templates, LONGEST);
    }

    /** @param longest how long one document may take before it counts as a fault of its template */
    PageWriter(Path templates, Duration longest) {
        this.templates = templates;
        this.configuration = new SafeConfiguration(templates);
        this.longest = longest;
    }

    /** The sentences of one language, read once. */
    Wording wording(String language) {
        return wordings.computeIfAbsent(language, folder -> Wording.load(templates, folder));
    }

    /** Reads every page template and the wording of one language, so that writing finds them ready. */
    public void prepare(String language) throws IOException {
        wording(language);
        List<Path> files;
        try (Stream<Path> all = Files.walk(templates)) {
            files = all.filter(file -> file.toString().endsWith(".ftlh"))
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            configuration.getTemplate(templates.relativize(file).toString().replace('\\', '/'));
        }
    }

    /** The patient's packet of a computed plan, in the plan's language. */
    public String packet(PacketFacts facts) {
        String language = facts.files().plan().language();
        return packet(facts, language, wording(language).isTranslated());
    }

    /** The same in a language of its own, divided into pages as for longer words or not. */
    String packet(PacketFacts facts, String language, boolean translated) {
        PacketViews views = new PacketViews(facts, wording(language), translated);
        return views.stop()
                .map(stop -> write("stop.ftlh", language, stop))
                .orElseGet(() -> packet(views.view(), language));
    }

    /** The patient's packet as one self-contained XHTML document, in the view's language. */
    public String packet(PacketView view) {
        return packet(view, view.layout().language());
    }

    /** The evening cards in the plan's language; empty when nobody asked for them or no evening is ahead. */
    public Optional<String> cards(PacketFacts facts) {
        String language = facts.files().plan().language();
        return cards(facts, language, wording(language).isTranslated());
    }

    /** The same in a language of its own. */
    Optional<String> cards(PacketFacts facts, String language, boolean translated) {
        if (!facts.files().with().contains(ExtraPart.EVENING_CARDS)
                || facts.course().cancelledFrom().isPresent()) {
            return Optional.empty();
        }
        EveningCardsView view = new PacketViews(facts, wording(language), translated).cards();
        Wording own = PacketViews.wording(wording(language), view.wholePens());
        return Optional.of(view)
                .filter(cards -> !cards.cards().isEmpty())
                .map(cards -> write("cards.ftlh", own, language, cards));
    }

    private String packet(PacketView view, String language) {
        Wording own = PacketViews.wording(wording(language), view.wholePens());
        return write("packet.ftlh", own, language, view);
    }

    /**
     * Fills one template.
     *
     * @param language the folder of the wording
     * @param view the record that the template sees as {@code v}
     * @throws TemplateFault if the template fails or takes too long
     */
    public String write(String template, String language, Record view) {
        return write(template, wording(language), language, view);
    }

    private String write(String template, Wording wording, String language, Record view) {
        WordingMethods methods = new WordingMethods(wording);
        Map<String, Object> seen = Map.of(
                "v", view,
                "lang", language,
                "say", methods.say(),
                "word", methods.word(),
                "steps", methods.steps(),
                "all", methods.all(),
                "either", methods.either());
        ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "page-writer");
            thread.setDaemon(true);
            return thread;
        });
        try {
            return worker.submit(() -> fill(template, seen)).get(longest.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException late) {
            throw new TemplateFault(template + " took longer than " + longest.toMillis() + " ms", late);
        } catch (ExecutionException failed) {
            throw new TemplateFault(
                    template + " cannot be filled: " + failed.getCause().getMessage(), failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new TemplateFault("writing " + template + " was interrupted", stopped);
        } finally {
            // Interrupts a template that still runs; the checks added on loading make it stop.
            worker.shutdownNow();
        }
    }

    private String fill(String name, Map<String, Object> seen) throws IOException, TemplateException {
        Template template = configuration.getTemplate(name);
        StringWriter page = new StringWriter();
        template.process(seen, page);
        return UnbrokenText.keepTogether(page.toString());
    }
}
