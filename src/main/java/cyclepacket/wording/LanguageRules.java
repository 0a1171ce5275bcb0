package cyclepacket.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What plain language means in one language, as its folder says.
 *
 * @param syllables how syllables are counted; empty when no reading formula is known for the language
 * @param longest words that a sentence may have
 * @param numberWords a dose written in words
 * @param intervals a time that is only implied, for example {@code twice daily}
 * @param passive a sentence that hides who acts
 * @param designations error-prone forms of this language alone, beside those of every language
 * @param terms hard words, each with the words that explain it; without any, the word may not be used
 */
public record LanguageRules(
        Optional<Syllables> syllables,
        int longest,
        Optional<Pattern> numberWords,
        Optional<Pattern> intervals,
        Optional<Pattern> passive,
        List<Designation> designations,
        Map<String, String> terms) {
    /** The file's name in each language's folder; a folder without it is held to what holds in every language. */
    public static final String FILE = "rules.properties";

    /** Words in one sentence at most, where a language does not say; common practice, no published source. */
    private static final int LONGEST = 20;

    public LanguageRules {
        Objects.requireNonNull(syllables, "syllables");
        Objects.requireNonNull(numberWords, "numberWords");
        Objects.requireNonNull(intervals, "intervals");
        Objects.requireNonNull(passive, "passive");
        designations = List.copyOf(designations);
        terms = Map.copyOf(terms);
    }

    /** @param lines of the language's rules file; none when it has no such file */
    public static LanguageRules of(List<TextEntry> lines) {
        Map<String, String> values = new LinkedHashMap<>();
        lines.forEach(line -> values.put(line.key(), line.value()));
        List<Designation> designations = new ArrayList<>(Designations.all());
        Map<String, String> terms = new LinkedHashMap<>();
        values.forEach((key, value) -> {
            if (key.startsWith("designation.")) {
                designations.add(new Designation(
                        key.substring(key.indexOf('.') + 1),
                        Pattern.compile(value),
                        false,
                        values.getOrDefault("instead." + key.substring(key.indexOf('.') + 1), "the words in full")));
            } else if (key.startsWith("term.")) {
                terms.put(key.substring(key.indexOf('.') + 1).replace('_', ' '), value);
            }
        });
        return new LanguageRules(
                Optional.ofNullable(values.get("syllables"))
                        .map(word -> Syllables.valueOf(word.toUpperCase(java.util.Locale.ROOT))),
                Optional.ofNullable(values.get("longest-sentence"))
                        .map(Integer::valueOf)
                        .orElse(LONGEST),
                pattern(values, "number-words"),
                pattern(values, "intervals"),
                pattern(values, "passive"),
                designations,
                terms);
    }

    private static Optional<Pattern> pattern(Map<String, String> values, String key) {
        return Optional.ofNullable(values.get(key))
                .map(regex -> Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    }
}
