package org.ionohaul.trial;

import org.ionohaul.channel.Reception;
import org.ionohaul.link.Oracle;
import org.ionohaul.link.Signals;
import org.ionohaul.waveform.Waveform;

/**
 * What a short over of each level is expected to bring, read off the sky itself.
 *
 * @param signals the mode's bursts
 * @param data how the receiver of the data hears their sender
 * @param frames how many frames the over would carry
 */
record ExpectedPayload(Signals signals, Reception data, int frames) implements Oracle {
    @Override
    public double payloadBytesPerSecond(int level, long atNanos) {
        Waveform waveform = signals.level(level);
        double decoded = 0;
        for (int frame = 0; frame < frames; frame++) {
            decoded += waveform.decodingProbability(waveform.evidence(data, atNanos, frame, frames));
        }
        double bytes = decoded * waveform.payloadBytes() * waveform.detectionProbability(data, atNanos);
        return bytes / (waveform.burstNanos(frames) * 1e-9);
    }
}
