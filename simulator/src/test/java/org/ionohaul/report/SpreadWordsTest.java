package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.analysis.SpreadSplit.InputShare;
import org.junit.jupiter.api.Test;

final class SpreadWordsTest {
    @Test
    void onlyWhatIsBeyondChanceIsNamed() {
        SpreadSplit split = new SpreadSplit(
                0.6,
                List.of(
                        new InputShare("far.snr", 0.35, 1e-9),
                        new InputShare("near.snr", 0.03, 0.2),
                        new InputShare("sky.path.1.delay", 0.02, 0.004)));
        assertEquals(
                "Why trials differ with Hare: 60 % luck of fading, 35 % not knowing far.snr, 2 % not knowing"
                        + " sky.path.1.delay. Measuring far.snr would sharpen this forecast most.",
                SpreadWords.sentence("Hare", split));
    }

    @Test
    void whereNothingMattersNoMeasurementIsAdvised() {
        assertEquals(
                "Why trials differ with Hare: 97 % luck of fading, hardly anything for not knowing inputs. No single"
                        + " measurement would sharpen this forecast.",
                SpreadWords.sentence("Hare", new SpreadSplit(0.97, List.of(new InputShare("far.snr", 0.03, 0.2)))));
    }
}
