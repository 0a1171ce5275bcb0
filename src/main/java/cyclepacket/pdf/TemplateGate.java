package cyclepacket.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.extend.FSUriResolver;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The only way from a page to a file: it serves what lies in the templates folder and notes every other wish as a
 * finding. One gate serves one document.
 */
final class TemplateGate implements FSUriResolver {
    /** A scheme of our own, so that no address that a page writes can be mistaken for one that passed. */
    static final String SCHEME = "template";

    static final String BASE = SCHEME + ":/";
    private final Path folder;
    private final Place place;
    private final StyleText styles;
    private final List<Finding> findings = new ArrayList<>();

    /** @param folder the templates folder as a real path */
    TemplateGate(Path folder, Place place, StyleText styles) {
        this.folder = folder;
        this.place = place;
        this.styles = styles;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    @Override
    public String resolveURI(String base, String wish) {
        if (wish == null || wish.isEmpty()) {
            return null;
        }
        Optional<String> granted = grant(base == null || base.isEmpty() ? BASE : base, wish);
        if (granted.isEmpty()) {
            refuse(wish);
        }
        return granted.orElse(null);
    }

    /** Notes that a page asked for something outside the templates folder. */
    void refuse(String wish) {
        String shown = wish.length() > 120 ? wish.substring(0, 120) + "..." : wish;
        findings.add(Finding.stop(
                "RESOURCE-REFUSED",
                place,
                "the page asks for " + shown + ", which is not in the templates folder",
                "put the file into the templates folder and name it by its path there"));
    }

    private Optional<String> grant(String base, String wish) {
        try {
            URI address = new URI(base).resolve(new URI(wish));
            if (!SCHEME.equals(address.getScheme()) || address.getAuthority() != null || address.getPath() == null) {
                return Optional.empty();
            }
            Path file = fileAt(address);
            boolean inside = file.startsWith(folder)
                    && (!Files.exists(file) || file.toRealPath().startsWith(folder));
            return inside
                    ? Optional.of(new URI(SCHEME, null, "/" + folder.relativize(file), null).toString())
                    : Optional.empty();
        } catch (URISyntaxException | InvalidPathException e) {
            // An address that cannot be read leads nowhere; the caller notes it as refused.
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path fileAt(URI address) {
        return folder.resolve(address.getPath().replaceFirst("^/+", "")).normalize();
    }

    /** Streams of files that passed {@link #resolveURI}. */
    FSStreamFactory files() {
        return address -> new Bytes(read(address));
    }

    /** A second wall: a stream for any other protocol is empty and noted, should one ever get past the resolver. */
    FSStreamFactory refusals() {
        return address -> {
            refuse(address);
            return new Bytes(new byte[0]);
        };
    }

    private byte[] read(String address) {
        try {
            byte[] content = Files.readAllBytes(fileAt(URI.create(address)));
            if (address.endsWith(".css")) {
                findings.addAll(styles.check(new String(content, java.nio.charset.StandardCharsets.UTF_8)));
            }
            return content;
        } catch (NoSuchFileException e) {
            findings.add(Finding.stop(
                    "RESOURCE-MISSING",
                    place,
                    "the page asks for " + address.substring(BASE.length()) + ", and no such file is in the templates",
                    "correct the name, or put the file into the templates folder"));
            return new byte[0];
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Content held in memory. */
    private record Bytes(byte[] content) implements FSStream {
        @Override
        public java.io.InputStream getStream() {
            return new java.io.ByteArrayInputStream(content);
        }

        @Override
        public java.io.Reader getReader() {
            return new java.io.InputStreamReader(getStream(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
