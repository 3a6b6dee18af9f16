package org.ionohaul.whatif;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.report.Provenance;

/** What is found when keys are varied, as one page that needs nothing else. */
public record WhatIfHtml(WhatIfPage page) implements ResultFolder.Entry {
    /** Returns the page of a variation with at least one point. */
    public static WhatIfHtml of(Variation variation, Provenance provenance) {
        return new WhatIfHtml(new VariationPage(variation).page(provenance));
    }

    /** Returns the page of a tornado with at least one bar. */
    public static WhatIfHtml of(Tornado tornado, Provenance provenance) {
        return new WhatIfHtml(new TornadoPage(tornado).page(provenance));
    }

    @Override
    public String fileName() {
        return "report.html";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
        try (Writer writer = Files.newBufferedWriter(file)) {
            engine.render("whatif.jte", page, new WriterOutput(writer));
        }
    }
}
