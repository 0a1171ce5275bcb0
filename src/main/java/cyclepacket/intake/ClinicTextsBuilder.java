package cyclepacket.intake;

import cyclepacket.plan.ClinicTexts;
import java.util.LinkedHashMap;
import java.util.Map;

/** Builds what a clinic file adds to the packet's words; all of it may be left out. */
final class ClinicTextsBuilder {
    private static final String LOCKED = "WORDING-LOCKED";

    private final Field top;

    ClinicTextsBuilder(Field top) {
        this.top = top;
    }

    Part<ClinicTexts> texts() {
        Field lines = top.at("own-lines");
        Part<Map<String, String>> ownLines = lines.byName(Field::text);
        Part<Map<String, Map<String, String>>> translations =
                top.at("translations").byName(ClinicTextsBuilder::language);
        return Part.wholeAs(LOCKED, lines, () -> new ClinicTexts(ownLines.get(), translations.get()));
    }

    private static Part<Map<String, String>> language(Field list) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Field line : list.items()) {
            Part<String> text = line.at("text").text();
            Part<String> says = line.at("says").text();
            if (!text.isPresent() || !says.isPresent()) {
                return Part.absent();
            }
            texts.put(text.get(), says.get());
        }
        return Part.of(texts);
    }
}
