package org.ionohaul.waveform;

import java.util.function.DoubleUnaryOperator;

/**
 * Characters that are checked by what they are: they pass as often as their kind passes, and are right when no element is
 * wrong.
 *
 * @param elements the same characters under a perfect check
 * @param acceptance how likely they pass, right or wrong, by the bit error rate
 */
record CharacterBlock(EffectiveSinr elements, DoubleUnaryOperator acceptance) implements FrameModel {
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
        return acceptance.applyAsDouble(bitErrorRate);
    }

    @Override
    public double unnoticedErrorProbability(double evidence) {
        return decodingProbability(evidence) - elements.decodingProbability(evidence);
    }
}
