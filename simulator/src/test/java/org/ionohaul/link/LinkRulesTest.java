package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.limits.TestedRange;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;
import org.junit.jupiter.api.Test;

/** The ranges that the rules' own Javadoc promises. */
final class LinkRulesTest {
    private static final long MOST_FRAMES = 10_000;

    @Test
    void framesAreCountedFromOneToTenThousand() {
        TestedRange.ofCount("windowFrames", 1, MOST_FRAMES, it -> arq((int) it, 1, 1, 1, 0, 1, 0, 0));
        TestedRange.ofCount("shortOverFrames", 1, MOST_FRAMES, it -> arq(1, (int) it, 10_000, 1, 0, 1, 0, 0));
        TestedRange.ofCount("longOverFrames", 5, MOST_FRAMES, it -> arq(1, 5, (int) it, 1, 0, 1, 0, 0));
        TestedRange.ofCount("storeFrames", 0, MOST_FRAMES, it -> arq(1, 1, 1, 1, (int) it, 1, 0, 0));
    }

    @Test
    void timesAreNotNegativeAndSilencesEnd() {
        TestedRange.ofCount("longestOverNanos", 1, Long.MAX_VALUE, it -> arq(1, 1, 1, it, 0, 1, 0, 0));
        TestedRange.ofCount("silencesToLost", 1, 1000, it -> arq(1, 1, 1, 1, 0, (int) it, 0, 0));
        TestedRange.ofCount("marginNanos", 0, Long.MAX_VALUE, it -> arq(1, 1, 1, 1, 0, 1, it, 0));
        TestedRange.ofCount("cycleNanos", 0, Long.MAX_VALUE, it -> arq(1, 1, 1, 1, 0, 1, 0, it));
    }

    @Test
    void onlyAModeWithACycleHasARhythm() {
        assertFalse(arq(1, 1, 1, 1, 0, 1, 0, 0).hasRhythm());
        assertTrue(arq(1, 1, 1, 1, 0, 1, 0, 1).hasRhythm());
    }

    @Test
    void anOverIsAtFirstAsLongAsAShortOneIfTheRulesAllowSoMuch() {
        Waveform tenthOfASecond =
                PlainLink.parts(new StationTimes(0, 0, 0, 0)).mode().signals().dataRate(1);
        assertEquals(3, arq(8, 3, 6, 1_000_000_000, 0, 1, 0, 0).usualFrames(tenthOfASecond));
        assertEquals(2, arq(8, 3, 6, 200_000_000, 0, 1, 0, 0).usualFrames(tenthOfASecond));
    }

    @Test
    void aStationNeedsNoTimeOrSome() {
        TestedRange.ofCount("hangNanos", 0, Long.MAX_VALUE, it -> new StationTimes(it, 0, 0, 0));
        TestedRange.ofCount("relayNanos", 0, Long.MAX_VALUE, it -> new StationTimes(0, it, 0, 0));
        TestedRange.ofCount("recoveryNanos", 0, Long.MAX_VALUE, it -> new StationTimes(0, 0, it, 0));
        TestedRange.ofCount("processingNanos", 0, Long.MAX_VALUE, it -> new StationTimes(0, 0, 0, it));
        StationTimes times = new StationTimes(0, 0, 0, 0);
        TestedRange.ofCount("busyDetectionNanos", 0, Long.MAX_VALUE, it -> new Radio(times, FoldBack.NEVER, it));
    }

    @Test
    void powerFallsByFortyDecibelsAtMost() {
        TestedRange.ofCount("afterNanos", 1, Long.MAX_VALUE, it -> new FoldBack(it, 3, 0));
        TestedRange.ofNumber("dropDb", 0, 40, it -> new FoldBack(1, it, 0));
        TestedRange.ofCount("coolingNanos", 0, Long.MAX_VALUE, it -> new FoldBack(1, 3, it));
    }

    @Test
    void aModeBeginsAtADataRateThatItHasAndEachCarriesBytes() {
        ModeSpec four = PlainLink.parts(new StationTimes(0, 0, 0, 0)).mode();
        for (int start : List.of(1, 4)) {
            assertDoesNotThrow(() -> new ModeSpec(four.signals(), four.arq(), new RatePolicyRules.Fixed(start)));
        }
        for (int start : List.of(0, 5)) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new ModeSpec(four.signals(), four.arq(), new RatePolicyRules.Fixed(start)));
        }
        Waveform carrier = four.signals().dataRate(1);
        Waveform empty = PlainLink.threshold(0, 0);
        assertDoesNotThrow(() -> new Signals(List.of(PlainLink.threshold(1, 0)), empty, empty, empty));
        assertThrows(IllegalArgumentException.class, () -> new Signals(List.of(carrier, empty), empty, empty, empty));
        assertThrows(IllegalArgumentException.class, () -> new Signals(List.of(), empty, empty, empty));
    }

    @Test
    void eachEndHasItsOwnRadioAndItsOwnEars() {
        Radio slow = Radio.of(new StationTimes(1, 1, 1, 1));
        Radio quick = Radio.of(new StationTimes(0, 0, 0, 0));
        LinkParts plain = PlainLink.parts(new StationTimes(0, 0, 0, 0));
        LinkParts parts = new LinkParts(plain.mode(), slow, quick, plain.chances());
        assertEquals(slow, parts.radio(End.NEAR));
        assertEquals(quick, parts.radio(End.FAR));
        Reception weak = new SteadyReception(-5);
        Reception strong = new SteadyReception(5);
        ChannelWatch busyFarEnd = (end, from, until) -> end == End.FAR;
        PairEther ether = new PairEther(weak, strong, busyFarEnd, 0);
        Transmissions none = new Transmissions();
        assertEquals(weak, ether.reception(PairEther.FAR, PairEther.NEAR, none));
        assertEquals(strong, ether.reception(PairEther.NEAR, PairEther.FAR, none));
        assertFalse(ether.isOccupied(PairEther.NEAR, 0, 1, none));
        assertTrue(ether.isOccupied(PairEther.FAR, 0, 1, none));
        assertThrows(IllegalArgumentException.class, () -> new PairEther(weak, strong, busyFarEnd, -1));
    }

    private static ArqRules arq(
            int window,
            int shortOver,
            int longOver,
            long longestNanos,
            int store,
            int silences,
            long margin,
            long cycle) {
        return new ArqRules(
                ArqScheme.SELECTIVE_REPEAT,
                window,
                shortOver,
                longOver,
                longestNanos,
                Combining.NONE,
                store,
                ArqRules.AnswerToSilence.REPEAT,
                silences,
                false,
                margin,
                cycle);
    }
}
