package org.ionohaul.report;

import java.io.StringWriter;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A picture under the pen. Escaping is the JDK's XML writer's; numbers are rounded to a tenth of a unit, so that the
 * file stays small and the same on every machine.
 *
 * <p>It scales with the page: sizes are in units of its own view box. It carries a title and a description for people who
 * hear it instead of seeing it; the numbers themselves stand in a table beside it.
 */
final class Svg {
    /** Height of ordinary lettering. */
    static final double LETTERING = 13;

    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter xml;

    /** Which point of a text stands at its position. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * Begins a picture.
     *
     * @param id a name unique on the page
     * @param width of the view box
     * @param height of the view box
     * @param title what the picture shows
     * @param description what a reader would see in it
     */
    Svg(String id, double width, double height, String title, String description) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        write(() -> {
            xml.writeStartElement("svg");
            attributes(
                    "xmlns",
                    "http://www.w3.org/2000/svg",
                    "viewBox",
                    "0 0 " + number(width) + " " + number(height),
                    "role",
                    "img",
                    "aria-labelledby",
                    id + "-title " + id + "-about",
                    "font-family",
                    "system-ui, sans-serif",
                    "font-size",
                    number(LETTERING),
                    "fill",
                    Palette.INK);
            textElement("title", title, "id", id + "-title");
            textElement("desc", description, "id", id + "-about");
        });
    }

    /** Draws a straight line. */
    void line(double x1, double y1, double x2, double y2, String colour, double width, String dash) {
        write(() -> {
            xml.writeEmptyElement("line");
            attributes(
                    "x1",
                    number(x1),
                    "y1",
                    number(y1),
                    "x2",
                    number(x2),
                    "y2",
                    number(y2),
                    "stroke",
                    colour,
                    "stroke-width",
                    number(width),
                    "stroke-dasharray",
                    dash);
        });
    }

    /** Draws a line along a path. */
    void stroke(SvgPath path, String colour, double width, String dash) {
        write(() -> {
            xml.writeEmptyElement("path");
            attributes(
                    "d",
                    path.toString(),
                    "fill",
                    "none",
                    "stroke",
                    colour,
                    "stroke-width",
                    number(width),
                    "stroke-linejoin",
                    "round",
                    "stroke-dasharray",
                    dash);
        });
    }

    /** Fills a rectangle, with a thin edge of the paper's colour; the text appears when a pointer rests on it. */
    void rectangle(double x, double y, double width, double height, String colour, String hint) {
        write(() -> {
            xml.writeStartElement("rect");
            attributes(
                    "x",
                    number(x),
                    "y",
                    number(y),
                    "width",
                    number(width),
                    "height",
                    number(height),
                    "fill",
                    colour,
                    "stroke",
                    Palette.PAPER,
                    "stroke-width",
                    "0.5");
            textElement("title", hint);
            xml.writeEndElement();
        });
    }

    /** Writes a text of ordinary size. */
    void text(double x, double y, Anchor anchor, String colour, String text) {
        write(() -> textElement(
                "text",
                text,
                "x",
                number(x),
                "y",
                number(y),
                "fill",
                colour,
                "text-anchor",
                anchor.name().toLowerCase(Locale.ROOT)));
    }

    /** Writes a text in bold. */
    void boldText(double x, double y, Anchor anchor, String colour, String text) {
        write(() -> textElement(
                "text",
                text,
                "x",
                number(x),
                "y",
                number(y),
                "fill",
                colour,
                "font-weight",
                "600",
                "text-anchor",
                anchor.name().toLowerCase(Locale.ROOT)));
    }

    /** Ends the picture and returns it as an SVG element. */
    String finished() {
        write(() -> {
            xml.writeEndElement();
            xml.flush();
        });
        return out.toString();
    }

    /** Returns a number as pictures write it: at most one decimal. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private void textElement(String name, String text, String... namesAndValues) throws XMLStreamException {
        xml.writeStartElement(name);
        attributes(namesAndValues);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void attributes(String... namesAndValues) throws XMLStreamException {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            xml.writeAttribute(namesAndValues[i], namesAndValues[i + 1]);
        }
    }

    private static void write(Stroke stroke) {
        try {
            stroke.draw();
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    private static IllegalStateException impossible(XMLStreamException e) {
        return new IllegalStateException("writing to memory failed", e);
    }

    @FunctionalInterface
    private interface Stroke {
        void draw() throws XMLStreamException;
    }
}
