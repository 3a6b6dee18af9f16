package org.ionohaul.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Limits;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said when keys are varied. */
final class WhatIfTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    @TempDir
    private Path folder = Path.of("");

    private static ModePoint changed(Estimate seconds, int quicker, int slower, double pValue, Estimate deadline) {
        Estimate any = new Estimate(0.5, 0.4, 0.6);
        return new ModePoint(
                any,
                any,
                any,
                List.of(new DeadlineChance(600, new Proportion(1, 2), any, new Limits(Map.of()))),
                new PairedEffect(
                        seconds,
                        seconds,
                        quicker,
                        slower,
                        pValue,
                        pValue < 0.05,
                        List.of(deadline),
                        List.of(deadline.low() > 0 || deadline.high() < 0),
                        0.1));
    }

    private static String sentence(ModePoint point) {
        return EffectWords.sentence("With x = 2", "Hare", point);
    }

    /** Without deadlines the surer mode may be the later one: then it is told how much more often it gets through. */
    @Test
    void theMarginOfAModeThatIsSurerAndLaterIsToldWithoutDeadlines() {
        Estimate often = new Estimate(0.7, 0.6, 0.8);
        Estimate seldom = new Estimate(0.2, 0.1, 0.3);
        Margin margin =
                new Margin(1, Verdict.Standing.SURER, seldom, often, seldom, List.of(), new Estimate(0.1, 0.05, 0.15));
        ModePoint mode = new ModePoint(
                often,
                often,
                often,
                List.of(),
                new PairedEffect(often, often, 0, 0, 1, false, List.of(), List.of(), 1));
        CasePoint point =
                new CasePoint(List.of(mode, mode), new Leaders(List.of(0), Optional.empty()), Optional.of(margin));
        assertEquals(
                "gets through on +10 % (+5 to +15) against Tough",
                PointWords.margin(point, FabricatedStudy.result().scenario().modes(), List.of()));
    }

    @Test
    void aChangeIsToldWithItsUncertainty() {
        Estimate nothing = new Estimate(0, -0.1, 0.1);
        assertEquals(
                "With x = 2, Hare is through 1 min 30 s sooner on the median trial (1 min to 2 min) and"
                        + " keeps 10 min on 12 more of 100 trials (5 to 19).",
                sentence(changed(new Estimate(-90, -120, -60), 80, 10, 1e-9, new Estimate(0.12, 0.05, 0.19))));
        assertEquals(
                "With x = 2, Hare is through less than a second later on the median trial (0 s to" + " 1 s).",
                sentence(changed(new Estimate(0.2, 0.1, 1), 1, 30, 1e-6, nothing)));
        assertEquals(
                "With x = 2, nothing changes for Hare that could not be chance (-5 s to +9 s).",
                sentence(changed(new Estimate(3, -5, 9), 12, 15, 0.7, nothing)));
        assertEquals(
                "With x = 2, not one trial differs for Hare.",
                sentence(changed(new Estimate(0, 0, 0), 0, 0, 1, nothing)));
        assertEquals(
                "With x = 2, Hare no longer gets through on many trials and keeps 10 min on 50 fewer of 100 trials (40"
                        + " to 60).",
                sentence(changed(new Estimate(NEVER, 5, NEVER), 0, 60, 1e-9, new Estimate(-0.5, -0.6, -0.4))));
    }

    /** Many trials leave little open: then a range may be no wider than what is written, and a change smaller. */
    @Test
    void aChangeOfADeadlineThatIsWrittenLikeItsRangeHasNone() {
        Estimate none = new Estimate(0, 0, 0);
        assertEquals(
                "With x = 2, Hare keeps 10 min on 12 more of 100 trials.",
                sentence(changed(none, 0, 0, 1, new Estimate(0.12, 0.118, 0.122))));
        assertEquals(
                "With x = 2, Hare keeps 10 min on less than 1 fewer of 100 trials.",
                sentence(changed(none, 0, 0, 1, new Estimate(-0.003, -0.004, -0.002))));
    }

    /** The test that calls it a change and the interval are not one and the same. */
    @Test
    void aRangeThatCrossesNothingHasSigns() {
        Estimate crossing = new Estimate(0.09, -0.01, 0.19);
        ModePoint point = changed(new Estimate(0, 0, 0), 0, 0, 1, crossing);
        PairedEffect called = new PairedEffect(
                point.effect().medianChangeSeconds(),
                point.effect().sureChangeSeconds(),
                0,
                0,
                1,
                false,
                List.of(crossing),
                List.of(true),
                0.1);
        assertEquals(
                "With x = 2, Hare keeps 10 min on 9 more of 100 trials (-1 to +19).",
                sentence(new ModePoint(
                        point.delivered(), point.medianSeconds(), point.ninthSeconds(), point.deadlines(), called)));
    }

    @Test
    void aModeThatArrivesOnlyAfterTheChangeIsToldSo() {
        Estimate nothing = new Estimate(0, -0.1, 0.1);
        assertEquals(
                "With x = 2, Hare gets through on many trials on which it would not otherwise.",
                sentence(changed(new Estimate(-NEVER, -NEVER, -5), 60, 0, 1e-9, nothing)));
        assertEquals(
                "With x = 2, Hare is neither sooner nor later beyond chance (-5 s to +9 s) and keeps 10 min on 12 more of"
                        + " 100 trials (5 to 19).",
                sentence(changed(new Estimate(3, -5, 9), 12, 15, 0.7, new Estimate(0.12, 0.05, 0.19))));
    }

    @Test
    void aPartialVariationSaysSoAndLeavesTheRestOpen() throws IOException {
        String text = String.join("\n", new VariationText(FabricatedVariation.twoKeys(4)).lines());
        assertTrue(text.contains("PARTIAL: interrupted after 4 of 6 combinations of values."), text);
        assertTrue(text.contains("not done"), text);
        Path file = folder.resolve("report.html");
        WhatIfHtml.of(FabricatedVariation.twoKeys(4), FabricatedStudy.provenance())
                .writeTo(file);
        assertTrue(Files.readString(file).contains("PARTIAL: interrupted"));
        String whole = String.join("\n", new VariationText(FabricatedVariation.oneKey(3)).lines());
        assertFalse(whole.contains("PARTIAL"), whole);
    }

    /** "Quick" is 40 s later a value and changes, "Tough" never does: it is told in one line instead of a table. */
    @Test
    void aModeThatNothingHappensToIsToldInALine() {
        String text = String.join("\n", new VariationText(FabricatedVariation.oneKey(3)).lines());
        assertTrue(text.contains("Tough: the same at every value"), text);
        assertTrue(text.contains("+40 s"), text);
        assertTrue(text.contains("+1 min 20 s"), text);
    }

    @Test
    void everyPicturesDescriptionSaysMoreThanWhatKindItIs() throws IOException {
        for (Variation variation : List.of(FabricatedVariation.oneKey(3), FabricatedVariation.twoKeys(6))) {
            Path file = folder.resolve("report.html");
            WhatIfHtml.of(variation, FabricatedStudy.provenance()).writeTo(file);
            List<String> described = Pattern.compile("role=\"img\" aria-label=\"([^\"]*)\"")
                    .matcher(Files.readString(file))
                    .results()
                    .map(it -> it.group(1))
                    .toList();
            assertFalse(described.isEmpty());
            described.forEach(it ->
                    assertTrue(it.matches(".*[0-9]+ (%|dB|of 100).*|.*[0-9] min [0-9]+ s.*|.*not reached.*"), it));
        }
    }

    @Test
    void whatAUserWroteIsEscapedOnThePage() throws IOException {
        Path file = folder.resolve("report.html");
        WhatIfHtml.of(FabricatedVariation.twoKeys(6), FabricatedStudy.provenance())
                .writeTo(file);
        assertFalse(Files.readString(file).contains("<busy>"));
    }
}
