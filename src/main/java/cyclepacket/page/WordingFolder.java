package cyclepacket.page;

import cyclepacket.finding.Finding;
import cyclepacket.wording.LanguageRules;
import cyclepacket.wording.Pack;
import cyclepacket.wording.TextEntry;
import cyclepacket.wording.TextFile;
import cyclepacket.wording.Translation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The folder of one language: its pack, its texts and the rules of plain language that it sets. */
public final class WordingFolder {
    private static final List<String> NO_TEXTS = List.of(Pack.FILE, LanguageRules.FILE);

    private final Path templates;
    private final Path folder;
    private final Pack pack;

    private WordingFolder(Path templates, Path folder) {
        this.templates = templates;
        this.folder = folder;
        try {
            pack = Pack.of(folder.getFileName().toString(), read(folder.resolve(Pack.FILE)));
        } catch (IllegalArgumentException | DateTimeException unreadable) {
            throw new TemplateFault("the pack of " + folder + ": " + unreadable.getMessage(), unreadable);
        }
    }

    /** @throws TemplateFault if the folder is missing, or its pack is not whole */
    public static WordingFolder of(Path templates, String language) {
        return new WordingFolder(templates, templates.resolve("wording").resolve(language));
    }

    /** The languages that have a folder, in the order of their tags. */
    public static List<String> languages(Path templates) throws IOException {
        try (Stream<Path> folders = Files.list(templates.resolve("wording"))) {
            return folders.filter(folder -> Files.exists(folder.resolve(Pack.FILE)))
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    public Pack pack() {
        return pack;
    }

    /** Every text with its place, by key. */
    public Map<String, TextEntry> texts() {
        Map<String, TextEntry> texts = new TreeMap<>();
        lines().forEach(line -> texts.put(line.key(), line));
        return texts;
    }

    /** The language's own texts of these files, without the texts they were made from, by key. */
    public Map<String, TextEntry> texts(List<String> names) {
        Map<String, TextEntry> texts = new TreeMap<>();
        for (Path file : files()) {
            if (names.contains(file.getFileName().toString().replaceFirst("\\.properties$", ""))) {
                read(file).stream()
                        .filter(line -> line.key().indexOf('@') < 0)
                        .forEach(line -> texts.put(line.key(), line));
            }
        }
        return texts;
    }

    /** The language that this one was made from; itself when it is the source. */
    public WordingFolder source() {
        return pack.source().map(language -> of(templates, language)).orElse(this);
    }

    /** Texts beside those of the source; empty for the source itself. */
    public Optional<Translation> translation() {
        return pack.source().map(language -> {
            WordingFolder source = of(templates, language);
            return Translation.of(pack, source.pack, source.texts(), lines());
        });
    }

    public LanguageRules rules() {
        Path file = folder.resolve(LanguageRules.FILE);
        return LanguageRules.of(Files.exists(file) ? read(file) : List.of());
    }

    /** What is wrong with the folder as a translation; nothing for the source. */
    public List<Finding> findings() {
        return translation().map(Translation::findings).orElse(List.of());
    }

    /** @throws TemplateFault if one key stands in two places */
    private List<TextEntry> lines() {
        List<TextEntry> lines = new ArrayList<>();
        Map<String, TextEntry> seen = new TreeMap<>();
        for (Path file : files()) {
            for (TextEntry line : read(file)) {
                TextEntry first = seen.put(line.key(), line);
                if (first != null) {
                    throw new TemplateFault("the wording key " + line.key() + " stands in " + first.file() + ":"
                            + first.line() + " and in " + line.file() + ":" + line.line());
                }
                lines.add(line);
            }
        }
        return lines;
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*.properties")) {
            for (Path file : all) {
                if (!NO_TEXTS.contains(file.getFileName().toString())) {
                    files.add(file);
                }
            }
        } catch (IOException unreadable) {
            throw new TemplateFault("the wording in " + folder + " cannot be read", unreadable);
        }
        files.sort(null);
        return files;
    }

    private List<TextEntry> read(Path file) {
        try {
            String shown = templates.toAbsolutePath().getParent() == null
                    ? file.toString()
                    : templates.getFileName() + "/"
                            + templates.relativize(file).toString().replace('\\', '/');
            return TextFile.parse(shown, Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new TemplateFault("the wording in " + file + " cannot be read", unreadable);
        } catch (IllegalArgumentException wrong) {
            throw new TemplateFault(wrong.getMessage(), wrong);
        }
    }
}
