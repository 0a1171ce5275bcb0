package cyclepacket.intake;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.Dialects;
import cyclepacket.finding.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;

/** The JSON Schemas that ship with the program (draft 2020-12), each loaded when its first file is checked. */
final class SchemaBook {
    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDialect(Dialect.builder(Dialects.getDraft202012())
            .keyword(new EnumKeyword())
            .build());
    private static final Map<FileKind, Entry> LOADED = new ConcurrentHashMap<>();

    private SchemaBook() {}

    /** A schema ready to check with, and its text to look words up in. */
    record Entry(Schema schema, JsonNode text) {}

    static Entry of(FileKind kind) {
        return LOADED.computeIfAbsent(kind, SchemaBook::load);
    }

    private static Entry load(FileKind kind) {
        // JSON is YAML 1.2, so the reader at hand serves; JSON's own parser alone costs more start-up than all of this.
        List<Finding> faults = new ArrayList<>();
        Source source = Source.of(kind.schemaFile(), bytes(kind));
        JsonNode text = TreeReader.read(source, faults).map(JsonTree::of).orElseThrow();
        if (!faults.isEmpty()) {
            throw new IllegalStateException("a schema that ships with the program is broken: " + faults);
        }
        return new Entry(REGISTRY.getSchema(SchemaLocation.of(kind.schemaFile()), text), text);
    }

    private static byte[] bytes(FileKind kind) {
        try (InputStream in = SchemaBook.class.getResourceAsStream(kind.schemaFile())) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own file " + kind.schemaFile());
            }
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
