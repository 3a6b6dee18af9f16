package org.ionohaul.waveform;

/**
 * What the symbols heard at an instant are worth: each part of the band by its own ratio, or all by the one that an equaliser
 * leaves. Belongs to one thread.
 */
final class BandRating {
    private final RatioTable ratings;
    private final Equalisation equalisation;
    private final boolean hasOneRatio;
    private int parts;
    private double sum;

    BandRating(RatioTable ratings, Equalisation equalisation, boolean hasOneRatio) {
        this.ratings = ratings;
        this.equalisation = equalisation;
        this.hasOneRatio = hasOneRatio;
    }

    /** Begins anew, with no parts. */
    void begin() {
        parts = 0;
        sum = 0;
        equalisation.begin();
    }

    /** Adds a part of the band by its Es/N0, zero or more. */
    void add(double esN0) {
        parts++;
        if (hasOneRatio) {
            equalisation.add(esN0);
        } else {
            sum += ratings.at(esN0);
        }
    }

    /** Returns the ratings of all parts together. */
    double sum() {
        return hasOneRatio ? parts * ratings.at(equalisation.esN0()) : sum;
    }
}
