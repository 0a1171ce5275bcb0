package cyclepacket.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A place where a file names a medicine, as a value or as a key. */
record Mention(Field field, boolean isKey) {

    /** The first mention of each medicine: the protocol's rows first, because their order is the order of every table. */
    static Map<String, Mention> firsts(Sheet plan, Optional<Sheet> protocol) {
        Map<String, Mention> firsts = new LinkedHashMap<>();
        protocol.ifPresent(sheet -> sheet.top().at("rows").items().forEach(row -> value(row.at("medicine"), firsts)));
        keys(plan.top().at("doses"), firsts);
        keys(plan.top().at("on-hand"), firsts);
        plan.top().at("revised").items().stream()
                .filter(line ->
                        line.at("what").text().value().filter("swap"::equals).isPresent())
                .forEach(line -> value(line.at("now"), firsts));
        plan.top().at("record").items().forEach(line -> value(line.at("medicine"), firsts));
        return firsts;
    }

    private static void value(Field field, Map<String, Mention> firsts) {
        field.text().value().ifPresent(id -> firsts.putIfAbsent(id, new Mention(field, false)));
    }

    private static void keys(Field group, Map<String, Mention> firsts) {
        group.entries().forEach((id, field) -> firsts.putIfAbsent(id, new Mention(field, true)));
    }

    void stop(String code, String text, String mend) {
        if (isKey) {
            field.stopAtKey(code, text, mend);
        } else {
            field.stop(code, text, mend);
        }
    }
}
