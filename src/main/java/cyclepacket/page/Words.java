package cyclepacket.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** The words of one language and what is built from them. */
record Words(Wording wording, AmountWords amounts, ClockWords clock, Map<String, String> slots) {
    static Words of(Wording wording) {
        return of(wording, Map.of());
    }

    /** @param slots what the texts of the clinic's files are called in this language */
    static Words of(Wording wording, Map<String, String> slots) {
        return new Words(wording, new AmountWords(wording), new ClockWords(wording), slots);
    }

    /** A text of the clinic's files in this language; as it stands when the clinic wrote no other. */
    String slot(String text) {
        return slots.getOrDefault(text, text);
    }

    String text(String key) {
        return wording.text(key);
    }

    String fill(String key, Map<String, String> values) {
        return wording.fill(key, values);
    }

    /** Several names joined as the language joins all of them. */
    String all(List<String> names) {
        return wording.tongue().all(names);
    }

    /** Several times of day. */
    String times(List<String> times) {
        return wording.tongue().times(times);
    }

    /** A sentence in the form that its number takes. */
    String count(String key, long number, Map<String, String> values) {
        return wording.fill(wording.form(key, BigDecimal.valueOf(number)), values);
    }

    /** Several names joined by "or". */
    String either(List<String> names) {
        return wording.tongue().either(names);
    }
}
