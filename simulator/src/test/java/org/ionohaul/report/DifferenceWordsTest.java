package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.Difference.Fifth;
import org.ionohaul.analysis.SkyMeasure;
import org.ionohaul.scenario.Direction;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;

final class DifferenceWordsTest {
    @Test
    void theSentenceNamesPlaceMeasureAndTheModeThatIsAheadThere() {
        Difference difference = new Difference(
                true,
                SkyMeasure.MIDDLE_SINR_DB,
                635,
                0.5,
                1e-9,
                new Fifth(
                        0,
                        2,
                        6.2,
                        40,
                        new Estimate(0, 0, 0.1),
                        new Estimate(0.9, 0.72, 0.97),
                        new Estimate(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY)),
                new Fifth(
                        4,
                        14.4,
                        20,
                        40,
                        new Estimate(0.61, 0.4, 0.78),
                        new Estimate(0.3, 0.2, 0.5),
                        new Estimate(20, -3, 41)));
        assertEquals(
                "They differ most where the middle SNR at Flood Desk over the first 11 min is lowest"
                        + " (up to 6 dB): there Tough is first on 90 % of 40 (72-97 %), mostly as the only one to get through, and on 10 % neither does. They"
                        + " differ least where it is highest (from 14 dB): there Quick is first on 61 % of 40 (40-78 %), on the median one by 20 s (-3 s to 41 s).",
                new DifferenceWords(FabricatedStudy.result().scenario(), Direction.UPLOAD, difference, "Quick", "Tough")
                        .sentence());
    }

    /** Of 100 trials, each a tenth of a decibel worse, the last 20 begin at 12.0 dB and end at 10.1. */
    @Test
    void theFabricatedTrialsDifferByWhatTheFarEndHears() {
        List<String> sentences = CaseWords.differences(
                FabricatedStudy.result().scenario(),
                FabricatedStudy.findings(100).summary().cases().get(0),
                FabricatedStudy.findings(100).skies().cases().get(0),
                1);
        assertEquals(1, sentences.size());
        assertTrue(sentences.get(0).contains("at Flood Desk"), sentences.get(0));
    }
}
