package org.ionohaul.report;

import java.io.IOException;
import java.nio.file.Path;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.rendering.ResultFolder;

/** The report of a study as one page that needs nothing else: no network and no other file. */
public record ReportHtml(Findings findings) implements ResultFolder.Entry {
    @Override
    public String fileName() {
        return "report.html";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        PageFile.write("report.jte", ReportPage.of(findings), file);
    }
}
