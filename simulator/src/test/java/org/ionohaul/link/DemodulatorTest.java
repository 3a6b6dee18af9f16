package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.channel.Reception;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;
import org.junit.jupiter.api.Test;

/**
 * What a receiver makes of a burst, drawn by drawn: every copy of a frame is worth 0.3, so that two are decoded with a chance
 * of 0.6; a preamble is found with a chance of 0.25.
 */
final class DemodulatorTest {
    private static final Reception STEADY = new SteadyReception(12);

    private final Deque<Double> draws = new ArrayDeque<>();
    private final CombiningStore store = new CombiningStore(4);
    private final Burst burst = new Burst();

    private Demodulator demodulator(Combining combining, double estimateDeviationDb) {
        Waveform plain = new ThreeTenths();
        ArqRules rules = PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false);
        ArqRules arq = new ArqRules(
                rules.scheme(),
                8,
                8,
                8,
                rules.longestOverNanos(),
                combining,
                4,
                rules.answerToSilence(),
                5,
                false,
                0,
                0);
        UniformRandomProvider drawn = new Drawn();
        return new Demodulator(
                new ModeSpec(
                        new Signals(List.of(plain, plain), plain, plain, plain),
                        arq,
                        new RatePolicyRules.SnrLookup(1, 0.1, 0, 0, estimateDeviationDb)),
                new Chances(drawn, drawn, RandomSource.XO_SHI_RO_256_PP.create(41L), drawn, drawn, drawn));
    }

    /** Sends frames again and tells which are decoded. */
    private String decoded(Demodulator demodulator, int dataRate, int... starts) {
        burst.openOver(0, dataRate);
        for (int start : starts) {
            burst.addFrame(start, start + 10, 0);
        }
        return decoded(demodulator);
    }

    private String decoded(Demodulator demodulator) {
        burst.leave(0, false, 0, 1);
        demodulator.decode(STEADY, burst, 0, store);
        StringBuilder fate = new StringBuilder();
        for (int frame = 0; frame < burst.frames(); frame++) {
            fate.append(burst.isDecoded(frame) ? 1 : 0);
        }
        return fate.toString();
    }

    @Test
    void aBurstIsFoundByADrawBelowItsChance() {
        Demodulator demodulator = demodulator(Combining.NONE, 0);
        draws.addAll(List.of(0.0, 0.24, 0.25, 0.9));
        assertTrue(demodulator.isFound(STEADY, burst, 0));
        assertTrue(demodulator.isFound(STEADY, burst, 0));
        assertFalse(demodulator.isFound(STEADY, burst, 0));
        assertFalse(demodulator.isFound(STEADY, burst, 0));
    }

    @Test
    void withoutCombiningEachCopyHasADrawOfItsOwn() {
        Demodulator demodulator = demodulator(Combining.NONE, 0);
        draws.addAll(List.of(0.29, 0.3, 0.9, 0.59, 0.1));
        assertEquals("10", decoded(demodulator, 1, 0, 10));
        assertEquals("001", decoded(demodulator, 1, 0, 10, 20));
    }

    @Test
    void withCombiningOneDrawDecidesAFrameHoweverManyCopiesCome() {
        Demodulator demodulator = demodulator(Combining.CHASE, 0);
        // 0.5 is decoded by the second copy, 0.6 by the third, 0.2 at once.
        draws.addAll(List.of(0.5, 0.6, 0.2));
        assertEquals("001", decoded(demodulator, 1, 0, 10, 20));
        assertEquals("10", decoded(demodulator, 1, 0, 10));
        assertEquals("1", decoded(demodulator, 1, 10));
        // A frame that was decoded is drawn anew if it comes again.
        draws.addAll(List.of(0.5));
        assertEquals("0", decoded(demodulator, 1, 0));
        assertEquals(0, draws.size());
    }

    @Test
    void aDrawAsHighAsTheChanceDecodesNothing() {
        Demodulator demodulator = demodulator(Combining.CHASE, 0);
        draws.addAll(List.of(0.3));
        assertEquals("0", decoded(demodulator, 1, 0));
        store.empty();
        draws.addAll(List.of(0.6));
        assertEquals("0", decoded(demodulator, 1, 0));
        assertEquals("0", decoded(demodulator, 1, 0));
    }

    @Test
    void whatIsHeldOfAnotherDataRateIsForgotten() {
        Demodulator demodulator = demodulator(Combining.CHASE, 0);
        draws.addAll(List.of(0.5, 0.5));
        assertEquals("0", decoded(demodulator, 1, 0));
        assertEquals("0", decoded(demodulator, 2, 0));
        assertEquals("1", decoded(demodulator, 2, 0));
    }

    @Test
    void shortBurstsAreNotCombined() {
        Demodulator demodulator = demodulator(Combining.CHASE, 0);
        burst.say(Message.CALL, 0, 0);
        draws.addAll(List.of(0.5, 0.5));
        assertEquals("0", decoded(demodulator));
        assertEquals("0", decoded(demodulator));
    }

    /** A third of the chance is that of a wrong frame: below 0.2 it is right, below 0.3 wrong, else not decoded. */
    @Test
    void theUpperPartOfTheChanceIsThatOfAFrameThatIsWrong() {
        Demodulator demodulator = demodulator(Combining.NONE, 0);
        draws.addAll(List.of(0.19, 0.2, 0.29, 0.3));
        assertEquals("1110", decoded(demodulator, 1, 0, 10, 20, 30));
        assertFalse(burst.isWrong(0));
        assertTrue(burst.isWrong(1));
        assertTrue(burst.isWrong(2));
        assertFalse(burst.isWrong(3));
    }

    /** 4 standard errors: of the mean 3 / sqrt(4000), of the variance 9 sqrt(2 / 4000). */
    @Test
    void measuredSnrErrsAsMuchAsItIsSaidTo() {
        Demodulator demodulator = demodulator(Combining.NONE, 3);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 4000; i++) {
            double error = demodulator.measuredSnrDb(STEADY, burst, 0) - 12;
            sum += error;
            squares += error * error;
        }
        assertEquals(0, sum / 4000, 4 * 3 / Math.sqrt(4000));
        assertEquals(9, squares / 4000, 4 * 9 * Math.sqrt(2.0 / 4000));
    }

    /** Gives what is written down, and nothing that is not. */
    private final class Drawn implements UniformRandomProvider {
        @Override
        public long nextLong() {
            throw new AssertionError("only shares are drawn");
        }

        @Override
        public double nextDouble() {
            return draws.remove();
        }
    }

    private record ThreeTenths() implements Waveform {
        @Override
        public int payloadBytes() {
            return 10;
        }

        @Override
        public long burstNanos(int frames) {
            return frames * 1000L;
        }

        @Override
        public long preambleNanos() {
            return 0;
        }

        @Override
        public double detectionProbability(Reception reception, long startNanos) {
            return 0.25;
        }

        @Override
        public double evidence(Reception reception, long startNanos, int frame, int frames) {
            return 0.3;
        }

        @Override
        public double combined(double earlier, double fresh) {
            return earlier + fresh;
        }

        @Override
        public double decodingProbability(double evidence) {
            return evidence;
        }

        @Override
        public double unnoticedErrorProbability(double evidence) {
            return evidence - 0.2;
        }

        @Override
        public double meanSnrDb(Reception reception, long startNanos, int frames) {
            return 12;
        }
    }
}
