package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.List;
import java.util.Map;

/** Text that is not written in the form its key asks for, where no record has a better sentence. */
final class FormOfText {
    private static final Map<String, String> MENDS = Map.of(
            "currency", "write three capital letters, for example USD",
            "country", "write two capital letters, for example US");

    private static final String NAME = "use small letters, digits and hyphens";

    private FormOfText() {}

    /** A key that is not written as names of its group are. */
    static Finding ofKey(Sheet sheet, FormatError error) {
        String names = error.schema().get("propertyNames").path("$ref").asString("");
        Place place = sheet.placeOfKey(Pointers.child(error.pointer(), error.property()));
        String written = Characters.quoted(error.property());
        if (names.endsWith("/day-count")) {
            return Finding.stop(
                    "VALUE-FORM", place, written + " is not a number of days", "write a whole number from 1 to 99");
        }
        if (names.isEmpty()) {
            return Finding.stop(
                    "VALUE-FORM", place, written + " is not a language", "write its tag (RFC 5646), for example es");
        }
        return Finding.stop(
                "VALUE-FORM",
                place,
                written + " is not a name",
                names.endsWith("/anchor") ? "write capital letters, as in S1, T and R" : NAME);
    }

    static Finding finding(Sheet sheet, FormatError error) {
        Place place = sheet.place(error.pointer());
        String written = WrongType.shown(sheet.at(error.pointer()));
        List<String> names = Pointers.names(error.pointer());
        String key = names.isEmpty() ? "" : names.get(names.size() - 1);
        return switch (error.definition()) {
            case "text", "anchor-meaning" ->
                Finding.stop("VALUE-EMPTY", place, "nothing is written here", "write the text, or remove the key");
            case "name", "word" -> Finding.stop("VALUE-FORM", place, written + " is not a name", NAME);
            case "phone-number" ->
                Finding.stop(
                        "VALUE-FORM",
                        place,
                        written + " is not a phone number",
                        "write the digits to dial, at least three, and no letters");
            case "amount", "given", "record-line" ->
                Finding.stop("AMOUNT-INVALID", place, written + " is not an amount", Amounts.DIGITS);
            default ->
                Finding.stop(
                        "VALUE-FORM",
                        place,
                        written + " is not in the form of " + key,
                        MENDS.getOrDefault(key, "write it as in the examples"));
        };
    }
}
