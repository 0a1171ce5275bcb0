package cyclepacket.wording;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts of one language beside the texts they were made from. A text that is missing, or that was made from an older
 * source text, is left out, and the source text stands in for it.
 */
public final class Translation {
    private static final Pattern GAP = Pattern.compile("\\{([a-zA-Z]+)}");

    private final Pack pack;
    private final Pack sourcePack;
    private final Map<String, TextEntry> source;
    private final Map<String, TextEntry> own = new TreeMap<>();
    private final Map<String, TextEntry> madeFrom = new TreeMap<>();
    private final Map<String, String> texts = new TreeMap<>();
    private final Set<String> fallen = new TreeSet<>();
    private final List<Finding> findings = new ArrayList<>();

    private Translation(Pack pack, Pack sourcePack, Map<String, TextEntry> source, List<TextEntry> lines) {
        this.pack = pack;
        this.sourcePack = sourcePack;
        this.source = source;
        String mark = "@" + sourcePack.language();
        for (TextEntry line : lines) {
            boolean isSource = line.key().endsWith(mark);
            (isSource ? madeFrom : own)
                    .put(isSource ? line.key().substring(0, line.key().length() - mark.length()) : line.key(), line);
        }
    }

    /**
     * @param source every text of the source language, by key
     * @param lines every line of the language's own text files
     */
    public static Translation of(Pack pack, Pack sourcePack, Map<String, TextEntry> source, List<TextEntry> lines) {
        Translation translation = new Translation(pack, sourcePack, source, lines);
        source.values().forEach(translation::add);
        translation.own.values().stream()
                .filter(entry -> !source.containsKey(entry.key()))
                .forEach(translation::addOnly);
        return translation;
    }

    private void add(TextEntry english) {
        TextEntry mine = own.get(english.key());
        if (mine == null) {
            texts.put(english.key(), english.value());
            if (!sourcePack.isForStaff(english) && !sourcePack.isFormat(english.key())) {
                fallen.add(english.key());
                findings.add(missing(english));
            }
            return;
        }
        TextEntry from = madeFrom.get(english.key());
        if (from == null || !from.value().equals(english.value())) {
            texts.put(english.key(), english.value());
            fallen.add(english.key());
            findings.add(stale(mine, from, english));
            return;
        }
        texts.put(english.key(), mine.value());
        findings.addAll(gaps(mine, english));
    }

    /** A plural form that the source language has no need of is no stray text. */
    private void addOnly(TextEntry entry) {
        String base = entry.key().substring(0, Math.max(0, entry.key().lastIndexOf('.')));
        if (entry.key().matches(".*\\.(zero|one|two|few|many)") && source.containsKey(base)) {
            texts.put(entry.key(), entry.value());
            return;
        }
        findings.add(Finding.warn(
                "WORDING-KEY-EXTRA",
                entry.place(),
                "no text of the source language has the key " + entry.key(),
                "take the line out, or correct its key"));
    }

    private Finding missing(TextEntry english) {
        return Finding.warn(
                "WORDING-MISSING",
                english.place(),
                english.key() + " has no text in " + pack.name() + "; this text stands in its place",
                "translate it in the folder " + pack.language());
    }

    private Finding stale(TextEntry mine, TextEntry from, TextEntry english) {
        String mark = mine.key() + "@" + sourcePack.language();
        return Finding.warn(
                "WORDING-STALE",
                mine.place(),
                from == null
                        ? mine.key() + " does not say which text it was made from; that text stands in its place"
                        : mine.key() + " was made from \"" + from.value() + "\", which is now \"" + english.value()
                                + "\"; the new text stands in its place",
                "read both, mend the translation, and write the new source text as " + mark);
    }

    private static List<Finding> gaps(TextEntry mine, TextEntry english) {
        List<Finding> found = new ArrayList<>();
        Set<String> wanted = gaps(english.value());
        Set<String> has = gaps(mine.value());
        for (String gap : wanted) {
            if (!has.contains(gap)) {
                found.add(gap(mine.place(), "the text leaves out {" + gap + "}"));
            }
        }
        for (String gap : has) {
            if (!wanted.contains(gap)) {
                found.add(gap(mine.placeOf("{" + gap + "}"), "the program has no value for {" + gap + "} here"));
            }
        }
        return found;
    }

    private static Finding gap(Place place, String text) {
        return Finding.stop("WORDING-GAP", place, text, "write the same {gaps} as the source text, each by its name");
    }

    private static Set<String> gaps(String text) {
        Set<String> names = new TreeSet<>();
        for (Matcher gap = GAP.matcher(text); gap.find(); ) {
            names.add(gap.group(1));
        }
        return names;
    }

    /** Every text by key; where the language has none of its own, the source's. */
    public Map<String, String> texts() {
        return texts;
    }

    /** The keys for which the source's text stands in. */
    public Set<String> fallen() {
        return fallen;
    }

    /** What is missing, stale, stray or filled in otherwise. */
    public List<Finding> findings() {
        return Finding.sorted(findings);
    }

    /** The language's own texts by key, also those that are not used. */
    public Map<String, TextEntry> own() {
        return new LinkedHashMap<>(own);
    }
}
