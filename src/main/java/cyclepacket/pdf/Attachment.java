package cyclepacket.pdf;

import java.util.Arrays;
import java.util.Objects;

/** A file that travels inside the PDF as its source (an associated file of ISO 19005-3, relationship Source). */
public record Attachment(String name, String mediaType, String description, byte[] content) {
    public Attachment {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(mediaType, "mediaType");
        Objects.requireNonNull(description, "description");
        content = content.clone();
        if (name.isBlank() || name.contains("/") || name.contains("\\")) {
            throw new IllegalArgumentException("an attachment has a plain file name: " + name);
        }
        if (!mediaType.matches("[a-z0-9.+-]+/[a-z0-9.+-]+")) {
            throw new IllegalArgumentException("not a media type: " + mediaType);
        }
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Attachment that
                && name.equals(that.name)
                && mediaType.equals(that.mediaType)
                && description.equals(that.description)
                && Arrays.equals(content, that.content);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, mediaType, description, Arrays.hashCode(content));
    }
}
