package cyclepacket.packet;

import java.util.Locale;

/** Whether two names as written are one person's. */
final class Names {
    private Names() {}

    /** Case, spaces, full stops and a remark in brackets do not make a second person. */
    static boolean areSamePerson(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String name) {
        return name.replaceAll("\\(.*?\\)", "").replaceAll("[\\s.]+", "").toLowerCase(Locale.ROOT);
    }
}
