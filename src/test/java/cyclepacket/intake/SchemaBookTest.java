package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

class SchemaBookTest {
    private static final String MODELINE = "# yaml-language-server: $schema=";

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void shipsSchemasThatFollowTheStandard(FileKind kind) {
        Schema standard = SchemaRegistry.withDialect(Dialects.getDraft202012())
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), standard.validate(SchemaBook.of(kind).text()));
    }

    /** Our own enum keyword must say what the library's says: checked on every file of every case. */
    @Test
    void agreesWithTheStandardDialectOnEveryCase() throws IOException {
        int compared = 0;
        for (Path file : caseFiles()) {
            FileKind kind = kindOf(file);
            List<cyclepacket.finding.Finding> ignored = new ArrayList<>();
            var tree = TreeReader.read(Source.of("x", Files.readAllBytes(file)), ignored);
            if (tree.isPresent()) {
                JsonNode node = JsonTree.of(tree.get());
                Schema standard = SchemaRegistry.withDialect(Dialects.getDraft202012())
                        .getSchema(
                                SchemaLocation.of(kind.schemaFile()),
                                SchemaBook.of(kind).text());
                assertEquals(
                        facts(standard.validate(node)),
                        facts(SchemaBook.of(kind).schema().validate(node)),
                        file.toString());
                compared++;
            }
        }
        assertTrue(compared > 50);
    }

    @Test
    void definesEachNameOnceForAllFiles() {
        Map<String, JsonNode> definitions = new HashMap<>();
        for (FileKind kind : FileKind.values()) {
            SchemaBook.of(kind).text().get("$defs").forEachEntry((name, definition) -> {
                JsonNode first = definitions.putIfAbsent(name, definition);
                assertTrue(first == null || first.equals(definition), name + " differs in " + kind);
            });
        }
        assertFalse(definitions.isEmpty());
    }

    @Test
    void isNamedByEveryDemoFile() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("plans"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                String first = Files.readAllLines(file).get(0);
                assertTrue(first.startsWith(MODELINE), file.toString());
                Path schema =
                        file.resolveSibling(first.substring(MODELINE.length())).normalize();
                assertTrue(Files.exists(schema), file + " names " + schema);
                assertEquals(kindOf(file).schemaFile(), schema.getFileName().toString());
            }
        }
    }

    private static List<Path> caseFiles() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/resources/conformance"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static FileKind kindOf(Path file) {
        return switch (file.getParent().getFileName().toString()) {
            case "patients" -> FileKind.PLAN;
            case "protocols" -> FileKind.PROTOCOL;
            case "medicines" -> FileKind.MEDICINE;
            case "syringes" -> FileKind.SYRINGE;
            default -> FileKind.CLINIC;
        };
    }

    private static TreeSet<String> facts(List<Error> errors) {
        TreeSet<String> facts = new TreeSet<>();
        errors.forEach(error -> facts.add(error.getInstanceLocation() + " " + error.getKeyword() + " "
                + error.getProperty() + " " + error.getSchemaLocation()));
        return facts;
    }
}
