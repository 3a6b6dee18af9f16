package org.ionohaul.anchor;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Orthogonal carriers 50 Hz apart with a guard interval of 6.7 ms; every fourth symbol is known on all of them. The
 * receiver estimates the paths, also one that comes later than the guard interval and so spoils more than it tells, follows them in between, learns the noise of each
 * carrier from what the known symbols leave over, and tells each symbol by itself.
 */
record Multicarrier(Mapping mapping) implements ReferenceLink {
    private static final int CARRIERS = 48;
    private static final int GUARD = 16;
    private static final int SYMBOL = CARRIERS + GUARD;
    private static final int PERIOD = 4;
    private static final int PERIODS = 7;
    private static final int LOOKS = PERIODS + 1;
    private static final int SYMBOLS = PERIODS * PERIOD + 1;
    private static final double[] COSINES = turn(Math::cos);
    private static final double[] SINES = turn(Math::sin);
    private static final Signal KNOWN = known();

    @Override
    public String name() {
        return "multicarrier";
    }

    @Override
    public int dataSymbols() {
        return CARRIERS * PERIODS * (PERIOD - 1);
    }

    @Override
    public int samples() {
        return SYMBOLS * SYMBOL;
    }

    @Override
    public double trackingSeconds() {
        return PERIOD * SYMBOL / SAMPLE_RATE;
    }

    @Override
    public double toleranceSeconds() {
        return GUARD / SAMPLE_RATE;
    }

    @Override
    public int carriers() {
        return CARRIERS;
    }

    @Override
    public Signal modulate(int[] bits) {
        Signal signal = new Signal(samples());
        Signal carriers = new Signal(CARRIERS);
        int data = 0;
        for (int symbol = 0; symbol < SYMBOLS; symbol++) {
            for (int k = 0; k < CARRIERS; k++) {
                if (isKnown(symbol)) {
                    carriers.set(k, KNOWN.real()[k], KNOWN.imaginary()[k]);
                } else {
                    mapping.map(bits, data++, carriers, k);
                }
            }
            Signal wave = transformed(carriers, 1);
            for (int n = 0; n < SYMBOL; n++) {
                int from = Math.floorMod(n - GUARD, CARRIERS);
                signal.set(symbol * SYMBOL + n, wave.real()[from], wave.imaginary()[from]);
            }
        }
        return signal;
    }

    @Override
    public double[] soften(Heard heard, Tracking tracking) {
        int[] delays = heard.condition().delays();
        boolean[] blanked = heard.blanked();
        double[] kept = new double[SYMBOLS];
        Signal[] carriers = new Signal[SYMBOLS];
        for (int symbol = 0; symbol < SYMBOLS; symbol++) {
            carriers[symbol] = carriers(heard.samples(), symbol, blanked, kept);
        }
        double[] noise = new double[CARRIERS];
        Arrays.fill(noise, heard.noise());
        // The estimate needs the carriers' noise, the noise needs the estimate: a few rounds find both.
        PathEstimator estimator = looks(carriers, kept, delays, noise);
        for (int round = 0; round < 3; round++) {
            noise = leftOver(carriers, kept, delays, estimator);
            estimator = looks(carriers, kept, delays, noise);
        }
        double[] times = new double[SYMBOLS];
        Arrays.setAll(times, Multicarrier::middleSeconds);
        Signal[] gains = tracking == Tracking.KNOWN
                ? atMiddle(heard.gains())
                : estimator.at(times, tracking, heard.condition(), heard.noise() / CARRIERS);
        return decided(carriers, kept, gains, delays, noise);
    }

    private double[] decided(Signal[] carriers, double[] kept, Signal[] gains, int[] delays, double[] noise) {
        double[] ratios = new double[dataSymbols() * mapping.bits()];
        int data = 0;
        for (int symbol = 0; symbol < SYMBOLS; symbol++) {
            for (int k = 0; k < CARRIERS && !isKnown(symbol); k++) {
                double re = 0;
                double im = 0;
                for (int path = 0; path < delays.length; path++) {
                    double cosine = COSINES[k * delays[path] % CARRIERS];
                    double sine = -SINES[k * delays[path] % CARRIERS];
                    re += gains[path].real()[symbol] * cosine - gains[path].imaginary()[symbol] * sine;
                    im += gains[path].real()[symbol] * sine + gains[path].imaginary()[symbol] * cosine;
                }
                double power = re * re + im * im;
                double share = kept[symbol];
                double yRe = carriers[symbol].real()[k];
                double yIm = carriers[symbol].imaginary()[k];
                // A symbol of which a share is left keeps so much of itself; its carriers spoil each other.
                double total = noise[k] * share + share * (1 - share);
                mapping.soften(
                        (yRe * re + yIm * im) / (power * share),
                        (yIm * re - yRe * im) / (power * share),
                        total / (power * share * share),
                        ratios,
                        data++);
            }
        }
        return ratios;
    }

    private static PathEstimator looks(Signal[] carriers, double[] kept, int[] delays, double[] noise) {
        double[] times = new double[LOOKS];
        Arrays.setAll(times, look -> middleSeconds(look * PERIOD));
        PathEstimator estimator = new PathEstimator(delays.length, times);
        double[] re = new double[delays.length];
        double[] im = new double[delays.length];
        for (int look = 0; look < LOOKS; look++) {
            for (int k = 0; k < CARRIERS; k++) {
                known(k, delays, re, im);
                double share = kept[look * PERIOD];
                double weight = share * share / (noise[k] * share + share * (1 - share));
                Signal heard = carriers[look * PERIOD];
                estimator.equation(re, im, heard.real()[k] / share, heard.imaginary()[k] / share, weight);
            }
            estimator.look();
        }
        return estimator;
    }

    /** Returns the noise of each carrier and its two neighbours, from what known symbols leave over. */
    private static double[] leftOver(Signal[] carriers, double[] kept, int[] delays, PathEstimator estimator) {
        double[] power = new double[CARRIERS];
        double[] re = new double[delays.length];
        double[] im = new double[delays.length];
        for (int look = 0; look < LOOKS; look++) {
            for (int k = 0; k < CARRIERS; k++) {
                known(k, delays, re, im);
                Signal rest = new Signal(1);
                double share = kept[look * PERIOD];
                rest.set(
                        0,
                        carriers[look * PERIOD].real()[k] / share,
                        carriers[look * PERIOD].imaginary()[k] / share);
                for (int path = 0; path < delays.length; path++) {
                    rest.addProduct(
                            0, -re[path], -im[path], estimator.real(path, look), estimator.imaginary(path, look));
                }
                power[k] += rest.power(0) / LOOKS;
            }
        }
        double[] smooth = new double[CARRIERS];
        for (int k = 0; k < CARRIERS; k++) {
            smooth[k] = (power[Math.max(0, k - 1)] + power[k] + power[Math.min(CARRIERS - 1, k + 1)]) / 3;
        }
        return smooth;
    }

    private static void known(int k, int[] delays, double[] re, double[] im) {
        for (int path = 0; path < delays.length; path++) {
            double cosine = COSINES[k * delays[path] % CARRIERS];
            double sine = -SINES[k * delays[path] % CARRIERS];
            re[path] = KNOWN.real()[k] * cosine - KNOWN.imaginary()[k] * sine;
            im[path] = KNOWN.real()[k] * sine + KNOWN.imaginary()[k] * cosine;
        }
    }

    private static Signal carriers(Signal samples, int symbol, boolean[] blanked, double[] kept) {
        Signal window = new Signal(CARRIERS);
        int begin = symbol * SYMBOL + GUARD;
        int left = CARRIERS;
        for (int n = 0; n < CARRIERS; n++) {
            if (blanked[begin + n]) {
                left--;
            } else {
                window.set(n, samples.real()[begin + n], samples.imaginary()[begin + n]);
            }
        }
        kept[symbol] = Math.max(1, left) / (double) CARRIERS;
        return transformed(window, -1);
    }

    private static Signal[] atMiddle(Signal[] gains) {
        return Arrays.stream(gains)
                .map(gain -> {
                    Signal middles = new Signal(SYMBOLS);
                    for (int symbol = 0; symbol < SYMBOLS; symbol++) {
                        int at = symbol * SYMBOL + GUARD + CARRIERS / 2;
                        middles.set(symbol, gain.real()[at], gain.imaginary()[at]);
                    }
                    return middles;
                })
                .toArray(Signal[]::new);
    }

    private static double middleSeconds(int symbol) {
        return (symbol * SYMBOL + GUARD + CARRIERS / 2) / SAMPLE_RATE;
    }

    private static boolean isKnown(int symbol) {
        return symbol % PERIOD == 0;
    }

    /** The discrete Fourier transform that keeps power; sign 1 from carriers to samples, -1 back. */
    private static Signal transformed(Signal from, int sign) {
        Signal to = new Signal(CARRIERS);
        double scale = 1 / Math.sqrt(CARRIERS);
        for (int n = 0; n < CARRIERS; n++) {
            for (int k = 0; k < CARRIERS; k++) {
                int turn = k * n % CARRIERS;
                to.addProduct(
                        n, from.real()[k] * scale, from.imaginary()[k] * scale, COSINES[turn], sign * SINES[turn]);
            }
        }
        return to;
    }

    private static double[] turn(DoubleUnaryOperator function) {
        return IntStream.range(0, CARRIERS)
                .mapToDouble(i -> function.applyAsDouble(2 * Math.PI * i / CARRIERS))
                .toArray();
    }

    private static Signal known() {
        UniformRandomProvider random = RandomSource.SPLIT_MIX_64.create(KNOWN_SEED);
        int[] bits = random.ints(2 * CARRIERS, 0, 2).toArray();
        Signal known = new Signal(CARRIERS);
        for (int k = 0; k < CARRIERS; k++) {
            Mapping.QPSK.map(bits, k, known, k);
        }
        return known;
    }
}
