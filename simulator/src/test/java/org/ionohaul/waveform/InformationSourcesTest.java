package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The two moments of information density as they are worked out, before any table. Of points in the plane they were worked
 * out anew with NumPy, as sums over all points and 80 by 80 Gauss-Hermite nodes (200 on a line); of tones with random numbers.
 */
final class InformationSourcesTest {
    private static final double STANDARD_ERRORS = 4;

    @ParameterizedTest(name = "{0} points on a line at {1} dB")
    @CsvSource({
        "2, 0, 0.7214515907903851, 0.5332719404785247",
        "2, 5, 0.9761773332161505, 0.06908255257492846",
        "4, 0, 0.7715630318715458, 0.9292600792758077",
        "4, 5, 1.3431228773583683, 0.8873535896434155",
        "4, 10, 1.8692333511304664, 0.32762713499863416"
    })
    void pointsOnALine(int points, double db, double bits, double dispersion) {
        // The whole of a line's energy lies on it, as that of two phases does.
        assertMoments(bits, dispersion, Constellation.line(points).at(Decibels.toRatio(db)));
    }

    @ParameterizedTest(name = "8 phases at {0} dB")
    @CsvSource({
        "0, 0.9808910507951183, 1.4044856386864277",
        "5, 1.8620575842743483, 1.274438136833055",
        "10, 2.6774094808463684, 0.685453695056176"
    })
    void pointsOnACircle(double db, double bits, double dispersion) {
        assertMoments(bits, dispersion, Constellation.circle(8).at(Decibels.toRatio(db)));
    }

    @ParameterizedTest(name = "32 points at {0} dB")
    @CsvSource({
        "0, 0.9922765449135867, 1.6489457978657482",
        "5, 1.9974603780632807, 2.0183475489758553",
        "10, 3.2770177900464583, 1.9743635457727784"
    })
    void pointsInACross(double db, double bits, double dispersion) {
        assertMoments(bits, dispersion, Constellation.cross32().at(Decibels.toRatio(db)));
    }

    /** Quadratures of 28 and of 80 nodes differ by less than this. */
    private static void assertMoments(double bits, double dispersion, InformationDensity.Moments moments) {
        assertEquals(bits, moments.bits(), 2e-4);
        assertEquals(dispersion, moments.dispersion(), 2e-3);
    }

    /**
     * NumPy's default_rng(7), 4,000,000 draws of two tones, 2,000,000 of four, 1,000,000 of eight; the standard error of a
     * variance is taken as that of a normal sample, root(2 / n) of it, doubled since the density is skewed.
     */
    @ParameterizedTest(name = "{0} tones at {1} dB")
    @CsvSource({
        "2, 3, 4000000, 0.424244922842091, 0.6373708806017293",
        "2, 6, 4000000, 0.7553467095157193, 0.493055128895235",
        "4, 3, 2000000, 0.7482728617346973, 1.4348573229700383",
        "4, 6, 2000000, 1.4203050678621685, 1.2652409274410814",
        "8, 3, 1000000, 0.9773253171172684, 2.286363421967924",
        "8, 6, 1000000, 1.9845258525796508, 2.320583800719982"
    })
    void tones(int tones, double db, int draws, double bits, double dispersion) {
        InformationDensity.Moments moments = new OrthogonalTones(tones).at(Decibels.toRatio(db));
        assertEquals(bits, moments.bits(), STANDARD_ERRORS * Math.sqrt(dispersion / draws));
        assertEquals(dispersion, moments.dispersion(), STANDARD_ERRORS * 2 * dispersion * Math.sqrt(2.0 / draws));
    }

    @Test
    void tonesTooWeakOrStrongToMatter() {
        OrthogonalTones tones = new OrthogonalTones(16);
        assertEquals(new InformationDensity.Moments(0, 0), tones.at(0.0029));
        assertEquals(new InformationDensity.Moments(4, 0), tones.at(80.1));
        // At the limits what is left out is less than this.
        assertEquals(0, tones.at(0.003).bits(), 1e-4);
        assertEquals(4, tones.at(80).bits(), 1e-4);
    }

    /** A source of which everything is known: information g / (1 + g) of one bit, dispersion g / (1 + g)^2. */
    @Test
    void aTableSaysWhatItsSourceDoes() {
        InformationDensity density =
                InformationDensity.of(1, g -> new InformationDensity.Moments(g / (1 + g), g / ((1 + g) * (1 + g))));
        for (double g : new double[] {1e-4, 1e-3, 0.02, 0.5, 1, 7, 300, 9_999, 1e5}) {
            double held = Math.min(g, 1e4);
            assertEquals(held / (1 + held), density.bits().at(g), 1e-4, "bits at " + g);
            assertEquals(held / ((1 + held) * (1 + held)), density.dispersion().at(g), 1e-3, "dispersion at " + g);
            InformationDensity paired = density.paired();
            assertEquals(2 * density.bits().at(g / 2), paired.bits().at(g), 1e-3, "bits of two at " + g);
            assertEquals(2 * density.dispersion().at(g / 2), paired.dispersion().at(g), 2e-3, "of two at " + g);
            InformationDensity seen = density.seenAt(it -> it / 4);
            assertEquals(density.bits().at(g / 4), seen.bits().at(g), 1e-3, "bits seen at " + g);
            assertEquals(density.dispersion().at(g / 4), seen.dispersion().at(g), 2e-3, "seen at " + g);
        }
    }
}
