package org.ionohaul.waveform;

/**
 * A frame under a check sum that takes a share of wrong frames for right.
 *
 * @param perfect the same frame under a perfect check
 * @param passedShare which share of wrong frames passes, from 0 to 1
 */
record SummedFrame(FrameModel perfect, double passedShare) implements FrameModel {
    @Override
    public RatioTable ratings() {
        return perfect.ratings();
    }

    @Override
    public boolean decidesOneByOne() {
        return perfect.decidesOneByOne();
    }

    @Override
    public double evidence(double meanRating) {
        return perfect.evidence(meanRating);
    }

    @Override
    public double combined(double earlier, double fresh) {
        return perfect.combined(earlier, fresh);
    }

    @Override
    public double decodingProbability(double evidence) {
        return perfect.decodingProbability(evidence) + unnoticedErrorProbability(evidence);
    }

    @Override
    public double unnoticedErrorProbability(double evidence) {
        return (1 - perfect.decodingProbability(evidence)) * passedShare;
    }
}
