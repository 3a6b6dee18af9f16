package org.ionohaul.waveform;

import java.util.function.DoubleUnaryOperator;

/**
 * Evidence as the SINR of an even channel on which the frame would fare the same: the ratings' mean, mapped back.
 *
 * <p>For coded frames the rating is mutual information (802.16m Evaluation Methodology calls the mapping MIESM); for
 * uncoded ones the logarithm of a bit's probability to survive, whose mean is exactly what a product over bits needs.
 *
 * @param ratings rating of a symbol by Es/N0, never falling
 * @param success probability of decoding by effective Es/N0
 * @param decidesOneByOne whether symbols are decided one by one
 * @param adds whether copies are added before decoding (their SINRs add), or only the newest counts
 */
record EffectiveSinr(RatioTable ratings, DoubleUnaryOperator success, boolean decidesOneByOne, boolean adds)
        implements FrameModel {
    @Override
    public double evidence(double meanRating) {
        return ratings.inverse(meanRating);
    }

    @Override
    public double combined(double earlier, double fresh) {
        return adds ? earlier + fresh : fresh;
    }

    @Override
    public double decodingProbability(double evidence) {
        return success.applyAsDouble(evidence);
    }
}
