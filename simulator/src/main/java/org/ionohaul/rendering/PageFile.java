package org.ionohaul.rendering;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import java.io.Writer;

/** How a page is made from its template. */
public final class PageFile {
    private PageFile() {}

    /**
     * Writes a page.
     *
     * @param template name of the template
     * @param page what the template takes
     * @param writer where to
     */
    public static void write(String template, Object page, Writer writer) {
        TemplateEngine.createPrecompiled(ContentType.Html).render(template, page, new PageOutput(writer));
    }
}
