package cyclepacket.page;

import java.util.List;
import java.util.Map;

/** The words of one language and what is built from them. */
record Words(Wording wording, AmountWords amounts, ClockWords clock) {
    static Words of(Wording wording) {
        return new Words(wording, new AmountWords(wording), new ClockWords(wording));
    }

    String text(String key) {
        return wording.text(key);
    }

    String fill(String key, Map<String, String> values) {
        return wording.fill(key, values);
    }

    /** Several names joined by "or". */
    String either(List<String> names) {
        return String.join(" " + text("or") + " ", names);
    }
}
