package org.ionohaul.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** The report of a study as one page that needs nothing else: no network, no script, no other file. */
public record ReportHtml(Findings findings) implements ResultFolder.Entry {
    @Override
    public String fileName() {
        return "report.html";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
        try (Writer writer = Files.newBufferedWriter(file)) {
            engine.render("report.jte", ReportPage.of(findings), new WriterOutput(writer));
        }
    }
}
