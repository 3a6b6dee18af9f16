package org.ionohaul.waveform;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.ionohaul.channel.Decibels;

/**
 * The first two moments of a modulation's information density in white Gaussian noise, at any ratio of symbol energy to
 * noise density (Es/N0): its mean, the mutual information of equiprobable symbols, and its variance, the dispersion.
 *
 * @param bits mutual information in bits a symbol, rising with Es/N0 from zero to the bits a symbol carries
 * @param dispersion variance of the information density in bits squared a symbol
 */
record InformationDensity(RatioTable bits, RatioTable dispersion) {
    private static final double LOWEST_DB = -30;
    private static final double HIGHEST_DB = 40;
    private static final double STEP_DB = 0.5;

    /** The two moments at one Es/N0. */
    record Moments(double bits, double dispersion) {}

    /** Works out the two moments at one linear Es/N0. */
    @FunctionalInterface
    interface Source {
        Moments at(double esN0);
    }

    /**
     * Tabulates a source: worked out every half decibel, joined by cubic splines in dB (error below 1e-5 bit), then cut
     * finely for reading.
     *
     * @param symbolBits the bits a symbol carries, the upper limit of the information
     */
    static InformationDensity of(int symbolBits, Source source) {
        int points = (int) Math.round((HIGHEST_DB - LOWEST_DB) / STEP_DB) + 1;
        double[] db = new double[points];
        double[] bits = new double[points];
        double[] dispersion = new double[points];
        for (int i = 0; i < points; i++) {
            db[i] = LOWEST_DB + i * STEP_DB;
            Moments moments = source.at(Decibels.toRatio(db[i]));
            bits[i] = Math.min(symbolBits, Math.max(0, moments.bits()));
            dispersion[i] = Math.max(0, moments.dispersion());
        }
        DoubleUnaryOperator smoothBits = smooth(db, bits);
        DoubleUnaryOperator smoothDispersion = smooth(db, dispersion);
        return new InformationDensity(
                RatioTable.ofRising(0, ratio -> Math.min(symbolBits, smoothBits.applyAsDouble(ratio))),
                RatioTable.of(0, ratio -> Math.max(0, smoothDispersion.applyAsDouble(ratio))));
    }

    /** Joins points by a spline in dB; below them in proportion to the ratio, above them the last value. */
    private static DoubleUnaryOperator smooth(double[] db, double[] values) {
        PolynomialSplineFunction spline = new SplineInterpolator().interpolate(db, values);
        double lowest = Decibels.toRatio(LOWEST_DB);
        return ratio -> ratio <= lowest
                ? values[0] * ratio / lowest
                : spline.value(Math.min(HIGHEST_DB, Decibels.ofRatio(ratio)));
    }

    /** Returns this density as it looks to a receiver that sees another Es/N0. */
    InformationDensity seenAt(DoubleUnaryOperator esN0) {
        return new InformationDensity(
                RatioTable.ofRising(0, ratio -> bits.at(esN0.applyAsDouble(ratio))),
                RatioTable.of(0, ratio -> dispersion.at(esN0.applyAsDouble(ratio))));
    }

    /** Returns the density of two independent symbols, each with half the energy, sent as one. */
    InformationDensity paired() {
        return new InformationDensity(
                RatioTable.ofRising(0, ratio -> 2 * bits.at(ratio / 2)),
                RatioTable.of(0, ratio -> 2 * dispersion.at(ratio / 2)));
    }
}
