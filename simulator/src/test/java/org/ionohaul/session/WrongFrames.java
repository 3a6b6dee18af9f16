package org.ionohaul.session;

import java.util.function.DoubleUnaryOperator;
import org.ionohaul.channel.Reception;
import org.ionohaul.waveform.Waveform;

/**
 * A waveform under a check that overlooks errors: frames come as those of another one, which is under a perfect check.
 *
 * @param perfect the other one, whose evidence is the chance of a right frame
 * @param unnoticed the chance of a wrong frame that passes, by that of a right one
 */
record WrongFrames(PlainWaveform perfect, DoubleUnaryOperator unnoticed) implements Waveform {
    /** A check that passes a share of wrong frames. */
    static WrongFrames passing(PlainWaveform perfect, double share) {
        return new WrongFrames(perfect, right -> (1 - right) * share);
    }

    @Override
    public int payloadBytes() {
        return perfect.payloadBytes();
    }

    @Override
    public long burstNanos(int frames) {
        return perfect.burstNanos(frames);
    }

    @Override
    public long preambleNanos() {
        return perfect.preambleNanos();
    }

    @Override
    public double detectionProbability(Reception reception, long startNanos) {
        return perfect.detectionProbability(reception, startNanos);
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        return perfect.evidence(reception, startNanos, frame, frames);
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
        return unnoticed.applyAsDouble(evidence);
    }

    @Override
    public double meanSnrDb(Reception reception, long startNanos, int frames) {
        return perfect.meanSnrDb(reception, startNanos, frames);
    }
}
