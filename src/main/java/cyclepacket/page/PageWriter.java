package cyclepacket.page;

import cyclepacket.plan.ExtraPart;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Writes views as XHTML with the templates of one folder; opens no file outside it. */
public final class PageWriter {
    private static final Duration LONGEST = Duration.ofSeconds(20);
    /** In characters; a packet of two weeks has about half a million. */
    private static final int MOST = 16_000_000;

    /** Read when they are asked for: most packets do without. */
    private static final Pattern RARE = Pattern.compile(
            "((batch|cards).\\w+|beside|cards|stop|door-large|vial|taken|sites|changed|helper|travel)\\.ftlh$");

    private final Path templates;
    private final SafeConfiguration configuration;
    private final Duration longest;
    private final int most;
    private final Map<String, TemplateFault> stopped = new ConcurrentHashMap<>();
    private final Map<String, Wording> wordings = new ConcurrentHashMap<>();

    /** @param templates the folder with the page templates, style sheets, drawings and wording */
    public PageWriter(Path templates) {
        this(templates, LONGEST, MOST);
    }

    /**
     * @param longest how long one document may take before it counts as a fault of its template
     * @param most how many characters one document may have
     */
    PageWriter(Path templates, Duration longest, int most) {
        this.templates = templates;
        this.configuration = new SafeConfiguration(templates);
        this.longest = longest;
        this.most = most;
    }

    /** The sentences of one language, read once. */
    Wording wording(String language) {
        return wordings.computeIfAbsent(language, folder -> Wording.load(templates, folder));
    }

    /** Reads the templates that most packets need and the wording of one language, so that writing finds them ready. */
    public void prepare(String language) throws IOException {
        wording(language);
        List<Path> files;
        try (Stream<Path> all = Files.walk(templates)) {
            files = all.filter(file -> file.toString().endsWith(".ftlh"))
                    .filter(file -> !RARE.matcher(file.toString()).find())
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
        String page = views.stop()
                .map(stop -> write("stop.ftlh", language, stop))
                .orElseGet(() -> packet(views.view(), language));
        return inItsLanguage(page, facts, language);
    }

    /** What nobody translated of the clinic's files keeps the language it was written in. */
    private String inItsLanguage(String page, PacketFacts facts, String language) {
        return wording(language)
                .source()
                .map(own -> ClinicPassages.mark(page, own, untranslated(facts, language)))
                .orElse(page);
    }

    /** As the clinic wrote them, and hours as the page writes them. */
    private List<String> untranslated(PacketFacts facts, String language) {
        ClockWords clock = new ClockWords(wording(language));
        return ClinicWords.untranslated(facts.files(), language).stream()
                .flatMap(text -> Stream.of(text, clock.hours(text)))
                .distinct()
                .toList();
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
                .map(cards -> inItsLanguage(write("cards.ftlh", own, language, cards), facts, language));
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
                "described", methods.described(),
                "steps", methods.steps(),
                "all", methods.all(),
                "either", methods.either());
        if (stopped.containsKey(template)) {
            throw stopped.get(template);
        }
        try {
            TemplateThread.Source source = () -> configuration.getTemplate(template);
            return UnbrokenText.keepTogether(new Filling(template, source, seen, longest, most).text());
        } catch (TemplateFault fault) {
            if (fault.hasHung()) {
                stopped.put(template, fault);
            }
            throw fault;
        }
    }
}
