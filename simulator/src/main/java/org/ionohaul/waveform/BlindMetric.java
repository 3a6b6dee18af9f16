package org.ionohaul.waveform;

import java.util.Arrays;

/**
 * What bursts of noise cost a decoder that knows nothing of them and weighs all symbols of a code word as if their noise
 * were even.
 *
 * <p>Wherever two code words differ, it adds up how much nearer the symbols are to one than to the other. By Chernoff's bound
 * the sum points the wrong way with an exponent that grows with each symbol by
 *
 * <pre>E(t) = -ln sum of p exp(x (t^2 r - 2 t a))</pre>
 *
 * over the levels of noise, p being a level's share of symbols, a the amplitude left there, r its noise over that between
 * bursts, and x Es/N0 times the separation of the symbols; the best t holds. Even noise of x = E has the same exponent, so
 * the symbols carry as much information as if they were heard in that. t is how much the decoder trusts what it hears: one
 * number for the whole word, in sub-bands and at instants that fade apart (the parameter of Gallager's bound, Information
 * Theory and Reliable Communication, 1968, section 5; a decoder's information is the highest mean over the word that any one such
 * number yields: Merhav, Kaplan, Lapidoth and Shamai, "On information rates for mismatched decoders", IEEE Trans. Inf.
 * Theory 40(6), 1994, from memory). Where a t is too high for a place, what is heard there misleads, and takes information
 * away.
 *
 * <p>At low SINR that is noise of the same mean power, whatever the code (Lapidoth, "Nearest neighbor decoding for
 * additive non-Gaussian noise channels", IEEE Trans. Inf. Theory 42(5), 1996); at high SINR a few symbols decide, and the
 * strongest of noise counts for more. Belongs to one thread.
 */
final class BlindMetric {
    private static final int MOST_STEPS = 40;

    /** Steps end where the next one adds less than this part of the information. */
    private static final double TOLERANCE = 0.001;

    /** More than what the order of adding up may make of a sum. */
    private static final double SAFELY = 1 + 1e-9;

    /** An exponent of so much is as good as certain for any modulation, and still a number. */
    private static final double MOST = 300;

    private final double separation;
    private final RatioTable ratings;

    private int places;
    private double[] x = new double[8];
    private double[] erased = new double[8];
    private int[] ends = new int[8];

    private int levels;
    private double[] shares = new double[16];
    private double[] amplitudes = new double[16];
    private double[] noises = new double[16];

    private double[] exponents = new double[8];
    private double sum;
    private double slope;
    private double curvature;

    /**
     * Prepares for a code.
     *
     * @param separation how far neighbouring symbols are apart ({@link Modulation#separation()})
     * @param ratings information that symbols carry, by Es/N0
     */
    BlindMetric(double separation, RatioTable ratings) {
        this.separation = separation;
        this.ratings = ratings;
    }

    /** Begins anew, with no places. */
    void begin() {
        places = 0;
        levels = 0;
    }

    /**
     * Adds a place: part of the word's symbols, as many as on any other place, that are heard alike but for bursts.
     *
     * @param esN0 Es/N0 between bursts, zero or more
     * @param blanked share of its symbols of which nothing is left; they are on no level
     */
    void place(double esN0, double blanked) {
        if (places == x.length) {
            x = Arrays.copyOf(x, 2 * places);
            erased = Arrays.copyOf(erased, 2 * places);
            ends = Arrays.copyOf(ends, 2 * places);
            exponents = new double[2 * places];
        }
        x[places] = Math.min(MOST, separation * esN0);
        erased[places] = blanked;
        ends[places] = levels;
        places++;
    }

    /**
     * Adds a level of noise to the place added last.
     *
     * @param share of symbols on it; zero is as good as not added
     * @param amplitude part of the signal's amplitude left there, from 0 to 1
     * @param noise noise there, over that between bursts
     */
    void add(double share, double amplitude, double noise) {
        if (share <= 0) {
            return;
        }
        if (levels == shares.length) {
            shares = Arrays.copyOf(shares, 2 * levels);
            amplitudes = Arrays.copyOf(amplitudes, 2 * levels);
            noises = Arrays.copyOf(noises, 2 * levels);
        }
        shares[levels] = share;
        amplitudes[levels] = amplitude;
        noises[levels] = noise;
        levels++;
        ends[places - 1] = levels;
    }

    /**
     * Finds the weight of the word, as far as it takes to know on which side of two bars its information lies: beyond one of them
     * {@link #information} is a bound that does as well.
     *
     * @param tooLittle no need to know how much less than this it is
     * @param enough no need to know how much more than this it is
     */
    void weigh(double tooLittle, double enough) {
        sum = upperBound();
        if (sum <= tooLittle) {
            return;
        }
        double high = highest();
        double weight = first(high);
        sum = informationAt(weight);
        if (sum < SAFELY * enough) {
            search(weight, high);
        }
    }

    /** Returns what the information does not exceed whatever the weight: what the first level of each place has for itself at its best. */
    private double upperBound() {
        double bound = 0;
        int level = 0;
        for (int place = 0; place < places; place++) {
            double exponent = ends[place] > level
                    ? x[place] * amplitudes[level] * amplitudes[level] / noises[level] - Exponentials.log(shares[level])
                    : -Exponentials.log(erased[place]);
            bound += ratings.at(exponent / separation);
            level = ends[place];
        }
        return bound;
    }

    /**
     * Finds the weight of the word. The information is concave in it, as each exponent is (the logarithm of a sum of
     * exponentials of convex functions is convex) and information in Es/N0, so Newton's steps find its highest point; where
     * they leave the bracket, it is halved. Tones that are detected by their energy carry information in proportion to the square of a low
     * Es/N0, which is not concave: there steps may lead down, and the best weight met holds.
     */
    void weigh() {
        double high = highest();
        search(first(high), high);
    }

    private void search(double firstWeight, double highest) {
        double low = 0;
        double high = highest;
        double weight = firstWeight;
        listen(weight);
        double best = weight;
        double most = sum;
        for (int step = 0; step < MOST_STEPS && slope * slope > 2 * TOLERANCE * sum * curvature; step++) {
            if (slope > 0) {
                low = weight;
            } else {
                high = weight;
            }
            weight += slope / curvature;
            if (!(weight > low && weight < high)) {
                weight = (low + high) / 2;
            }
            listen(weight);
            if (sum > most) {
                best = weight;
                most = sum;
            }
        }
        if (sum < most) {
            listen(best);
        }
    }

    /** Returns the best weight of any place in even noise of the same mean: the best of its own is at or below that. */
    private double highest() {
        double highest = 0;
        int level = 0;
        for (int place = 0; place < places; place++) {
            double amplitude = 0;
            double noise = 0;
            for (; level < ends[place]; level++) {
                amplitude += shares[level] * amplitudes[level];
                noise += shares[level] * noises[level];
            }
            highest = noise > 0 ? Math.max(highest, amplitude / noise) : highest;
        }
        return highest;
    }

    /**
     * Returns a first weight, at the mean strength and in the last place's noise: half of that from which no level alone makes a
     * bound of 1. Without bursts that is the best.
     */
    private double first(double highest) {
        double strength = 0;
        for (int place = 0; place < places; place++) {
            strength += x[place] / places;
        }
        double weight = highest;
        for (int level = places > 1 ? ends[places - 2] : 0; level < levels; level++) {
            double best = amplitudes[level] / noises[level];
            double beyond = Math.sqrt(best * best - Math.log(shares[level]) / (strength * noises[level]));
            weight = Math.min(weight, (best + beyond) / 2);
        }
        return weight;
    }

    /** Returns the information that a weight leaves; most words need no better one, nor how it changes with the weight. */
    private double informationAt(double weight) {
        double information = 0;
        int level = 0;
        for (int place = 0; place < places; place++) {
            double bound = erased[place];
            double scale = x[place] * weight;
            for (; level < ends[place]; level++) {
                bound += shares[level] * Exponentials.exp(scale * (weight * noises[level] - 2 * amplitudes[level]));
            }
            information += ratings.at(-Exponentials.log(bound) / separation);
        }
        return information;
    }

    /** Works out all exponents at a weight, the information they leave, and how that changes with the weight. */
    private void listen(double weight) {
        sum = 0;
        slope = 0;
        curvature = 0;
        int level = 0;
        for (int place = 0; place < places; place++) {
            double bound = erased[place];
            double first = 0;
            double second = 0;
            for (; level < ends[place]; level++) {
                double noise = noises[level];
                double amplitude = amplitudes[level];
                double term = shares[level] * Exponentials.exp(x[place] * weight * (weight * noise - 2 * amplitude));
                double steep = 2 * x[place] * (weight * noise - amplitude);
                bound += term;
                first += term * steep;
                second += term * (steep * steep + 2 * x[place] * noise);
            }
            double relative = first / bound;
            exponents[place] = -Exponentials.log(bound);
            double esN0 = exponents[place] / separation;
            double worth = ratings.slope(esN0) / separation;
            double less = Math.min(0, ratings.bend(esN0)) / (separation * separation);
            sum += ratings.at(esN0);
            slope -= worth * relative;
            curvature += worth * (second / bound - relative * relative) - less * relative * relative;
        }
    }

    /** Returns the information of all places together. */
    double information() {
        return sum;
    }

    /** Returns the Es/N0 of even noise that would cost as much at a place, by the order in which they were added. */
    double evenEsN0(int place) {
        return exponents[place] / separation;
    }

    /** Returns the same as a part of the Es/N0 between bursts. */
    double part(int place) {
        return x[place] > 0 ? exponents[place] / x[place] : 1;
    }
}
