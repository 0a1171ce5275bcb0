package cyclepacket.pdf;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * One document to typeset.
 *
 * @param xhtml well-formed XHTML; its style sheets and pictures are named relative to the templates folder
 * @param attachments files to carry inside the PDF, each under its own name
 */
public record Sheet(String xhtml, DocumentFacts facts, List<Attachment> attachments) {
    public Sheet {
        Objects.requireNonNull(xhtml, "xhtml");
        Objects.requireNonNull(facts, "facts");
        attachments = List.copyOf(attachments);
        Set<String> names = new HashSet<>();
        for (Attachment attachment : attachments) {
            if (!names.add(attachment.name())) {
                throw new IllegalArgumentException("two attachments are named " + attachment.name());
            }
        }
    }
}
