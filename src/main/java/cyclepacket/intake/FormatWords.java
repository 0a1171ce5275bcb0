package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** The sentence and the mend for each way in which a file can miss its schema. */
final class FormatWords {
    /** Keys that only a pen can have. */
    private static final Set<String> PEN_KEYS =
            Set.of("window", "dial", "needle", "prime", "gives", "opened", "opened-days");

    /** Facts of a product: a guess at one can hurt, so they have their own code and no suggested value. */
    private static final Set<String> PRODUCT_FACTS = Set.of(
            "hold",
            "strength",
            "mix",
            "diluent",
            "draw",
            "volume",
            "dilute",
            "stock",
            "taken",
            "way",
            "piece",
            "oil",
            "window",
            "dial",
            "least",
            "step",
            "most",
            "needle",
            "gauge",
            "length",
            "prime",
            "gives",
            "opened",
            "opened-days",
            "unopened",
            "amount-in");

    private final Sheet sheet;

    FormatWords(Sheet sheet) {
        this.sheet = sheet;
    }

    Finding of(FormatError error) {
        return switch (error.keyword()) {
            case "additionalProperties" -> unknownKey(error);
            case "required" -> missingKey(error);
            case "false" -> strayKey(error);
            case "type" -> WrongType.finding(sheet, error);
            case "enum" -> wrongWord(error);
            case "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum" -> outsideRange(error);
            case "minItems", "maxItems", "minProperties" -> wrongLength(error);
            case "maxLength" -> tooLong(error);
            case "propertyNames" -> FormOfText.ofKey(sheet, error);
            case "pattern" -> FormOfText.finding(sheet, error);
            default -> throw new IllegalStateException("no sentence for the schema keyword " + error.keyword());
        };
    }

    private Finding unknownKey(FormatError error) {
        Place place = sheet.placeOfKey(Pointers.child(error.pointer(), error.property()));
        String wrong = Characters.quoted(error.property()) + " is not a key that can stand here";
        return Finding.stop("KEY-UNKNOWN", place, wrong, mendForKey(error));
    }

    private static String mendForKey(FormatError error) {
        String key = error.property();
        List<String> homes = error.otherHomesOf(key);
        return NearestName.of(key, error.allowedKeys()).isEmpty() && homes.size() == 1
                ? key + " belongs under " + homes.get(0) + "; check the spaces in front of it"
                : NearestName.mend(key, error.allowedKeys());
    }

    private Finding missingKey(FormatError error) {
        String key = error.property();
        Place place = sheet.place(error.pointer());
        if (sheet.kind() == FileKind.MEDICINE && PRODUCT_FACTS.contains(key)) {
            return Finding.stop(
                    "FACT-ABSENT",
                    place,
                    owner(error.pointer()) + " has no " + key,
                    "copy " + key + " from the product's leaflet; it is never assumed");
        }
        return Finding.stop(
                "KEY-MISSING", place, owner(error.pointer()) + " has no " + key, "add " + key + ": and its value");
    }

    /** What a key is missing from, as a person would call it. */
    private String owner(String pointer) {
        List<String> names = Pointers.names(pointer);
        if (names.isEmpty()) {
            return "this " + sheet.kind().word() + " file";
        }
        String last = names.get(names.size() - 1);
        if (pointer.startsWith("/sizes/")) {
            return "this size";
        }
        return last.chars().allMatch(c -> c >= '0' && c <= '9') ? "this line" : last;
    }

    private Finding strayKey(FormatError error) {
        List<String> names = Pointers.names(error.pointer());
        String key = names.get(names.size() - 1);
        Place place = sheet.placeOfKey(error.pointer());
        if (sheet.kind() != FileKind.MEDICINE) {
            return Finding.stop(
                    "KEY-UNKNOWN", place, key + " cannot stand beside on", "write on alone, or from and until");
        }
        String wrong = PEN_KEYS.contains(key)
                ? "only a cartridge-pen has the key " + key
                : "a medicine of this form has no key " + key;
        return Finding.stop("KEY-UNKNOWN", place, wrong, "remove it, or mend form");
    }

    private Finding wrongWord(FormatError error) {
        Place place = sheet.place(error.pointer());
        String written = WrongType.shown(sheet.at(error.pointer()));
        if (error.allowedWords().equals(List.of("true"))) {
            return Finding.stop("VALUE-WORD", place, written + " cannot stand here", "write true, or remove the key");
        }
        String bare = sheet.at(error.pointer()).map(WrongType::written).orElse("");
        List<String> words = error.allowedWords();
        return Finding.stop(
                "VALUE-WORD", place, written + " is not a word for this key", NearestName.mendFromAll(bare, words));
    }

    private Finding outsideRange(FormatError error) {
        List<String> limits = new ArrayList<>();
        limit(error.schema(), "minimum", "at least ", limits);
        limit(error.schema(), "exclusiveMinimum", "above ", limits);
        limit(error.schema(), "maximum", "at most ", limits);
        return Finding.stop(
                "VALUE-RANGE",
                sheet.place(error.pointer()),
                sheet.at(error.pointer()).map(WrongType::written).orElse("") + " is out of range",
                "write a number that is " + String.join(" and ", limits));
    }

    private Finding tooLong(FormatError error) {
        String written = sheet.at(error.pointer()).map(WrongType::written).orElse("");
        return Finding.stop(
                "TEXT-TOO-LONG",
                sheet.place(error.pointer()),
                "this text has " + written.codePointCount(0, written.length()) + " characters, and at most "
                        + error.schema().get("maxLength").asString() + " find room in print",
                "write it shorter; nothing is cut for you");
    }

    private static void limit(JsonNode schema, String keyword, String words, List<String> limits) {
        if (schema.has(keyword)) {
            limits.add(words + schema.get(keyword).asString());
        }
    }

    private Finding wrongLength(FormatError error) {
        Place place = sheet.place(error.pointer());
        int most = error.schema().path("maxItems").asInt(0);
        if (most == 2) {
            return Finding.stop(
                    "LIST-LENGTH", place, "this list needs two numbers", "write the least first, then the most");
        }
        return error.keyword().equals("maxItems")
                ? Finding.stop(
                        "LIST-LENGTH",
                        place,
                        "this list has more than " + most + " entries",
                        "take out the ones that stand there twice")
                : Finding.stop("LIST-LENGTH", place, "this list is empty", "write at least one entry");
    }
}
