package cyclepacket.intake;

import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One answer of the schema validator, reduced to facts; its own sentences are not used.
 *
 * @param pointer the value it is about
 * @param keyword the schema keyword that failed, for example {@code required}
 * @param property the key that is missing or too much, empty for other keywords
 * @param schemaPath the way to the failing keyword inside the schema
 * @param schema the schema object that holds the failing keyword
 * @param wholeSchema the schema of the file
 */
record FormatError(
        String pointer, String keyword, String property, String schemaPath, JsonNode schema, JsonNode wholeSchema) {

    static FormatError of(Error error, JsonNode schemaText) {
        String location = error.getSchemaLocation().toString();
        String path = location.substring(location.indexOf('#') + 1);
        List<String> names = Pointers.names(path);
        JsonNode schema = schemaText;
        for (String name : names.subList(0, Math.max(0, names.size() - 1))) {
            schema = schema.isArray() ? schema.get(Integer.parseInt(name)) : schema.get(name);
        }
        return new FormatError(
                error.getInstanceLocation().toString(),
                error.getKeyword(),
                Optional.ofNullable(error.getProperty()).orElse(""),
                path,
                schema,
                schemaText);
    }

    /** The keys the schema object allows. */
    List<String> allowedKeys() {
        return schema.has("properties") ? List.copyOf(schema.get("properties").propertyNames()) : List.of();
    }

    /** The groups of the format in which a key may stand. */
    List<String> otherHomesOf(String key) {
        List<String> homes = new ArrayList<>();
        collectHomes(wholeSchema.get("properties"), key, homes);
        return homes;
    }

    private static void collectHomes(JsonNode properties, String key, List<String> homes) {
        properties.forEachEntry((name, value) -> {
            if (value.has("properties") && value.get("properties").has(key)) {
                homes.add(name);
            }
        });
    }

    /** The words of {@code enum}. */
    List<String> allowedWords() {
        List<String> words = new ArrayList<>();
        if (schema.has("enum")) {
            schema.get("enum").forEach(word -> words.add(word.asString()));
        }
        return words;
    }

    /** The name under {@code $defs} that the failing keyword belongs to directly, for example {@code date}. */
    String definition() {
        List<String> names = Pointers.names(schemaPath);
        return names.size() == 3 && names.get(0).equals("$defs") ? names.get(1) : "";
    }

    /** Whether the record that is built from the value says better what is wrong with it. */
    boolean isAboutForm() {
        return keyword.equals("pattern")
                || keyword.equals("propertyNames")
                || (keyword.equals("minimum") && schema.has("pattern"));
    }
}
