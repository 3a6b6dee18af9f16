package org.ionohaul.report;

import java.io.IOException;
import java.io.Writer;
import org.ionohaul.analysis.Findings;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.rendering.ResultFolder;

/** The report of a study as one page that needs nothing else: no network and no other file. */
public record ReportHtml(Findings findings) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "report.html";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        PageFile.write("report.jte", ReportPage.of(findings), writer);
    }
}
