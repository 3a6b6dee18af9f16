package org.ionohaul.waveform;

/**
 * A block of characters of which each is checked by itself: it passes when every character has the right ratio of
 * elements, and is right when no element is wrong.
 *
 * @param elements the same block under a perfect check
 * @param characters how many characters, 1 or more
 */
record CharacterBlock(EffectiveSinr elements, int characters) implements FrameModel {
    @Override
    public RatioTable ratings() {
        return elements.ratings();
    }

    @Override
    public boolean decidesOneByOne() {
        return elements.decidesOneByOne();
    }

    @Override
    public double evidence(double meanRating) {
        return elements.evidence(meanRating);
    }

    @Override
    public double combined(double earlier, double fresh) {
        return elements.combined(earlier, fresh);
    }

    @Override
    public double decodingProbability(double evidence) {
        double bitErrorRate = -Math.expm1(elements.ratings().at(evidence));
        return Math.pow(ConstantRatioCode.acceptance(bitErrorRate), characters);
    }

    @Override
    public double unnoticedErrorProbability(double evidence) {
        return decodingProbability(evidence) - elements.decodingProbability(evidence);
    }
}
