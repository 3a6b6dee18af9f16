package org.ionohaul.waveform;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/**
 * A frame whose loss was measured on a steady path at a few levels of SNR, in place of a model.
 *
 * <p>On a path that fades, the frame is taken to fare as on the steady path that has the same mean of log(1 + SNR):
 * receivers differ, but that lies between the mean in dB and the mean in watts.
 *
 * @param payloadBytes user bytes, zero or more
 * @param airtimeSeconds how long it is on the air, positive
 * @param interleaverSeconds time over which its bits are spread, zero for just its own airtime
 * @param losses the measurements, two or more, SNR rising and loss falling
 */
public record MeasuredFrame(
        int payloadBytes, double airtimeSeconds, double interleaverSeconds, List<Measurement> losses)
        implements FrameShape {

    /**
     * What was lost at one SNR.
     *
     * @param snrDb mean signal over mean noise in 3 kHz, in dB
     * @param loss share of frames lost, above 0 and below 1
     */
    public record Measurement(double snrDb, double loss) {
        /** Checks both values. */
        public Measurement {
            OutOfRange.unless(Math.abs(snrDb) < 200, "snrDb", "must be finite", snrDb);
            OutOfRange.unless(loss > 0 && loss < 1, "loss", "must be above 0 and below 1", loss);
        }
    }

    @Override
    public double frequencyToleranceHz() {
        return Receiver.USUAL_TOLERANCE_HZ;
    }

    /** Copies the measurements and checks their order. */
    public MeasuredFrame {
        losses = List.copyOf(losses);
        FrameLimits.require(payloadBytes, airtimeSeconds, interleaverSeconds);
        OutOfRange.unless(losses.size() >= 2, "losses", "must be two or more", losses.size());
        for (int i = 1; i < losses.size(); i++) {
            Measurement now = losses.get(i);
            Measurement before = losses.get(i - 1);
            OutOfRange.unless(
                    now.snrDb() > before.snrDb() && now.loss() < before.loss(),
                    "losses",
                    "must fall while the SNR rises, unlike at point",
                    i + 1);
        }
    }
}
