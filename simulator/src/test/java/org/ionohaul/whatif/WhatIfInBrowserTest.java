package org.ionohaul.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ionohaul.report.BrowserPage;
import org.ionohaul.report.FabricatedStudy;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages of vary as a browser shows them; skipped where there is none. */
final class WhatIfInBrowserTest {
    @TempDir
    private Path folder = Path.of("");

    /** Questions, each with its number of pictures: two cases, each with two deadlines. */
    private enum Question {
        /** The strip, two times, two chances. */
        ONE_KEY(2 * 5) {
            @Override
            WhatIfHtml page() {
                return WhatIfHtml.of(FabricatedVariation.oneKey(3), FabricatedStudy.provenance());
            }
        },
        /** As many maps. */
        TWO_KEYS(2 * 5) {
            @Override
            WhatIfHtml page() {
                return WhatIfHtml.of(FabricatedVariation.twoKeys(4), FabricatedStudy.provenance());
            }
        },
        /** One time, two chances. */
        TORNADO(2 * 3) {
            @Override
            WhatIfHtml page() {
                return WhatIfHtml.of(FabricatedVariation.tornado(), FabricatedStudy.provenance());
            }
        };

        private final int pictures;

        Question(int pictures) {
            this.pictures = pictures;
        }

        abstract WhatIfHtml page();
    }

    private BrowserPage open(Question question) throws IOException {
        Path file = folder.resolve("report.html");
        question.page().writeTo(file);
        Optional<BrowserPage> page = BrowserPage.of(file);
        assumeTrue(page.isPresent(), "no Chromium on this machine: the page is not looked at in a browser");
        return page.orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void itOpensWithoutAComplaintAndAsksForNothingElse(Question question) throws IOException {
        assertEquals(List.of(), open(question).complaintsAndRequests());
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void nothingJutsOutAtAnyWidth(Question question) throws IOException {
        String seen = open(question).seen();
        for (int width : BrowserPage.WIDTHS) {
            assertTrue(seen.contains(width + " wide, needs " + width + "\n"), seen);
        }
        assertEquals(
                BrowserPage.WIDTHS.size() * question.pictures,
                seen.split("drawn 1\n", -1).length - 1,
                "widths x pictures");
        assertFalse(seen.contains("juts out"), seen);
        assertFalse(seen.contains("overlap"), seen);
        assertFalse(seen.contains("faint"), seen);
        String dark = open(question).seenInTheDark();
        assertTrue(dark.contains("paper rgb(20, 24, 28)"), dark);
        assertFalse(dark.contains("faint"), dark);
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void itPrints(Question question) throws IOException {
        String printed = open(question).printed();
        assertTrue(printed.startsWith("%PDF-"));
        assertTrue(printed.split("/Type /Page\\b", -1).length - 1 >= 2, "pages");
    }
}
