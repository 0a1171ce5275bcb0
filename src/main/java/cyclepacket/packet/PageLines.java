package cyclepacket.packet;

import cyclepacket.finding.Place;

/** The printed lines of one page of a PDF, to say where words stand on it. */
record PageLines(String file, int page, String[] lines) {
    /** A fragment as RFC 8118 writes it names the page. */
    static PageLines of(String file, int page, String text) {
        return new PageLines(file + "#page=" + page, page, text.split("\n"));
    }

    /** The line that holds the words, or the longest beginning of them that one line holds. */
    Place find(String words) {
        String wanted = plain(words);
        while (!wanted.isBlank()) {
            for (int line = 0; line < lines.length; line++) {
                int at = plain(lines[line]).indexOf(wanted);
                if (at >= 0) {
                    return new Place(file, "", line + 1, at + 1, plain(lines[line]));
                }
            }
            wanted = wanted.substring(0, Math.max(0, wanted.lastIndexOf(' '))).strip();
        }
        return new Place(file, "", 1, 1, lines.length == 0 ? "" : plain(lines[0]));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
