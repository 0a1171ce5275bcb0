package cyclepacket.page;

import cyclepacket.wording.Pack;
import cyclepacket.wording.Translation;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every sentence and word of one language, by key; a sentence has {@code {named}} gaps that the program fills with
 * amounts, dates and names. Where a language has no text of its own, the source's stands in.
 */
public final class Wording {
    private static final Pattern GAP = Pattern.compile("\\{([a-zA-Z]+)}");

    private final Map<String, String> texts;
    private final Set<String> fallen;
    private final Optional<String> source;
    private final Tongue tongue;

    /** @param tongue empty for the source language, which writes numbers and days in its own words */
    private Wording(Map<String, String> texts, Set<String> fallen, Optional<String> source, Optional<Tongue> tongue) {
        this.texts = texts;
        this.fallen = fallen;
        this.source = source;
        this.tongue = tongue.orElseGet(() -> new SourceTongue(this));
    }

    /**
     * Reads the folder {@code templates/wording/<language>}, and that of its source.
     *
     * @throws TemplateFault if there is none, it has no pack, or one key stands in two places
     */
    public static Wording load(Path templates, String language) {
        WordingFolder folder = WordingFolder.of(templates, language);
        Optional<Translation> translation = folder.translation();
        if (translation.isPresent()) {
            return new Wording(
                    translation.get().texts(),
                    translation.get().fallen(),
                    folder.pack().source(),
                    tongue(folder.pack()));
        }
        Map<String, String> texts = new HashMap<>();
        folder.texts().forEach((key, entry) -> texts.put(key, entry.value()));
        return new Wording(texts, Set.of(), Optional.empty(), tongue(folder.pack()));
    }

    private static Optional<Tongue> tongue(Pack pack) {
        return pack.numbers().map(tag -> new IcuTongue(tag, pack.grouping()));
    }

    /**
     * The same wording, in which a text {@code key.variant} takes the place of {@code key}: a language may say some
     * sentences in another way for another kind of device, and says all others as always.
     */
    Wording variant(String variant) {
        Map<String, String> varied = new HashMap<>(texts);
        Set<String> variedFallen = new HashSet<>(fallen);
        String ending = "." + variant;
        texts.forEach((key, text) -> {
            if (key.endsWith(ending)) {
                String replaced = key.substring(0, key.length() - ending.length());
                varied.put(replaced, text);
                variedFallen.remove(replaced);
                if (fallen.contains(key)) {
                    variedFallen.add(replaced);
                }
            }
        });
        return new Wording(varied, variedFallen, source, Optional.of(tongue));
    }

    public Set<String> keys() {
        return Set.copyOf(texts.keySet());
    }

    /** How the language writes numbers, days and lists. */
    Tongue tongue() {
        return tongue;
    }

    /** The language of a text that the source's text stands in for; empty for the language's own. */
    Optional<String> foreign(String key) {
        return source.filter(language -> fallen.contains(key));
    }

    /** The language it is made from; empty for the source itself. */
    Optional<String> source() {
        return source;
    }

    /** Whether it is made from another language. */
    boolean isTranslated() {
        return source.isPresent();
    }

    /** How many texts the source's stand in for. */
    int fallen() {
        return fallen.size();
    }

    /** The text as written, gaps and all. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /** @throws TemplateFault if the language has no such key */
    public String text(String key) {
        return find(key).orElseThrow(() -> new TemplateFault("no wording for " + key));
    }

    /** The key of the form that a number takes: {@code key.one} and the like where it is written, else the key. */
    String form(String key, BigDecimal number) {
        String form = key + "." + tongue.plural(number);
        return texts.containsKey(form) ? form : key;
    }

    /** @throws TemplateFault if the key is missing or a gap has no value */
    public String fill(String key, Map<String, String> values) {
        Matcher gaps = GAP.matcher(text(key));
        StringBuilder filled = new StringBuilder();
        while (gaps.find()) {
            String value = values.get(gaps.group(1));
            if (value == null) {
                throw new TemplateFault("no value for the gap {" + gaps.group(1) + "} of " + key);
            }
            gaps.appendReplacement(filled, Matcher.quoteReplacement(value));
        }
        return gaps.appendTail(filled).toString();
    }

    /** The keys {@code prefix.1}, {@code prefix.2} and so on, up to the first number that is missing. */
    public List<String> numbered(String prefix) {
        List<String> found = new ArrayList<>();
        for (int number = 1; texts.containsKey(prefix + "." + number); number++) {
            found.add(prefix + "." + number);
        }
        if (found.isEmpty()) {
            throw new TemplateFault("no wording for " + prefix + ".1");
        }
        return List.copyOf(found);
    }
}
