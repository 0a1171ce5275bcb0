package cyclepacket.intake;

import cyclepacket.finding.Finding;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Turns the parser's events into a tree with places; refuses what a plan file has no use for: anchors, aliases, tags, a second document. */
final class TreeReader {
    /** The formats need five levels. */
    static final int DEEPEST = 12;
    /** A file with more slips than this is no plan file, and naming them all would take longer than anybody reads. */
    static final int MOST_FINDINGS = 500;

    private final Source source;
    private final List<Finding> found;
    private final Iterator<Event> events;

    private TreeReader(Source source, List<Finding> found) {
        this.source = source;
        this.found = found;
        LoadSettings settings = LoadSettings.builder()
                .setLabel(source.shownPath())
                .setCodePointLimit(Sheet.LARGEST_FILE)
                .setUseMarks(true)
                .build();
        this.events = new Parse(settings).parseString(source.text()).iterator();
    }

    /** The value of the file's one document; empty when it is not YAML or holds nothing. Adds what it finds to {@code found}. */
    static Optional<Tree> read(Source source, List<Finding> found) {
        try {
            return new TreeReader(source, found).document();
        } catch (YamlEngineException error) {
            found.add(SyntaxWords.finding(source, error));
            return Optional.empty();
        } catch (Hopeless file) {
            found.add(source.stop(
                    file.code, file.spot, file.getMessage(), "write the file in the shape of the examples"));
            return Optional.empty();
        }
    }

    private Optional<Tree> document() {
        Optional<Tree> root = Optional.empty();
        int documents = 0;
        while (events.hasNext()) {
            Event event = events.next();
            if (event.getEventId() == Event.ID.DocumentStart && ++documents == 2) {
                found.add(source.stop(
                        "YAML-SECOND-DOCUMENT",
                        start(event),
                        "a second document starts here",
                        "delete this line, or move what follows to a file of its own"));
                return Optional.empty();
            }
            if (event instanceof NodeEvent) {
                root = Optional.of(value(event, Optional.empty(), 1));
            }
        }
        return root;
    }

    private Tree value(Event event, Optional<Spot> key, int depth) {
        if (depth > DEEPEST) {
            throw new Hopeless("YAML-TOO-DEEP", start(event), "values are nested more than " + DEEPEST + " deep");
        }
        if (found.size() >= MOST_FINDINGS) {
            throw new Hopeless("YAML-TOO-MANY", start(event), "the rest is not read: so much before it is wrong");
        }
        if (event instanceof ScalarEvent scalar) {
            noAnchorOrTag(event, scalar.getAnchor(), scalar.getTag());
            return ScalarReader.read(source, scalar, key, found);
        }
        if (event instanceof CollectionStartEvent collection) {
            noAnchorOrTag(event, collection.getAnchor(), collection.getTag());
            Spot spot = collection.isFlow() ? start(event) : key.orElse(start(event));
            return event.getEventId() == Event.ID.MappingStart
                    ? mapping(spot, collection.isFlow(), depth)
                    : sequence(spot, collection.isFlow(), depth);
        }
        found.add(source.stop(
                "YAML-ALIAS",
                start(event),
                "* repeats another piece of the file",
                "write the value itself here, so that it can be read in its place"));
        return new Tree.Scalar(start(event), end(event), Tree.Kind.REFUSED, "");
    }

    private void noAnchorOrTag(Event event, Optional<Anchor> anchor, Optional<String> tag) {
        if (anchor.isPresent()) {
            found.add(source.stop(
                    "YAML-ALIAS",
                    start(event),
                    "& marks a piece of the file to be repeated elsewhere",
                    "delete the mark, or put quotes around text that starts with &"));
        }
        if (tag.isPresent()) {
            found.add(source.stop(
                    "YAML-TAG",
                    start(event),
                    "! gives this value a type of its own",
                    "delete the mark, or put quotes around text that starts with !"));
        }
    }

    private Tree sequence(Spot spot, boolean isFlow, int depth) {
        List<Tree> items = new ArrayList<>();
        Spot last = spot;
        Event event = events.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            Tree item = value(event, Optional.empty(), depth + 1);
            last = item.end();
            items.add(item);
            event = events.next();
        }
        // A block list shows no end of its own: the parser names the start of what follows it.
        return new Tree.Sequence(spot, isFlow ? end(event) : last, items);
    }

    private Tree mapping(Spot spot, boolean isFlow, int depth) {
        Map<String, Tree.Entry> entries = new LinkedHashMap<>();
        Spot last = spot;
        Event event = events.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            Spot key = start(event);
            Optional<String> name = keyName(event, depth);
            Tree value = value(events.next(), Optional.of(key), depth + 1);
            last = value.end();
            name.ifPresent(n -> add(entries, n, new Tree.Entry(key, value)));
            event = events.next();
        }
        return new Tree.Mapping(spot, isFlow ? end(event) : last, isFlow, entries);
    }

    private Optional<String> keyName(Event event, int depth) {
        Tree key = value(event, Optional.of(start(event)), depth + 1);
        if (key instanceof Tree.Scalar scalar && scalar.kind() != Tree.Kind.REFUSED) {
            return Optional.of(scalar.written());
        }
        if (!(key instanceof Tree.Scalar)) {
            found.add(source.stop(
                    "YAML-KEY",
                    start(event),
                    "this key is not a plain word",
                    "write one word, a colon, a space and the value"));
        }
        return Optional.empty();
    }

    private void add(Map<String, Tree.Entry> entries, String name, Tree.Entry entry) {
        Tree.Entry first = entries.putIfAbsent(name, entry);
        if (first != null) {
            found.add(source.stop(
                    "YAML-DUPLICATE-KEY",
                    entry.key(),
                    Characters.quoted(name) + " stands here a second time; the first is on line "
                            + first.key().line(),
                    "keep the one that is right and delete the other"));
        }
    }

    private static Spot start(Event event) {
        return SyntaxWords.spot(event.getStartMark());
    }

    private static Spot end(Event event) {
        return SyntaxWords.spot(event.getEndMark());
    }

    /** Leaves the recursion; the file is refused as a whole. */
    private static final class Hopeless extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final String code;
        private final transient Spot spot;

        private Hopeless(String code, Spot spot, String message) {
            super(message, null, false, false);
            this.code = code;
            this.spot = spot;
        }
    }
}
