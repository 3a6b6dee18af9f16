package org.ionohaul.anchor;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * One carrier: blocks of known symbols and of data by turns. The receiver estimates the paths from each known block,
 * follows them in between, and equalises each block of data with the known ones beside it taken away: minimum mean
 * square error with decisions fed back, the later symbol first (Kaleh, "Channel equalization for block transmission
 * systems", IEEE J. Sel. Areas Commun. 13(1), 1995).
 *
 * <p>It copes with every delay that leaves some of a known block undisturbed by data before it.
 */
record SingleCarrier(Mapping mapping) implements ReferenceLink {
    private static final int KNOWN = 32;
    private static final int DATA = 64;
    private static final int BLOCKS = 16;
    private static final int PERIOD = KNOWN + DATA;
    private static final Signal PROBE = probe();

    @Override
    public String name() {
        return "single carrier";
    }

    @Override
    public int dataSymbols() {
        return BLOCKS * DATA;
    }

    @Override
    public int samples() {
        return BLOCKS * PERIOD + KNOWN;
    }

    @Override
    public double trackingSeconds() {
        return PERIOD / SAMPLE_RATE;
    }

    @Override
    public double toleranceSeconds() {
        return (KNOWN - 8) / SAMPLE_RATE;
    }

    @Override
    public int carriers() {
        return 1;
    }

    @Override
    public Signal modulate(int[] bits) {
        Signal signal = new Signal(samples());
        for (int at = 0; at < signal.length(); at++) {
            int block = at / PERIOD;
            int place = at % PERIOD;
            if (place < KNOWN) {
                signal.set(at, PROBE.real()[place], PROBE.imaginary()[place]);
            } else {
                mapping.map(bits, block * DATA + place - KNOWN, signal, at);
            }
        }
        return signal;
    }

    @Override
    public double[] soften(Heard heard, Tracking tracking) {
        int[] delays = heard.condition().delays();
        boolean[] blanked = heard.blanked();
        Signal[] gains = tracking == Tracking.KNOWN ? heard.gains() : gains(heard, delays, tracking, blanked);
        double[] ratios = new double[dataSymbols() * mapping.bits()];
        for (int block = 0; block < BLOCKS; block++) {
            equalise(block, heard, gains, delays, blanked, ratios);
        }
        return ratios;
    }

    private Signal[] gains(Heard heard, int[] delays, Tracking tracking, boolean[] blanked) {
        int longest = Arrays.stream(delays).max().orElseThrow();
        double[] looks = new double[BLOCKS + 1];
        for (int i = 0; i < looks.length; i++) {
            looks[i] = (i * PERIOD + (longest + KNOWN - 1) / 2.0) / SAMPLE_RATE;
        }
        PathEstimator estimator = new PathEstimator(delays.length, looks);
        double[] knownRe = new double[delays.length];
        double[] knownIm = new double[delays.length];
        for (int look = 0; look < looks.length; look++) {
            for (int place = longest; place < KNOWN; place++) {
                for (int path = 0; path < delays.length; path++) {
                    knownRe[path] = PROBE.real()[place - delays[path]];
                    knownIm[path] = PROBE.imaginary()[place - delays[path]];
                }
                int at = look * PERIOD + place;
                double weight = blanked[at] ? 0 : 1;
                Signal samples = heard.samples();
                estimator.equation(knownRe, knownIm, samples.real()[at], samples.imaginary()[at], weight);
            }
            estimator.look();
        }
        double[] times = new double[samples()];
        Arrays.setAll(times, at -> at / SAMPLE_RATE);
        return estimator.at(times, tracking, heard.condition(), heard.noise() / (KNOWN - longest));
    }

    private void equalise(int block, Heard heard, Signal[] gains, int[] delays, boolean[] blanked, double[] ratios) {
        int longest = Arrays.stream(delays).max().orElseThrow();
        int begin = block * PERIOD + KNOWN;
        HermitianSystem system = new HermitianSystem(DATA, longest);
        Signal matched = new Signal(DATA);
        for (int i = 0; i < DATA; i++) {
            system.add(i, i, 1, 0);
        }
        for (int at = begin; at < begin + DATA + longest; at++) {
            if (!blanked[at]) {
                sample(at, begin, heard, gains, delays, system, matched);
            }
        }
        system.factor();
        system.forward(matched);
        Signal decided = new Signal(DATA);
        for (int i = DATA - 1; i >= 0; i--) {
            system.feedBack(matched, i, decided);
            decide(system.diagonal(i), matched, i, decided, ratios, block * DATA + i);
        }
    }

    /** An estimate of minimum mean square error 1/d is too small by 1 - 1/d; put right, its noise is 1/(d - 1). */
    private void decide(double d, Signal estimate, int i, Signal decided, double[] ratios, int symbol) {
        double surplus = Math.max(1e-9, d - 1);
        double real = estimate.real()[i] * d / surplus;
        double imaginary = estimate.imaginary()[i] * d / surplus;
        mapping.soften(real, imaginary, 1 / surplus, ratios, symbol);
        decided.set(i, mapping.nearest(real), mapping.nearest(imaginary));
    }

    private void sample(
            int at, int begin, Heard heard, Signal[] gains, int[] delays, HermitianSystem system, Signal matched) {
        double real = heard.samples().real()[at];
        double imaginary = heard.samples().imaginary()[at];
        for (int path = 0; path < delays.length; path++) {
            int sent = at - delays[path];
            if (sent < begin || sent >= begin + DATA) {
                int place = Math.floorMod(sent, PERIOD);
                double re = gains[path].real()[at];
                double im = gains[path].imaginary()[at];
                real -= re * PROBE.real()[place] - im * PROBE.imaginary()[place];
                imaginary -= re * PROBE.imaginary()[place] + im * PROBE.real()[place];
            }
        }
        double weight = 1 / heard.noise();
        for (int path = 0; path < delays.length; path++) {
            int row = at - delays[path] - begin;
            if (row < 0 || row >= DATA) {
                continue;
            }
            double re = gains[path].real()[at];
            double im = gains[path].imaginary()[at];
            matched.addProduct(row, weight * re, -weight * im, real, imaginary);
            for (int other = 0; other < delays.length; other++) {
                int column = at - delays[other] - begin;
                if (column >= 0 && column <= row) {
                    double otherRe = gains[other].real()[at];
                    double otherIm = gains[other].imaginary()[at];
                    system.add(
                            row,
                            column,
                            weight * (re * otherRe + im * otherIm),
                            weight * (re * otherIm - im * otherRe));
                }
            }
        }
    }

    private static Signal probe() {
        UniformRandomProvider random = RandomSource.SPLIT_MIX_64.create(KNOWN_SEED);
        int[] bits = random.ints(2 * KNOWN, 0, 2).toArray();
        Signal probe = new Signal(KNOWN);
        for (int i = 0; i < KNOWN; i++) {
            Mapping.QPSK.map(bits, i, probe, i);
        }
        return probe;
    }
}
