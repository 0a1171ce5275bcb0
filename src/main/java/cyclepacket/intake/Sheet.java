package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One file on its way to a record: its source, its tree and everything found in it so far. */
final class Sheet {
    /** One mebibyte, in bytes; a plan is a few kilobytes. */
    static final int LARGEST_FILE = 1 << 20;

    private final FileKind kind;
    private final Source source;
    private final Optional<Tree> root;
    private final List<Finding> findings;
    private final List<Finding> kept = new ArrayList<>();
    private final Set<String> refused = new HashSet<>();

    private Sheet(FileKind kind, Source source, Optional<Tree> root, List<Finding> findings) {
        this.kind = kind;
        this.source = source;
        this.root = root;
        this.findings = findings;
    }

    /** Parses the file and checks its format; what is wrong is in {@link #findings()}. */
    static Sheet read(FileKind kind, String shownPath, byte[] bytes) {
        if (bytes.length > LARGEST_FILE) {
            Source nothing = Source.of(shownPath, new byte[0]);
            Place whole = Place.at(shownPath, "");
            return new Sheet(
                    kind,
                    nothing,
                    Optional.empty(),
                    new ArrayList<>(List.of(Finding.stop(
                            "YAML-TOO-LARGE",
                            whole,
                            "this file is larger than 1 MiB",
                            "check that it is the right file"))));
        }
        Source source = Source.of(shownPath, bytes);
        List<Finding> findings = new ArrayList<>(SourceCheck.run(source, bytes));
        Optional<Tree> root = findings.isEmpty() ? TreeReader.read(source, findings) : Optional.empty();
        Sheet sheet = new Sheet(kind, source, root, findings);
        if (root.isPresent()) {
            FormatCheck.run(sheet);
        } else if (findings.isEmpty()) {
            findings.add(source.stop("YAML-EMPTY", Spot.START, "this file is empty", "restore it from a copy"));
        }
        return sheet;
    }

    FileKind kind() {
        return kind;
    }

    String shownPath() {
        return source.shownPath();
    }

    Source source() {
        return source;
    }

    Optional<Tree> root() {
        return root;
    }

    List<Finding> findings() {
        return findings;
    }

    Field top() {
        return new Field(this, "", root);
    }

    /** The value a pointer leads to. */
    Optional<Tree> at(String pointer) {
        Walk walk = Walk.from(root, pointer);
        return walk.isComplete() ? walk.reached() : Optional.empty();
    }

    /** The place of a value, or of its nearest parent that exists. */
    Place place(String pointer) {
        return source.place(pointer, Walk.from(root, pointer).spot());
    }

    /** The place of a key. */
    Place placeOfKey(String pointer) {
        return source.place(pointer, Walk.from(root, pointer).keySpot());
    }

    /** Records a stop; the value at the pointer is not read again. */
    void stop(String code, Place place, String text, String mend) {
        stop(Finding.stop(code, place, text, mend));
    }

    void stop(Finding finding) {
        findings.add(finding);
        refused.add(finding.place().pointer());
    }

    /** Keeps a finding that the records, once built, will probably have put in better words. */
    void keepForLater(Finding finding) {
        kept.add(finding);
    }

    /** Adds what was kept and nothing else has told. */
    void settle() {
        kept.stream().filter(finding -> !hasRefused(finding.place().pointer())).forEach(findings::add);
        kept.clear();
    }

    boolean hasRefused(String pointer) {
        return refused.contains(pointer);
    }
}
