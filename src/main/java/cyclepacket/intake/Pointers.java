package cyclepacket.intake;

import java.util.List;

/** JSON pointers (RFC 6901) as text. */
final class Pointers {
    private Pointers() {}

    static String child(String parent, String key) {
        return parent + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    /** The unescaped names from the root to the value; none for the root itself. */
    static List<String> names(String pointer) {
        if (pointer.isEmpty()) {
            return List.of();
        }
        return List.of(pointer.substring(1).split("/", -1)).stream()
                .map(name -> name.replace("~1", "/").replace("~0", "~"))
                .toList();
    }
}
