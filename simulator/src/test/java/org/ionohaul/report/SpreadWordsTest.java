package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.analysis.SpreadSplit.InputShare;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;

final class SpreadWordsTest {
    private static Estimate share(double value) {
        return new Estimate(value, Math.max(0, value - 0.05), Math.min(1, value + 0.05));
    }

    private static InputShare input(String key, double share, double pValue) {
        return new InputShare(key, share(share), pValue, List.of(share(0.24)));
    }

    @Test
    void onlyWhatIsBeyondChanceIsNamed() {
        SpreadSplit split = new SpreadSplit(
                share(0.6),
                List.of(
                        input("far.snr", 0.35, 1e-9),
                        input("near.snr", 0.03, 0.2),
                        input("sky.path.1.delay", 0.02, 0.004)),
                List.of("far.snr"));
        assertEquals(
                "Why trials differ with Hare: 60 % (55-65 %) luck and combinations of what is not known, 35 % (30-40"
                        + " %) not knowing SNR at Flood Desk, 2 % (0-7 %) not knowing delay of path 1. Measuring SNR at Flood Desk is worth"
                        + " most: it would move the chance of 10 min by some 24 of 100 (19 to 29) either way.",
                SpreadWords.sentence(FabricatedStudy.result().scenario(), "Hare", List.of(600.0), split));
    }

    @Test
    void inputsThatCantBeToldApartAreNamedTogether() {
        SpreadSplit split = new SpreadSplit(
                share(0.3),
                List.of(input("far.snr", 0.35, 1e-9), input("near.snr", 0.36, 1e-9)),
                List.of("near.snr", "far.snr"));
        assertTrue(SpreadWords.sentence(FabricatedStudy.result().scenario(), "Hare", List.of(600.0), split)
                .contains(
                        "Measuring SNR at Weir Cottage or SNR at Flood Desk is worth most, between which the trials do not tell: SNR at Weir Cottage"
                                + " would move"));
    }

    /** All trials keep the second deadline, so that nothing moves its chance. */
    @Test
    void aDeadlineThatEveryTrialKeepsIsNoReasonToMeasure() {
        SpreadSplit split = new SpreadSplit(
                share(0.6),
                List.of(new InputShare("far.snr", share(0.4), 1e-9, List.of(share(0.24), new Estimate(0, 0, 0)))),
                List.of("far.snr"));
        assertTrue(SpreadWords.sentence(FabricatedStudy.result().scenario(), "Hare", List.of(600.0, 1500.0), split)
                .endsWith("it would move the chance of 10 min by some 24 of 100 (19 to 29) either way."));
    }

    /** With one unknown input there are no combinations: what it does not explain is luck. */
    @Test
    void whereNothingMattersNoMeasurementIsAdvised() {
        SpreadSplit split = new SpreadSplit(share(0.97), List.of(input("far.snr", 0.03, 0.2)), List.of());
        assertEquals(
                "Why trials differ with Hare: 97 % (92-100 %) luck, hardly anything for not knowing inputs. Which"
                        + " measurement would move the chance of a deadline most these trials do not tell: one moves it by"
                        + " at most 29 of 100 either way.",
                SpreadWords.sentence(FabricatedStudy.result().scenario(), "Hare", List.of(600.0), split));
    }

    @Test
    void whereEveryTrialKeepsTheDeadlineNoMeasurementIsSeenToMatter() {
        Estimate none = new Estimate(0, 0, 0);
        SpreadSplit split = new SpreadSplit(
                share(0.6), List.of(new InputShare("far.snr", share(0.4), 1e-9, List.of(none))), List.of());
        assertTrue(SpreadWords.sentence(FabricatedStudy.result().scenario(), "Hare", List.of(600.0), split)
                .endsWith("No measurement is seen to matter for a deadline: each is kept on all of these trials"
                        + " or on none."));
    }
}
