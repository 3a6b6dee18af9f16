package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ionohaul.channel.End;
import org.ionohaul.rate.DesignRates;
import org.ionohaul.rate.LossCurves;
import org.junit.jupiter.api.Test;

/** Times added by hand: short bursts last 100 ms, frames of an over 100 ms each, up to eight an over. */
final class TimingTest {
    private static final long MILLI = 1_000_000L;
    private static final StationTimes NEAR = new StationTimes(30 * MILLI, 10 * MILLI, 20 * MILLI, 5 * MILLI);
    private static final StationTimes FAR = new StationTimes(0, 15 * MILLI, 0, 70 * MILLI);

    private final ModeSpec mode = PlainLink.parts(NEAR).mode();
    private final Timing timing = new Timing(mode, NEAR, FAR, 3 * MILLI);

    @Test
    void aStationLeavesTheLongerOfWhatItNeedsAndWhatTheOtherNeeds() {
        // Near itself: 5 + 10; far until it hears: 0 + 15 + 0. Far itself: 70 + 15; near until it hears: 30 + 10 + 20.
        assertEquals(15 * MILLI, timing.answerNanos(End.NEAR));
        assertEquals(85 * MILLI, timing.answerNanos(End.FAR));
    }

    @Test
    void whoWaitsAllowsForBothWaysTheOthersTurnaroundAndTheAnswer() {
        assertEquals((3 + 3 + 85 + 100) * MILLI + 1, timing.waitNanos(End.NEAR, Message.ACKNOWLEDGEMENT));
        assertEquals((3 + 3 + 15 + 100) * MILLI + 1, timing.waitNanos(End.FAR, Message.ACKNOWLEDGEMENT));
    }

    @Test
    void aCycleIsAnOverItsAcknowledgementAndBothTurnarounds() {
        assertEquals((800 + 100 + 15 + 85 + 6) * MILLI, timing.cycleNanos(2, 8));
        assertEquals(800.0 / 1006, timing.overShare(2), 1e-12);
        assertEquals(8 * 20 / 1.006, timing.cleanBytesPerSecond(2), 1e-9);
    }

    @Test
    void theStationThatAnswersWaitsOneCycleLongerThanTheOtherNeedsToFindOut() {
        // Five silences lose the link: six overs of 800 ms, each with the longer wait, that of the near end, and the
        // longer
        // time before sending again, that of the far end: near might still be deaf for 30 + 10 + 20 ms.
        assertEquals(6 * ((800 + 191 + 60) * MILLI + 1), timing.supervisionNanos());
    }

    /** A margin of 50 ms: 50 ms longer waits, after which the near end is deaf for 10 ms more, the far one no longer. */
    @Test
    void aMarginIsWaitedForAndNotWaitedForAgain() {
        Timing patient = new Timing(withMargin(50 * MILLI), NEAR, FAR, 3 * MILLI);
        assertEquals((3 + 3 + 85 + 100 + 50) * MILLI + 1, patient.waitNanos(End.NEAR, Message.ACKNOWLEDGEMENT));
        assertEquals(0, patient.deafAfterSilenceNanos(End.NEAR));
        assertEquals(10 * MILLI, patient.deafAfterSilenceNanos(End.FAR));
        assertEquals(6 * ((800 + 241 + 15) * MILLI + 1), patient.supervisionNanos());
    }

    @Test
    void theMakersKnowWhatEachDataRateBringsOnTheLink() {
        LossCurves curves = new LossCurves(new double[4][1], new double[4][1]);
        assertEquals(4, timing.dataRateCount());
        DesignRates rates = timing.designRates(curves);
        for (int dataRate = 1; dataRate <= 4; dataRate++) {
            assertEquals(8 * 5 * Math.pow(2, dataRate) / 1.006, rates.cleanBytesPerSecond(dataRate), 1e-9);
        }
    }

    @Test
    void anOverIsNeverLongerThanTheRulesAllowUnlessOneFrameAloneIs() {
        assertEquals(8, timing.mostFrames(1));
        assertEquals(
                1,
                PlainLink.rules(ArqScheme.STOP_AND_WAIT, false)
                        .mostFrames(mode.signals().dataRate(1)));
        assertEquals(3, withLongestOver(399 * MILLI));
        assertEquals(4, withLongestOver(400 * MILLI));
        assertEquals(1, withLongestOver(50 * MILLI));
    }

    private int withLongestOver(long nanos) {
        return rules(nanos, 0).mostFrames(mode.signals().dataRate(1));
    }

    private ModeSpec withMargin(long nanos) {
        return new ModeSpec(mode.signals(), rules(mode.arq().longestOverNanos(), nanos), mode.ratePolicy());
    }

    private ArqRules rules(long longestOverNanos, long marginNanos) {
        ArqRules plain = mode.arq();
        return new ArqRules(
                plain.scheme(),
                plain.windowFrames(),
                plain.shortOverFrames(),
                plain.longOverFrames(),
                longestOverNanos,
                plain.combining(),
                plain.storeFrames(),
                plain.answerToSilence(),
                plain.silencesToLost(),
                plain.listensFirst(),
                marginNanos,
                plain.cycleNanos());
    }
}
