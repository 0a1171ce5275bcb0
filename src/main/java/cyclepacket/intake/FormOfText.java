package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.List;
import java.util.Map;

/** Text that is not written in the form its key asks for, where no record has a better sentence. */
final class FormOfText {
    private static final Map<String, String> MENDS = Map.of(
            "plan", "write letters, digits and hyphens, at most 40, for example SM-04417",
            "currency", "write three capital letters, for example USD",
            "country", "write two capital letters, for example US");

    private FormOfText() {}

    static Finding finding(Sheet sheet, FormatError error) {
        Place place = sheet.place(error.pointer());
        String written = WrongType.shown(sheet.at(error.pointer()));
        List<String> names = Pointers.names(error.pointer());
        String key = names.isEmpty() ? "" : names.get(names.size() - 1);
        return switch (error.definition()) {
            case "text", "anchor-meaning" ->
                Finding.stop("VALUE-EMPTY", place, "nothing is written here", "write the text, or remove the key");
            case "name", "word" ->
                Finding.stop("VALUE-FORM", place, written + " is not a name", "use small letters, digits and hyphens");
            case "amount", "given", "record-line" ->
                Finding.stop("AMOUNT-INVALID", place, written + " is not an amount", "write digits, for example 187.5");
            default ->
                Finding.stop(
                        "VALUE-FORM",
                        place,
                        written + " is not in the form of " + key,
                        MENDS.getOrDefault(key, "write it as in the examples"));
        };
    }
}
