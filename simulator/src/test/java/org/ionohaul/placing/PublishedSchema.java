package org.ionohaul.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.ionohaul.rendering.ResultFolder;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
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

    /** Returns one drawing of a picture on a page, which must be well-formed XML whose lettering begins within it. */
    public static String picture(String page, String id, String width) {
        String from = page.substring(page.indexOf("id=\"" + id + "\""));
        String svg = from.substring(from.indexOf("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"" + width));
        String text = svg.substring(0, svg.indexOf("</svg>") + "</svg>".length());
        try {
            NodeList letterings = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(text)))
                    .getElementsByTagName("text");
            for (int i = 0; i < letterings.getLength(); i++) {
                double x = Double.parseDouble(
                        letterings.item(i).getAttributes().getNamedItem("x").getNodeValue());
                assertTrue(x >= 0 && x <= Double.parseDouble(width.substring(2)), "lettering at " + x);
            }
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(text, e);
        }
        return text;
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
