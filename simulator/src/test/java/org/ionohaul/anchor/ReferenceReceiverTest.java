package org.ionohaul.anchor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.gamma.Erfc;
import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference receiver against textbooks, before anything is measured by it. */
final class ReferenceReceiverTest {
    private static final long SEED = 20;

    static Stream<ReferenceLink> links() {
        return Stream.of(new SingleCarrier(Mapping.QPSK), new Multicarrier(Mapping.QPSK));
    }

    @ParameterizedTest
    @MethodSource("links")
    void withoutFadingBitsAreWrongAsOftenAsTheBooksSay(ReferenceLink link) {
        // QPSK: Q(sqrt(Es/N0)) a bit (Proakis). Es/N0 = SNR in 3 kHz x 3000 / 2400.
        double esN0 = Decibels.toRatio(6);
        double expected = tail(Math.sqrt(esN0));
        AirCondition white = AirCondition.onePath("white noise", 0);
        int frames = 20;
        double share = wrongBits(link, white, frames, 6 - Decibels.ofRatio(3000 / 2400.0));
        // Bits err independently: three and a half standard errors.
        double error = Math.sqrt(expected * (1 - expected) / (frames * link.dataSymbols() * 2.0));
        assertEquals(expected, share, 3.5 * error);
    }

    @ParameterizedTest
    @MethodSource("links")
    void onARayleighPathBitsAreWrongAsOftenAsTheBooksSay(ReferenceLink link) {
        // (1 - sqrt(g / (1 + g))) / 2 a bit, g = Es/N0 / 2 (Proakis). 10 Hz of spread would blur the carriers, so 2 Hz:
        // skies of 20 frames 20 s apart, all independent, each with some three fades.
        double g = Decibels.toRatio(10) / 2;
        double expected = (1 - Math.sqrt(g / (1 + g))) / 2;
        AirCondition fading = AirCondition.onePath("one path", 2);
        double[] shares = IntStream.range(0, 100)
                .mapToDouble(frame -> wrongBits(link, fading, frame, frame + 1, 10 - Decibels.ofRatio(3000 / 2400.0)))
                .toArray();
        double mean = Arrays.stream(shares).average().orElseThrow();
        double variance = Arrays.stream(shares)
                        .map(share -> (share - mean) * (share - mean))
                        .sum()
                / (shares.length - 1);
        assertEquals(expected, mean, 3.5 * Math.sqrt(variance / shares.length));
    }

    @Test
    void theCodeHasTheDistancesOfTheHandbook() {
        // Paths that leave the zero path and come back, by weight 10 to 14: 11, 0, 38, 0, 193 (from memory of the
        // handbooks' distance spectra of 133, 171).
        long[] found = new long[15];
        walk(1 << (ConvolutionalCode.TAIL - 1), 2, found);
        assertArrayEquals(new long[] {11, 0, 38, 0, 193}, Arrays.copyOfRange(found, 10, 15));
        assertEquals(0, Arrays.stream(found, 0, 10).sum());
    }

    @Test
    void framesAreLostAsOftenAsTheUnionBoundAllows() {
        // At Eb/N0 3.25 dB: information bits times the sum over weights d of paths times Q(sqrt(2 d R Eb/N0)), with R =
        // 1/2
        // (Proakis 8.2). The bound is not reached, since errors come together, but is known to be near at low loss.
        AnchorBench bench =
                new AnchorBench(new SingleCarrier(Mapping.QPSK), AirCondition.onePath("white noise", 0), 800, SEED);
        double ebN0Db = 3.25;
        double ebN0 = Decibels.toRatio(ebN0Db);
        int[] weights = {10, 12, 14, 16, 18};
        int[] paths = {11, 38, 193, 1331, 7275};
        double bound = bench.link().informationBits()
                * IntStream.range(0, weights.length)
                        .mapToDouble(i -> paths[i] * tail(Math.sqrt(weights[i] * ebN0)))
                        .sum();
        // QPSK with a code of rate 1/2 carries one bit a symbol: Eb = Es.
        double loss = bench.referenceLoss(ebN0Db - Decibels.ofRatio(3000 / 2400.0), Tracking.KNOWN);
        double error = Math.sqrt(bound / bench.frames());
        assertTrue(loss <= bound + 2.5 * error, "loss " + loss + ", bound " + bound);
        assertTrue(loss >= bound / 2 - 2.5 * error, "loss " + loss + ", bound " + bound);
    }

    @Test
    void theInterleaverOnlyReorders() {
        for (int length : new int[] {64, 2016, 2048}) {
            BlockInterleaver interleaver = new BlockInterleaver(length);
            int[] places =
                    IntStream.range(0, length).map(interleaver::place).sorted().toArray();
            assertArrayEquals(IntStream.range(0, length).toArray(), places);
        }
    }

    @Test
    void straightLinesMissASmoothPathByTheFourthPowerOfTheStep() {
        // Between looks a distance T apart a straight line misses g by (t - a)(t - b) g''/2; the mean square over the
        // step
        // is T^4 / 120 times that of g'', which for exp(-(pi B t)^2 / 2) is 3 (pi B)^4: pi^4 (B T)^4 / 40.
        double spreadHz = 1;
        double step = 0.1;
        double[] times =
                IntStream.range(0, 100).mapToDouble(i -> (i + 0.5) / 100 * step).toArray();
        double[] looks = {0, step};
        double[][] lines = Tracking.LINES.weights(looks, times, spreadHz, 0);
        double missed = 0;
        for (int i = 0; i < times.length; i++) {
            double before = correlation(times[i], spreadHz);
            double after = correlation(step - times[i], spreadHz);
            double a = lines[i][0];
            double b = lines[i][1];
            missed += 1 + a * a + b * b + 2 * a * b * correlation(step, spreadHz) - 2 * a * before - 2 * b * after;
        }
        double expected = Math.pow(Math.PI * spreadHz * step, 4) / 40;
        assertEquals(expected, missed / times.length, 0.05 * expected);
    }

    private static double correlation(double seconds, double spreadHz) {
        return Math.exp(-Math.pow(Math.PI * spreadHz * seconds, 2) / 2);
    }

    private static void walk(int state, int weight, long[] found) {
        for (int bit = 0; bit < 2; bit++) {
            int register = (bit << ConvolutionalCode.TAIL) | state;
            int next = weight + ConvolutionalCode.weight(register);
            if (next >= found.length) {
                continue;
            }
            if (register >> 1 == 0) {
                found[next]++;
            } else {
                walk(register >> 1, next, found);
            }
        }
    }

    private static double wrongBits(ReferenceLink link, AirCondition condition, int frames, double snrDb) {
        return wrongBits(link, condition, 0, frames, snrDb);
    }

    private static double wrongBits(ReferenceLink link, AirCondition condition, int from, int to, double snrDb) {
        AnchorBench bench = new AnchorBench(link, condition, to, SEED);
        return IntStream.range(from, to)
                .mapToDouble(frame -> bench.wrongBits(frame, snrDb, Tracking.KNOWN))
                .average()
                .orElseThrow();
    }

    private static double tail(double x) {
        return Erfc.value(x / Math.sqrt(2)) / 2;
    }
}
