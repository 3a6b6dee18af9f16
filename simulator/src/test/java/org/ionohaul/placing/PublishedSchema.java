package org.ionohaul.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ionohaul.rendering.ResultFolder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A schema that is shipped, and whether what is written keeps to it. */
public record PublishedSchema(String text) {
    public static PublishedSchema named(String fileName) throws IOException {
        return new PublishedSchema(Files.readString(Path.of("../results", fileName)));
    }

    public static String written(ResultFolder.Text file) throws IOException {
        StringWriter text = new StringWriter();
        file.writeTo(text);
        return text.toString();
    }

    private Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text);
    }

    /** Asserts that JSON keeps to the schema, and that each of its names is told there. */
    public void assertHolds(String json) {
        assertEquals(List.of(), schema().validate(json, InputFormat.JSON));
        Set<String> names = new TreeSet<>();
        collect(new JsonMapper().readTree(json), names);
        names.forEach(name -> assertTrue(text.contains("\"" + name + "\": {"), name));
    }

    public void assertRefuses(String json) {
        assertTrue(!schema().validate(json, InputFormat.JSON).isEmpty(), "must be refused");
    }

    private static void collect(JsonNode node, Set<String> names) {
        names.addAll(node.propertyNames());
        node.forEach(it -> collect(it, names));
    }
}
