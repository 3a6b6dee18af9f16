package org.ionohaul.whatif;

import java.io.IOException;
import java.io.Writer;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Provenance;

/** What is found when keys are varied, as one page that needs nothing else. */
public record WhatIfHtml(WhatIfPage page) implements ResultFolder.Text {
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
    public void writeTo(Writer writer) throws IOException {
        PageFile.write("whatif.jte", page, writer);
    }
}
