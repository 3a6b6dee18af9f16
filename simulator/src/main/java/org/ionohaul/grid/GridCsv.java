package org.ionohaul.grid;

import java.io.IOException;
import java.io.Writer;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.study.LineStore;

/**
 * The answers to a table of cases, as {@link GridColumns} says.
 *
 * @param heads the line of heads
 * @param lines the other lines
 */
public record GridCsv(String heads, LineStore lines) implements ResultFolder.Text {
    private static final String END = "\r\n";

    @Override
    public String fileName() {
        return "grid.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        writer.write(heads + END);
        lines.forEach(line -> writer.write(line + END));
    }
}
