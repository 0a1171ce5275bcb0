package cyclepacket.wording;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.finding.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** How hard running text is to read, and its five worst sentences. */
public final class GradeCheck {
    /** Grade 6 or below: AMA and NIH advice for patient materials, as cited by Am Fam Physician 2015;92(2):118. */
    static final double HIGHEST_GRADE = 6;

    /** The hard limit for the second formula, which runs higher on short texts; common practice, no published source. */
    static final double HIGHEST_SMOG = 8;

    /** INFLESZ: below 55 is difficult for most readers; above 65 is fairly easy (Barrio-Cantalejo 2008). */
    static final double LOWEST_INFLESZ = 55;

    /** From the same table (Barrio-Cantalejo 2008). */
    static final double EASY_INFLESZ = 65;

    /** How many sentences are named; common practice, no published source. */
    private static final int WORST = 5;

    private final List<Passage> passages;
    private final Syllables counter;
    private final Place whole;
    private final List<Finding> findings = new ArrayList<>();

    private GradeCheck(List<Passage> passages, Syllables counter, Place whole) {
        this.passages = passages.stream().filter(Passage::isRunning).toList();
        this.counter = counter;
        this.whole = whole;
    }

    /** @param whole the place that stands for all the text; no findings for a language without a formula */
    public static List<Finding> of(List<Passage> passages, LanguageRules rules, Place whole) {
        if (rules.syllables().isEmpty()) {
            return List.of();
        }
        GradeCheck check = new GradeCheck(passages, rules.syllables().get(), whole);
        check.run();
        return check.findings;
    }

    private void run() {
        List<String> sentences = passages.stream()
                .flatMap(passage -> Sentences.of(passage.text()).stream())
                .toList();
        if (sentences.isEmpty()) {
            return;
        }
        Counts counts = Counts.of(sentences, counter);
        boolean isHard;
        if (counter == Syllables.SPANISH) {
            isHard = spanish(Readability.inflesz(counts.words(), counts.sentences(), counts.syllables()));
        } else {
            isHard = english(
                    Readability.fleschKincaid(counts.words(), counts.sentences(), counts.syllables()),
                    Readability.smog(counts.longWords(), counts.sentences()));
        }
        worst(isHard);
    }

    private boolean english(double grade, double smog) {
        boolean isHard = grade > HIGHEST_GRADE;
        say(
                isHard ? Severity.STOP : smog > HIGHEST_SMOG ? Severity.WARN : Severity.NOTE,
                "Flesch-Kincaid grade " + one(grade) + " (at most " + one(HIGHEST_GRADE) + "), SMOG grade " + one(smog)
                        + " (at most " + one(HIGHEST_SMOG) + ")");
        return isHard;
    }

    private boolean spanish(double ease) {
        boolean isHard = ease < LOWEST_INFLESZ;
        say(
                isHard ? Severity.STOP : ease < EASY_INFLESZ ? Severity.WARN : Severity.NOTE,
                "INFLESZ " + one(ease) + " (at least " + one(LOWEST_INFLESZ) + ", better " + one(EASY_INFLESZ) + ")");
        return isHard;
    }

    private void say(Severity severity, String text) {
        findings.add(new Finding(
                severity,
                "WORDING-GRADE",
                whole,
                text,
                "shorten the five sentences that are named, and use shorter words"));
    }

    private void worst(boolean isHard) {
        Map<String, Passage> each = new TreeMap<>();
        passages.forEach(
                passage -> Sentences.of(passage.text()).forEach(sentence -> each.putIfAbsent(sentence, passage)));
        each.keySet().stream()
                .filter(sentence -> Sentences.words(sentence).size() >= 5)
                .sorted(Comparator.comparingDouble(this::hardness).reversed())
                .limit(WORST)
                .forEach(sentence -> findings.add(Finding.note(
                        "WORDING-HARD-SENTENCE",
                        each.get(sentence).places().apply(sentence),
                        "among the five hardest: " + sentence.replace('\u00a0', ' '),
                        isHard
                                ? "shorten it, and use shorter words"
                                : "nothing has to change; it is the next to mend")));
    }

    private double hardness(String sentence) {
        Counts counts = Counts.of(List.of(sentence), counter);
        return Readability.fleschKincaid(counts.words(), 1, counts.syllables());
    }

    private static String one(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }
}
