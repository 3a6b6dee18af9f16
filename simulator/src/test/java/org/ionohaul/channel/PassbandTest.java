package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Into how many sub-bands a band is cut, so that their centres fade as the band does. */
final class PassbandTest {
    private static final double WIDTH_HZ = 2250;

    @Test
    void subBandsLieEvenlyAboutTheMiddle() {
        Passband passband = new Passband(WIDTH_HZ, 4);
        assertEquals(-843.75, passband.centreHz(0), 1e-9);
        assertEquals(-281.25, passband.centreHz(1), 1e-9);
        assertEquals(843.75, passband.centreHz(3), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"8, 0.0", "8, 0.0002"})
    void aShortEchoNeedsNoMoreSubBands(int subBands, double delaySeconds) {
        assertEquals(subBands, cut(subBands, delaySeconds, 0).subBands());
    }

    /** Delays at which the 8 centres, 281.25 Hz apart, turn by whole or half turns from one to the next. */
    @ParameterizedTest
    @CsvSource({"1", "0.5", "2"})
    void centresThatAnEchoTurnsAlikeAreCutAnew(double turns) {
        double delaySeconds = turns / (WIDTH_HZ / 8);
        Passband cut = cut(8, delaySeconds, 0);
        assertTrue(cut.subBands() > 8 && cut.subBands() <= 18, "cut into " + cut.subBands());
        // By brute force: the mean of log |H|^2 over the centres and over the band, at any phase of the echo.
        assertTrue(
                worstError(cut, delaySeconds) < 0.5 * worstError(new Passband(WIDTH_HZ, 8), delaySeconds),
                worstError(cut, delaySeconds) + " against " + worstError(new Passband(WIDTH_HZ, 8), delaySeconds));
        assertEquals(WIDTH_HZ, cut.widthHz());
    }

    @Test
    void aWeakEchoAsksForNoMore() {
        assertEquals(8, cut(8, 1 / (WIDTH_HZ / 8), -30).subBands());
    }

    @Test
    void theOrderOfThePathsDoesNotMatterAndEveryPairDoes() {
        PropagationPath first = new PropagationPath(0, 0, 0, 1);
        PropagationPath middle = new PropagationPath(0.0001, -30, 0, 1);
        PropagationPath late = new PropagationPath(1 / (WIDTH_HZ / 8), 0, 0, 1);
        Passband band = new Passband(WIDTH_HZ, 8, true);
        int forward = band.cutFor(List.of(first, middle, late)).subBands();
        assertTrue(forward > 8, "cut into " + forward);
        assertEquals(forward, band.cutFor(List.of(late, middle, first)).subBands());
        assertEquals(forward, band.cutFor(List.of(middle, first, late)).subBands());
    }

    @Test
    void whoAsksForSoManySubBandsGetsThem() {
        List<PropagationPath> paths = paths(1 / (WIDTH_HZ / 8), 0);
        assertEquals(8, new Passband(WIDTH_HZ, 8).cutFor(paths).subBands());
    }

    private static Passband cut(int subBands, double delaySeconds, double echoDb) {
        return new Passband(WIDTH_HZ, subBands, true).cutFor(paths(delaySeconds, echoDb));
    }

    private static List<PropagationPath> paths(double delaySeconds, double echoDb) {
        return List.of(new PropagationPath(0, 0, 0, 1), new PropagationPath(delaySeconds, echoDb, 0, 1));
    }

    /** Over phases of an echo somewhat weaker than the first path: root mean square of what the centres' mean misses. */
    private static double worstError(Passband passband, double delaySeconds) {
        Passband fine = new Passband(passband.widthHz(), 4000);
        return Math.sqrt(IntStream.range(0, 64)
                .mapToDouble(step -> {
                    double phase = 2 * Math.PI * step / 64;
                    double missed = mean(passband, delaySeconds, phase) - mean(fine, delaySeconds, phase);
                    return missed * missed;
                })
                .average()
                .orElseThrow());
    }

    private static double mean(Passband passband, double delaySeconds, double phase) {
        double amplitude = 0.9;
        return IntStream.range(0, passband.subBands())
                .mapToDouble(band -> Math.log(1
                        + amplitude * amplitude
                        + 2 * amplitude * Math.cos(phase + 2 * Math.PI * passband.centreHz(band) * delaySeconds)))
                .average()
                .orElseThrow();
    }
}
