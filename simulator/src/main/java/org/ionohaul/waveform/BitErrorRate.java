package org.ionohaul.waveform;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.apache.commons.numbers.gamma.Erfc;

/** Mean probability of a wrong bit of an uncoded symbol in white Gaussian noise, Gray coded, in closed form. */
final class BitErrorRate {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(96);

    private BitErrorRate() {}

    /**
     * Returns the bit error rate.
     *
     * @param esN0 symbol energy over noise density, linear, zero or more
     */
    static double of(Modulation modulation, double esN0) {
        return switch (modulation) {
            case BPSK -> gaussianTail(2 * esN0);
            case QPSK, FSK2_COHERENT -> gaussianTail(esN0);
            case PSK8 -> phase8(esN0);
            case QAM16, QAM64 -> squareQam(modulation.points(), esN0);
            case QAM32 -> cross32(esN0);
            case DBPSK -> Math.exp(-esN0) / 2;
            case DQPSK -> differentialQuadrature(esN0 / 2);
            case FSK2, FSK4, FSK8, FSK16 -> orthogonalTones(modulation.points(), esN0);
        };
    }

    /** Returns Q(sqrt(x)), the probability that a Gaussian variable exceeds the root of x standard deviations. */
    private static double gaussianTail(double x) {
        return Erfc.value(Math.sqrt(x / 2)) / 2;
    }

    /**
     * Eight phases: the error's phase falls into a sector with the probability of Pawula, Rice and Roberts, "Distribution
     * of the phase angle between two vectors perturbed by Gaussian noise", IEEE Trans. Commun. 30(8), 1982; each sector
     * costs its mean number of wrong bits.
     */
    private static double phase8(double esN0) {
        double wrongBits = 2 * phaseBeyond(7 * Math.PI / 8, esN0) * wrongBitsAfterShift(4);
        for (int shift = 1; shift < 4; shift++) {
            double sector =
                    phaseBeyond((2 * shift - 1) * Math.PI / 8, esN0) - phaseBeyond((2 * shift + 1) * Math.PI / 8, esN0);
            wrongBits += sector * (wrongBitsAfterShift(shift) + wrongBitsAfterShift(8 - shift));
        }
        return wrongBits / 3;
    }

    /** Returns the probability that noise turns the phase by more than an angle, to one side. */
    private static double phaseBeyond(double angle, double esN0) {
        double sine = Math.sin(angle);
        return integral(0, Math.PI - angle, phi -> {
                    double ratio = sine / Math.sin(phi);
                    return Math.exp(-esN0 * ratio * ratio);
                })
                / (2 * Math.PI);
    }

    /** Returns the mean number of bits in which Gray labels of eight phases differ that lie a shift apart. */
    private static double wrongBitsAfterShift(int shift) {
        int bits = 0;
        for (int sent = 0; sent < 8; sent++) {
            bits += Integer.bitCount(gray(sent) ^ gray((sent + shift) % 8));
        }
        return bits / 8.0;
    }

    private static int gray(int position) {
        return position ^ (position >>> 1);
    }

    /** Square QAM: Cho and Yoon, "On the general BER expression", IEEE Trans. Commun. 50(7), 2002, eqs. 14 and 16. */
    private static double squareQam(int points, double esN0) {
        int side = (int) Math.round(Math.sqrt(points));
        int lineBits = Integer.numberOfTrailingZeros(side);
        double sum = 0;
        for (int bit = 1; bit <= lineBits; bit++) {
            int half = 1 << (bit - 1);
            for (int i = 0; i < side - side / (1 << bit); i++) {
                int sign = (i * half / side) % 2 == 0 ? 1 : -1;
                double weight = half - Math.floor(i * half / (double) side + 0.5);
                sum += sign * weight * Erfc.value((2 * i + 1) * Math.sqrt(1.5 * esN0 / (points - 1)));
            }
        }
        return sum / (side * lineBits);
    }

    /**
     * Cross-shaped 32 points: 3.25 nearest neighbours on average, each costing 7/6 bits because a cross has no perfect
     * Gray labels (Smith, "Odd-bit quadrature amplitude-shift keying", IEEE Trans. Commun. 23(3), 1975). Nearest
     * neighbours only: good to some per cent once the rate is below 1e-2.
     */
    private static double cross32(double esN0) {
        return Math.min(0.5, 3.25 * 7 / 6 / 5 * gaussianTail(esN0 / 10));
    }

    /**
     * Four differential phases: Simon and Alouini, Digital Communication over Fading Channels, the finite-range integral
     * for two-symbol detection with Gray labels.
     */
    private static double differentialQuadrature(double ebN0) {
        double low = 2 * ebN0 * (1 - Math.sqrt(0.5));
        double high = 2 * ebN0 * (1 + Math.sqrt(0.5));
        double ratio = Math.sqrt(low / high);
        if (!(ebN0 > 0)) {
            return 0.5;
        }
        return integral(-Math.PI / 2, Math.PI / 2, theta -> {
                    double shape = 1 + 2 * ratio * Math.sin(theta) + ratio * ratio;
                    return (1 - ratio * ratio) / shape * Math.exp(-high / 2 * shape);
                })
                / (2 * Math.PI);
    }

    /** Orthogonal tones detected by energy: Proakis, Digital Communications, noncoherent orthogonal signalling. */
    private static double orthogonalTones(int tones, double esN0) {
        double wrongSymbol = 0;
        for (int n = 1; n < tones; n++) {
            double term = CombinatoricsUtils.binomialCoefficientDouble(tones - 1, n)
                    / (n + 1)
                    * Math.exp(-esN0 * n / (n + 1));
            wrongSymbol += n % 2 == 1 ? term : -term;
        }
        return wrongSymbol * tones / (2.0 * (tones - 1));
    }

    private static double integral(double from, double to, UnivariateFunction function) {
        double half = (to - from) / 2;
        return half * RULE.integrate(x -> function.value(from + half * (1 + x)));
    }
}
