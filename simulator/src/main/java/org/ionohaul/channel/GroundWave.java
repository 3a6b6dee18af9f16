package org.ionohaul.channel;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.limits.OutOfRange;

/**
 * A wave along the ground beside the sky wave: it arrives first, does not fade, and knows nothing of trend, slow variation,
 * drop-outs and sporadic E. Together with one path that fades it makes a Rician path, whose factor K is its level. Both ends
 * hear it, as far below (or above) the sky wave at the one as at the other, since both ways are reciprocal.
 *
 * @param leadSeconds by how much it arrives before the first path of the sky wave, from 0 to below 0.2
 * @param levelDb its power over the mean power of the sky wave as stated, within 200 dB
 */
public record GroundWave(double leadSeconds, double levelDb) {
    /** Checks both values. */
    public GroundWave {
        OutOfRange.unless(leadSeconds >= 0 && leadSeconds < 0.2, "leadSeconds", "must be from 0 to 0.2 s", leadSeconds);
        OutOfRange.unless(Math.abs(levelDb) <= 200, "levelDb", "must be within 200 dB", levelDb);
    }

    /** Returns its power over the sky wave's as stated. */
    double ratio() {
        return Decibels.toRatio(levelDb);
    }

    /** Returns all paths as they arrive: this one, then those of the sky wave. */
    List<PropagationPath> before(List<PropagationPath> skyWave) {
        double skyPower = skyWave.stream()
                .mapToDouble(path -> Decibels.toRatio(path.powerDb()))
                .sum();
        PropagationPath first = new PropagationPath(0, levelDb + Decibels.ofRatio(skyPower), 0, 0);
        return Stream.concat(
                        Stream.of(first),
                        skyWave.stream()
                                .map(path -> new PropagationPath(
                                        path.delaySeconds() + leadSeconds,
                                        path.powerDb(),
                                        path.dopplerShiftHz(),
                                        path.dopplerSpreadHz())))
                .toList();
    }
}
