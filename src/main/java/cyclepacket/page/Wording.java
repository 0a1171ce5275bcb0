package cyclepacket.page;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every sentence and word of one language, by key; a sentence has {@code {named}} gaps that the program fills with
 * amounts, dates and names.
 */
public final class Wording {
    private static final Pattern GAP = Pattern.compile("\\{([a-zA-Z]+)}");

    private final Map<String, String> texts;

    private Wording(Map<String, String> texts) {
        this.texts = texts;
    }

    /**
     * Reads all {@code .properties} files of {@code templates/wording/<language>}.
     *
     * @throws TemplateFault if there are none, or one key stands in two files
     */
    public static Wording load(Path templates, String language) {
        Map<String, String> texts = new TreeMap<>();
        Path folder = templates.resolve("wording").resolve(language);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.properties")) {
            for (Path file : files) {
                addAll(texts, file);
            }
        } catch (IOException unreadable) {
            throw new TemplateFault("the wording in " + folder + " cannot be read", unreadable);
        }
        return new Wording(Collections.unmodifiableMap(texts));
    }

    private static void addAll(Map<String, String> texts, Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        for (String key : properties.stringPropertyNames()) {
            if (texts.put(key, properties.getProperty(key)) != null) {
                throw new TemplateFault("the wording key " + key + " of " + file + " stands in two files");
            }
        }
    }

    /**
     * The same wording, in which a text {@code key.variant} takes the place of {@code key}: a language may say some
     * sentences in another way for another kind of device, and says all others as always.
     */
    Wording variant(String variant) {
        Map<String, String> varied = new TreeMap<>(texts);
        String ending = "." + variant;
        texts.forEach((key, text) -> {
            if (key.endsWith(ending)) {
                varied.put(key.substring(0, key.length() - ending.length()), text);
            }
        });
        return new Wording(Collections.unmodifiableMap(varied));
    }

    public Set<String> keys() {
        return texts.keySet();
    }

    /** The text as written, gaps and all. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /** @throws TemplateFault if the language has no such key */
    public String text(String key) {
        return find(key).orElseThrow(() -> new TemplateFault("no wording for " + key));
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
