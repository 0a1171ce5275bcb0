package cyclepacket.intake;

import cyclepacket.finding.Finding;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** A value of the wrong kind: text where a number is wanted, a single value where a list is wanted. */
final class WrongType {
    private static final Map<String, String> WORDS = new LinkedHashMap<>(Map.of(
            "string", "text",
            "number", "a number",
            "integer", "a whole number",
            "boolean", "true or false",
            "array", "a list",
            "object", "a group of keys"));

    private WrongType() {}

    static Finding finding(Sheet sheet, FormatError error) {
        Optional<Tree> value = sheet.at(error.pointer());
        JsonNode type = error.schema().get("type");
        String wanted = type.isArray() ? type.get(0).asString() : type.asString();
        return Finding.stop(
                "VALUE-TYPE",
                sheet.place(error.pointer()),
                shown(value) + " is " + kind(value) + ", and " + WORDS.get(wanted) + " is wanted here",
                mend(wanted, value));
    }

    private static String mend(String wanted, Optional<Tree> value) {
        String written = value.map(WrongType::written).orElse("");
        return switch (wanted) {
            case "string" ->
                value.isPresent() && value.get() instanceof Tree.Scalar
                        ? "put it in quotes: \"" + written + "\""
                        : "write one line of text";
            case "array" ->
                value.isPresent() && value.get() instanceof Tree.Scalar
                        ? "write a list in square brackets: [" + written + "]"
                        : "write a list in square brackets";
            case "object" -> "write its keys on lines of their own, two spaces further in";
            case "boolean" -> "write true or false, without quotes";
            default -> number(wanted, value, written);
        };
    }

    private static String number(String wanted, Optional<Tree> value, String written) {
        boolean isQuoted = ScalarKind.isNumber(written) && !kind(value).equals("a number");
        if (isQuoted) {
            return "write it without quotes";
        }
        return wanted.equals("integer")
                ? "write a whole number in digits"
                : "write digits, with a point before decimals";
    }

    private static String kind(Optional<Tree> value) {
        if (value.isPresent() && value.get() instanceof Tree.Scalar scalar) {
            return switch (scalar.kind()) {
                case NUMBER -> "a number";
                case TRUTH -> "true or false";
                case TEXT, NOTHING, REFUSED -> "text";
            };
        }
        return value.isPresent() && value.get() instanceof Tree.Sequence ? "a list" : "a group of keys";
    }

    /** The value as a sentence names it. */
    static String shown(Optional<Tree> value) {
        return value.isPresent() && value.get() instanceof Tree.Scalar scalar ? quotedIfText(scalar) : "this";
    }

    private static String quotedIfText(Tree.Scalar scalar) {
        return scalar.kind() == Tree.Kind.TEXT ? Characters.quoted(scalar.written()) : scalar.written();
    }

    /** What was written, empty for a list or a group of keys. */
    static String written(Tree value) {
        return value instanceof Tree.Scalar scalar ? scalar.written() : "";
    }
}
