package org.ionohaul.rendering;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * A page of its own with tables and charts.
 *
 * @param fileName the file's name, without folders
 * @param title what it is about
 * @param reading what to know first, a paragraph a line
 * @param tables tables that come first
 * @param charts the charts, each with its table
 * @param origin what made the page
 */
public record ChartPage(
        String fileName, String title, String reading, List<Table> tables, List<Chart> charts, String origin)
        implements ResultFolder.Text {
    /** Returns what to know first, paragraph by paragraph. */
    public List<String> paragraphs() {
        return reading.lines().toList();
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        PageFile.write("charts.jte", this, writer);
    }
}
