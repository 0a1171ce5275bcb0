package cyclepacket.pdf;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What a PDF says about itself; everything that another tool would take from the clock is given here.
 *
 * @param title shown in the reader's window bar; never empty, because PDF/UA asks for it
 * @param subject one sentence on what the document is for
 * @param language a language tag such as {@code en} or {@code es}
 * @param dated becomes the creation and modification date, at midnight UTC
 * @param fixedId seeds the document's own identifier; the same text gives the same identifier
 */
public record DocumentFacts(String title, String subject, String language, LocalDate dated, String fixedId) {
    public DocumentFacts {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(dated, "dated");
        Objects.requireNonNull(fixedId, "fixedId");
        if (title.isBlank()) {
            throw new IllegalArgumentException("a document needs a title");
        }
        if (!language.matches("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*")) {
            throw new IllegalArgumentException("not a language tag: " + language);
        }
    }
}
