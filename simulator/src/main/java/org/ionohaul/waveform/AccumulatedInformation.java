package org.ionohaul.waveform;

/**
 * Evidence as mutual information a symbol, summed over copies that each bring new code bits: the code rate that has to be
 * met falls with every copy (Cheng, "Coding performance of hybrid ARQ schemes", IEEE Trans. Commun. 54(6), 2006).
 *
 * <p>The dispersion is that of one copy with the same information, which is exact for one copy, and for several small
 * ones because dispersion too is in proportion to SNR when that is low.
 *
 * <p>The end of the mother code is ignored: every copy is taken to bring new code bits, while a real code runs out of
 * them and repeats some, which is worth less.
 *
 * @param density information density of a symbol by Es/N0
 * @param code when the frame's code succeeds
 */
record AccumulatedInformation(InformationDensity density, NormalApproximation code) implements FrameModel {
    @Override
    public RatioTable ratings() {
        return density.bits();
    }

    @Override
    public boolean decidesOneByOne() {
        return false;
    }

    @Override
    public double evidence(double meanRating) {
        return meanRating;
    }

    @Override
    public double combined(double earlier, double fresh) {
        return earlier + fresh;
    }

    @Override
    public double decodingProbability(double evidence) {
        double even = density.bits().inverse(evidence);
        return code.successProbability(evidence, density.dispersion().at(even));
    }
}
