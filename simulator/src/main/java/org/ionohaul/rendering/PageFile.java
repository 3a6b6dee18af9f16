package org.ionohaul.rendering;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** How a page gets from its template into a file. */
public final class PageFile {
    private PageFile() {}

    /**
     * Writes a page.
     *
     * @param template name of the template
     * @param page what the template takes
     * @param file where to
     * @throws IOException if the disk refuses
     */
    public static void write(String template, Object page, Path file) throws IOException {
        TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
        try (Writer writer = Files.newBufferedWriter(file)) {
            engine.render(template, page, new WriterOutput(writer));
        }
    }
}
