package cyclepacket.wording;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a language's folder says of itself.
 *
 * @param name the language's own name, for example {@code español}
 * @param numbers the ICU locale that numbers, dates, lists and plurals follow; empty for the source language
 * @param grouping what stands between thousands, where the locale's own sign can be misread
 * @param source the language it was made from; empty for the source itself
 * @param version of a source: its own version; of a translation: the version it was made from
 * @param reviewer the person who read every text against its source; empty until there is one
 * @param approved who approved it and when; empty until somebody has
 * @param lastDay the last day it may be printed
 * @param staff the files that only staff read, which need no translation
 * @param formats beginnings of keys that ICU's data stand for in other languages
 * @param entries every line of the file, by key
 */
public record Pack(
        String language,
        String name,
        Optional<String> numbers,
        Optional<String> grouping,
        Optional<String> source,
        String version,
        String translator,
        Optional<String> reviewer,
        Optional<Approval> approved,
        LocalDate lastDay,
        List<String> staff,
        List<String> formats,
        Map<String, TextEntry> entries) {
    /** The file's name in each language's folder. */
    public static final String FILE = "pack.properties";

    public Pack {
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(numbers, "numbers");
        Objects.requireNonNull(grouping, "grouping");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(translator, "translator");
        Objects.requireNonNull(reviewer, "reviewer");
        Objects.requireNonNull(approved, "approved");
        Objects.requireNonNull(lastDay, "lastDay");
        staff = List.copyOf(staff);
        formats = List.copyOf(formats);
        entries = Map.copyOf(entries);
    }

    /** @throws IllegalArgumentException naming the key that is missing, or a date that is none */
    public static Pack of(String language, List<TextEntry> lines) {
        Map<String, TextEntry> entries = new LinkedHashMap<>();
        lines.forEach(line -> entries.put(line.key(), line));
        Optional<String> approver = written(entries, "approved-by");
        return new Pack(
                language,
                needed(entries, "name"),
                written(entries, "numbers"),
                written(entries, "grouping"),
                written(entries, "source"),
                needed(entries, "version"),
                needed(entries, "translator"),
                written(entries, "reviewer"),
                approver.map(by -> new Approval(by, LocalDate.parse(needed(entries, "approved-on")))),
                LocalDate.parse(needed(entries, "ends")),
                words(entries, "staff"),
                words(entries, "formats"),
                entries);
    }

    /** Whether only staff read the texts of this file. */
    public boolean isForStaff(TextEntry entry) {
        String file = entry.file().substring(entry.file().lastIndexOf('/') + 1);
        return staff.contains(file.replaceFirst("\\.properties$", ""));
    }

    /** Whether ICU's data stand for this key in other languages. */
    public boolean isFormat(String key) {
        return formats.stream().anyMatch(key::startsWith);
    }

    /** The files whose texts no clinic file and no edit changes without a new approval; only the source names them. */
    public List<String> locked() {
        return words(entries, "locked");
    }

    /** The code of the locked texts as they were approved. */
    public Optional<String> lockedCode() {
        return written(entries, "locked-code");
    }

    private static List<String> words(Map<String, TextEntry> entries, String key) {
        return written(entries, key).map(line -> List.of(line.split(" +"))).orElse(List.of());
    }

    private static Optional<String> written(Map<String, TextEntry> entries, String key) {
        return Optional.ofNullable(entries.get(key)).map(TextEntry::value).filter(value -> !value.isEmpty());
    }

    private static String needed(Map<String, TextEntry> entries, String key) {
        return written(entries, key)
                .orElseThrow(() -> new IllegalArgumentException(FILE + " needs a line that begins " + key + " ="));
    }
}
