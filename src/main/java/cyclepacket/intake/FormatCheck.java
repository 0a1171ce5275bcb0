package cyclepacket.intake;

import cyclepacket.finding.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** Checks one file against the JSON Schema of its kind and says in our own words what does not fit. */
final class FormatCheck {
    private final Sheet sheet;
    private final FormatWords words;
    private final Set<String> likelyMeant = new HashSet<>();

    private FormatCheck(Sheet sheet) {
        this.sheet = sheet;
        this.words = new FormatWords(sheet);
    }

    static void run(Sheet sheet) {
        SchemaBook.Entry book = SchemaBook.of(sheet.kind());
        JsonNode tree = JsonTree.of(sheet.root().orElseThrow());
        List<FormatError> errors = book.schema().validate(tree).stream()
                .limit(TreeReader.MOST_FINDINGS)
                .map(error -> FormatError.of(error, book.text()))
                .toList();
        FormatCheck check = new FormatCheck(sheet);
        errors.forEach(check::rememberWhatWasMeant);
        errors.stream().filter(error -> !check.isRepetition(error)).forEach(check::report);
    }

    /** A misspelt key is one slip: it is not reported a second time as a key that is missing. */
    private void rememberWhatWasMeant(FormatError error) {
        if (error.keyword().equals("additionalProperties")) {
            NearestName.of(error.property(), error.allowedKeys())
                    .ifPresent(meant -> likelyMeant.add(Pointers.child(error.pointer(), meant)));
        }
    }

    private boolean isRepetition(FormatError error) {
        return error.keyword().equals("required")
                && likelyMeant.contains(Pointers.child(error.pointer(), error.property()));
    }

    private void report(FormatError error) {
        Optional<Tree> value = sheet.at(error.pointer());
        if (value.isPresent() && value.get() instanceof Tree.Scalar scalar && scalar.kind() == Tree.Kind.REFUSED) {
            return;
        }
        if (value.isPresent() && value.get() instanceof Tree.Scalar scalar && scalar.kind() == Tree.Kind.NOTHING) {
            nothingWritten(error);
        } else if (error.isAboutForm()) {
            sheet.keepForLater(words.of(error));
        } else {
            sheet.stop(words.of(error));
        }
    }

    private void nothingWritten(FormatError error) {
        if (sheet.hasRefused(error.pointer())) {
            return;
        }
        Place place = sheet.place(error.pointer());
        sheet.stop("VALUE-EMPTY", place, "nothing is written here", "write the value, or remove the key");
    }
}
