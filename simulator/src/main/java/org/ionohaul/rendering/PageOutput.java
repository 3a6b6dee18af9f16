package org.ionohaul.rendering;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.WriterOutput;
import java.io.Writer;
import java.util.Set;
import org.ionohaul.picture.WordBreaks;
import org.jspecify.annotations.Nullable;

/** What is written into a page, so that a browser breaks its lines only where {@link WordBreaks} allows it. */
final class PageOutput extends OwaspHtmlTemplateOutput {
    /** What is copied, or sent back, as it stands. */
    private static final Set<String> VERBATIM = Set.of("pre", "code", "option", "title");

    private boolean isRunning;

    /** Writes to a writer. */
    PageOutput(Writer writer) {
        super(new WriterOutput(writer));
    }

    @Override
    public void setContext(String tagName, @Nullable String attributeName) {
        isRunning = attributeName == null && !VERBATIM.contains(tagName);
        super.setContext(tagName, attributeName);
    }

    @Override
    public void writeUserContent(@Nullable String value) {
        super.writeUserContent(value != null && isRunning ? WordBreaks.held(value) : value);
    }
}
