package cyclepacket.intake;

import java.util.List;

/**
 * Things that some people avoid. The list is open, but a word that nearly spells a known one is refused: a misspelt
 * allergy would match no product.
 */
final class Substances {
    private static final List<String> KNOWN = List.of(
            "latex", "adhesive", "alcohol", "benzyl-alcohol", "lactose", "mannitol", "sesame-oil", "cottonseed-oil");

    private Substances() {}

    static Part<String> read(Field field) {
        Part<String> word = field.text();
        if (word.isPresent() && !KNOWN.contains(word.get())) {
            NearestName.of(word.get(), KNOWN)
                    .ifPresent(near -> field.stop(
                            "VALUE-WORD",
                            Characters.quoted(word.get()) + " is not a known word",
                            "did you mean " + near + "?"));
        }
        return word;
    }
}
