package org.ionohaul.trial;

import org.ionohaul.channel.Reception;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.Signals;
import org.ionohaul.waveform.Waveform;

/**
 * What a short over of each data rate is expected to bring, read off the sky itself.
 *
 * @param signals the mode's bursts
 * @param data how the receiver of the data hears their sender
 * @param arq how long the mode's overs may be
 */
record ExpectedPayload(Signals signals, Reception data, ArqRules arq) implements Oracle {
    @Override
    public double payloadBytesPerSecond(int dataRate, long atNanos) {
        Waveform waveform = signals.dataRate(dataRate);
        int frames = arq.usualFrames(waveform);
        double decoded = 0;
        for (int frame = 0; frame < frames; frame++) {
            decoded += waveform.decodingProbability(waveform.evidence(data, atNanos, frame, frames));
        }
        double bytes = decoded * waveform.payloadBytes() * waveform.detectionProbability(data, atNanos);
        return bytes / (waveform.burstNanos(frames) * 1e-9);
    }
}
