package cyclepacket.wording;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Applies the rules of one language to passages, one finding for each place. */
public final class TextCheck {
    /** At most this part of the sentences may be passive: PEMAT item 5 (AHRQ 2013), "at least 80 percent" in the active voice. */
    private static final double MOST_PASSIVE = 0.2;

    /** An issue's code is letters and figures that stand for no amount, also where its last group begins a line. */
    private static final Pattern CODE =
            Pattern.compile("\\b[0-9A-Z]{4}-[0-9A-Z]{4}(?:-[0-9A-Z]{2,4})?\\b|^[0-9A-Z]{3}$");

    private final LanguageRules rules;
    private final boolean isForStaff;
    private final List<Finding> findings = new ArrayList<>();

    private TextCheck(LanguageRules rules, boolean isForStaff) {
        this.rules = rules;
        this.isForStaff = isForStaff;
    }

    /** Designations, dose words and implied times in every passage; sentences in running text. */
    public static List<Finding> of(List<Passage> passages, LanguageRules rules, boolean isForStaff) {
        TextCheck check = new TextCheck(rules, isForStaff);
        int sentences = 0;
        int passive = 0;
        for (Passage passage : passages) {
            check.forms(passage);
            if (passage.isRunning() && !isForStaff) {
                List<String> own = Sentences.of(passage.text());
                sentences += own.size();
                for (String sentence : own) {
                    check.length(passage, sentence);
                    passive += check.voice(passage, sentence) ? 1 : 0;
                }
            }
        }
        if (sentences > 0 && passive > MOST_PASSIVE * sentences) {
            check.findings.add(Finding.stop(
                    "WORDING-PASSIVE-SHARE",
                    passages.get(0).places().apply(""),
                    passive + " of " + sentences + " sentences are passive",
                    "say who acts: begin with a verb, or with you or we"));
        }
        return check.findings;
    }

    private void forms(Passage passage) {
        String text = blank(passage.text());
        for (Designation form : rules.designations()) {
            for (Matcher bad = form.bad().matcher(text); bad.find(); ) {
                boolean isStop = form.isOnDoNotUseList() || !isForStaff;
                String found = bad.group().strip();
                findings.add(new Finding(
                        isStop ? Severity.STOP : Severity.WARN,
                        "WORDING-DESIGNATION",
                        passage.places().apply(found),
                        "\"" + found + "\" is an error-prone form (" + form.key() + ")",
                        "write instead: " + form.instead()));
            }
        }
        rules.numberWords()
                .ifPresent(words -> stops(
                        passage,
                        text,
                        words,
                        "WORDING-NUMBER-WORD",
                        "writes an amount in words",
                        "write the amount in digits"));
        rules.intervals()
                .ifPresent(words -> stops(
                        passage, text, words, "WORDING-INTERVAL", "only implies the times", "write each time of day"));
    }

    private void stops(Passage passage, String text, Pattern pattern, String code, String why, String mend) {
        for (Matcher bad = pattern.matcher(text); bad.find() && !isForStaff; ) {
            findings.add(
                    Finding.stop(code, passage.places().apply(bad.group()), "\"" + bad.group() + "\" " + why, mend));
        }
    }

    private static String blank(String text) {
        return CODE.matcher(text.replace('\u00a0', ' '))
                .replaceAll(code -> " ".repeat(code.group().length()));
    }

    private void length(Passage passage, String sentence) {
        int words = Sentences.words(sentence).size();
        if (words > rules.longest()) {
            findings.add(Finding.warn(
                    "WORDING-LONG-SENTENCE",
                    passage.places().apply(sentence),
                    "a sentence of " + words + " words; the most is " + rules.longest(),
                    "make two sentences of it"));
        }
    }

    private boolean voice(Passage passage, String sentence) {
        Optional<String> passive = rules.passive()
                .map(pattern -> pattern.matcher(sentence.replace('\u00a0', ' ')))
                .filter(Matcher::find)
                .map(Matcher::group);
        passive.ifPresent(words -> findings.add(Finding.note(
                "WORDING-PASSIVE",
                passage.places().apply(sentence),
                "\"" + words + "\" looks passive",
                "say who acts: begin with a verb, or with you or we")));
        return passive.isPresent();
    }
}
