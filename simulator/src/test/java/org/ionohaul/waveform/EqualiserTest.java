package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What equalisers make of two paths: against closed forms, and against filters that are really solved for. */
final class EqualiserTest {
    private static final int PARTS = 256;
    private static final long STEADY_NANOS = 100_000_000;

    /** A band in which Es/N0 is the SINR of 3 kHz. */
    private static final Emission EMISSION = new Emission(3000, 0);

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 10, 100})
    void twoEqualPathsLeaveWhatTheClosedFormsSay(double esN0) {
        // |H|^2 = 1 + cos(phase). The mean of 1 / (1 + x + x cos) over a turn is 1 / sqrt((1 + x)^2 - x^2); that of the
        // logarithm log((1 + x + sqrt((1 + x)^2 - x^2)) / 2). Gradshteyn and Ryzhik 3.613 and 4.224.
        double root = Math.sqrt(1 + 2 * esN0);
        Response response = phase -> esN0 * (1 + Math.cos(phase));
        assertEquals(root - 1, ratio(Equaliser.LINEAR, response), 1e-4 * (root - 1));
        double ideal = (1 + esN0 + root) / 2 - 1;
        assertEquals(ideal, ratio(Equaliser.DECISION_FEEDBACK, response), 1e-4 * ideal);
    }

    @Test
    void aFilterOfManyTapsLeavesAsMuchAsOneWithoutEnd() {
        RandomGenerator random = new Well19937c(42);
        for (int drawn = 0; drawn < 20; drawn++) {
            Complex first = gain(random);
            Complex second = gain(random);
            int delay = 1 + random.nextInt(3);
            double snr = Math.pow(10, 2 * random.nextDouble());
            double solved = solved(first, second, delay, snr);
            Response response = phase -> {
                Complex turned = new Complex(Math.cos(delay * phase), -Math.sin(delay * phase));
                double amplitude = first.add(second.multiply(turned)).abs();
                return snr * amplitude * amplitude;
            };
            // A filter with an end errs more, by little at this length.
            double endless = ratio(Equaliser.LINEAR, response);
            assertEquals(endless, solved, 0.002 * endless, "draw " + drawn);
            assertTrue(endless < ratio(Equaliser.DECISION_FEEDBACK, response), "draw " + drawn);
        }
    }

    /** Returns what the best filter of so many taps makes of symbols over two paths, by its normal equations. */
    private static double solved(Complex first, Complex second, int delay, double snr) {
        int taps = 160;
        RealMatrix correlation = new Array2DRowRealMatrix(2 * taps, 2 * taps);
        RealVector wanted = new ArrayRealVector(2 * taps);
        double power = first.abs() * first.abs() + second.abs() * second.abs();
        Complex ofNeighbours = second.multiply(first.conjugate());
        for (int tap = 0; tap < taps; tap++) {
            enter(correlation, tap, tap, new Complex(snr * power + 1, 0));
            if (tap >= delay) {
                enter(correlation, tap, tap - delay, ofNeighbours.multiply(snr));
                enter(correlation, tap - delay, tap, ofNeighbours.conjugate().multiply(snr));
            }
        }
        enter(wanted, taps / 2, first.multiply(snr));
        enter(wanted, taps / 2 + delay, second.multiply(snr));
        RealVector filter = new CholeskyDecomposition(correlation).getSolver().solve(wanted);
        double error = 1 - filter.dotProduct(wanted) / snr;
        return 1 / error - 1;
    }

    /** Enters a complex number as the real matrix that multiplies by it. */
    private static void enter(RealMatrix matrix, int row, int column, Complex value) {
        int size = matrix.getRowDimension() / 2;
        matrix.setEntry(row, column, value.getReal());
        matrix.setEntry(row, column + size, -value.getImaginary());
        matrix.setEntry(row + size, column, value.getImaginary());
        matrix.setEntry(row + size, column + size, value.getReal());
    }

    private static void enter(RealVector vector, int row, Complex value) {
        vector.setEntry(row, value.getReal());
        vector.setEntry(row + vector.getDimension() / 2, value.getImaginary());
    }

    private static Complex gain(RandomGenerator random) {
        return new Complex(random.nextGaussian(), random.nextGaussian()).divide(2);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0", "0.5, 6", "1, 6"})
    void aFrameIsHeardAtTheRatioThatItsEqualiserLeaves(double codeRate, double gapDb) {
        // A code rate of 1 is none: such bits are decided one by one.
        double esN0 = 20;
        double behindGap = esN0 * Math.pow(10, -gapDb / 10);
        double root = Math.sqrt(1 + 2 * behindGap);
        ScriptedReception twoEqualPaths = band(esN0);
        double linear = evidence(frame(Equaliser.LINEAR, 1, codeRate, gapDb), twoEqualPaths);
        double feedback = evidence(frame(Equaliser.DECISION_FEEDBACK, 1, codeRate, gapDb), twoEqualPaths);
        assertEquals(root - 1, linear, 0.002 * linear);
        assertEquals((1 + behindGap + root) / 2 - 1, feedback, 0.002 * feedback);
    }

    @Test
    void symbolsThatSaturateFareWorseByPartsThanAddedUpOverTheBand() {
        // What makes the difference is no equaliser: of 64 levels that are far from saturated it is nearly nothing.
        double qpsk = evidence(frame(Equaliser.DECISION_FEEDBACK, 1, 0.5, 0), band(6));
        assertTrue(evidence(frame(Equaliser.BY_PARTS, 1, 0.5, 0), band(6)) < 0.8 * qpsk);
        double dense = evidence(frame(Modulation.QAM64, Equaliser.DECISION_FEEDBACK, 1, 0.5, 0), band(6));
        assertEquals(dense, evidence(frame(Modulation.QAM64, Equaliser.BY_PARTS, 1, 0.5, 0), band(6)), 0.05 * dense);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1})
    void aBandThatIsEvenNeedsNoEqualiser(double codeRate) {
        ScriptedReception even = ScriptedReception.of(8, STEADY_NANOS, (at, band) -> 4);
        for (ScriptedReception reception : List.of(even, even.struckUntil(20_000_000, 50))) {
            double feedback = evidence(frame(Equaliser.DECISION_FEEDBACK, 1, codeRate, 1), reception);
            assertEquals(feedback, evidence(frame(Equaliser.LINEAR, 1, codeRate, 1), reception), 1e-9 * feedback);
            assertEquals(feedback, evidence(frame(Equaliser.BY_PARTS, 1, codeRate, 1), reception), 1e-9 * feedback);
        }
    }

    @ParameterizedTest
    @EnumSource(Equaliser.class)
    void severalCarriersAreHeardOneByOne(Equaliser equaliser) {
        ScriptedReception twoEqualPaths = band(4);
        double usual = evidence(frame(Equaliser.BY_PARTS, 10, 0.5, 1), twoEqualPaths);
        assertEquals(usual, evidence(frame(equaliser, 10, 0.5, 1), twoEqualPaths));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1})
    void aBurstTakesMoreOfWhatALinearEqualiserLeaves(double codeRate) {
        ScriptedReception quiet = band(30);
        FrameShape linear = frame(Equaliser.LINEAR, 1, codeRate, 0);
        double between = evidence(linear, quiet);
        // A burst too weak to tell leaves what no burst does, by whatever way it is reckoned; a strong one takes.
        assertEquals(between, evidence(linear, quiet.struckUntil(20_000_000, 1e-7)), 0.001 * between);
        assertTrue(evidence(linear, quiet.struckUntil(20_000_000, 100)) < 0.9 * between);
    }

    @Test
    void aStruckBandIsHeardAtTheOneRatioThatFitsItsSymbols() {
        // Two equal paths behind a linear equaliser, a fifth of the time struck: each symbol as on an even path that
        // leaves
        // the same ratios, of which BlindMetricTest tells what a decoder makes.
        double struck = 9;
        double quietRatio = Math.sqrt(1 + 2 * 30.0) - 1;
        double struckRatio = Math.sqrt(1 + 2 * 30.0 / (1 + struck)) - 1;
        BlindMetric metric = new BlindMetric(
                Modulation.QPSK.separation(),
                CodedInformation.of(Modulation.QPSK).bits());
        metric.begin();
        metric.place(quietRatio, 0);
        metric.add(0.8, 1, 1);
        metric.add(0.2, 1, quietRatio / struckRatio);
        metric.weigh();
        double heard = evidence(frame(Equaliser.LINEAR, 1, 0.5, 0), band(30).struckUntil(20_000_000, struck));
        assertEquals(metric.evenEsN0(0), heard, 0.03 * heard);
    }

    private static ScriptedReception band(double esN0) {
        return ScriptedReception.of(
                PARTS, STEADY_NANOS, (at, band) -> esN0 * (1 + Math.cos(2 * Math.PI * (band + 0.5) / PARTS)));
    }

    private static FrameShape frame(Equaliser equaliser, int carriers, double codeRate, double gapDb) {
        return frame(Modulation.QPSK, equaliser, carriers, codeRate, gapDb);
    }

    /** Returns a frame of 0.1 s. */
    private static FrameShape frame(
            Modulation modulation, Equaliser equaliser, int carriers, double codeRate, double gapDb) {
        Receiver receiver = new Receiver(1, 0, gapDb, 900, Receiver.USUAL_TOLERANCE_HZ, equaliser);
        Coding coding = new Coding(modulation, carriers, 3000, codeRate);
        return new ModelledFrame(coding, receiver, 0, 300, FrameCheck.WHOLE_FRAME, 0.1, 0);
    }

    /** Returns the Es/N0 of an even path on which the frame would fare the same. */
    private static double evidence(FrameShape frame, ScriptedReception reception) {
        return Waveforms.of(new BurstShape(0, -150, frame), EMISSION, Combining.NONE)
                .evidence(reception, 0, 0, 1);
    }

    /** Es/N0 over a turn of phase. */
    private interface Response {
        double esN0(double phase);
    }

    private static double ratio(Equaliser equaliser, Response response) {
        Equalisation equalisation = new Equalisation(equaliser);
        equalisation.add(12345);
        equalisation.begin();
        for (int part = 0; part < PARTS; part++) {
            equalisation.add(response.esN0(2 * Math.PI * (part + 0.5) / PARTS));
        }
        return equalisation.esN0();
    }
}
