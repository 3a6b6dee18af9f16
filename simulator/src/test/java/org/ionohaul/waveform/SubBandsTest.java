package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.trial.FadingSkies;
import org.ionohaul.trial.LossOnPath;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A few sub-bands tell what many do, whatever the delay between the paths. */
final class SubBandsTest {
    private static final int BURSTS = 300;
    private static final int MANY = 64;

    @ParameterizedTest(name = "{0} Hz wide, echo {1} ms late")
    @CsvSource({"1970, 3.55", "1970, 7", "1970, 7.1", "1600, 9", "2400, 3.333", "500, 3.55", "500, 7", "310, 7"})
    void noDelayMakesAllSubBandsFadeAlike(double bandwidthHz, double delayMillis) {
        // Cut into equal sub-bands without regard to the delay, these need 0.6 to 2.4 dB more. The same skies serve
        // both, so
        // that chance is the same.
        Passband cut = new Emission(bandwidthHz, 0).passband();
        Passband fine = new Passband(bandwidthHz, MANY);
        assertEquals(needDb(fine, delayMillis), needDb(cut, delayMillis), 0.2);
    }

    private static double needDb(Passband passband, double delayMillis) {
        double widthHz = passband.widthHz();
        ModelledFrame frame = ModelledFrame.ofBytes(
                Coding.oneByOne(Modulation.QPSK, widthHz, 1.0 / 3),
                new Receiver(1, 0, 2, 900),
                0.24,
                (int) (widthHz / 25),
                5,
                0);
        Waveform waveform = Waveforms.of(new BurstShape(0, -150, frame), new Emission(widthHz, 0), Combining.NONE);
        List<PropagationPath> paths =
                List.of(new PropagationPath(0, 0, 0, 0.5), new PropagationPath(delayMillis / 1000, 0, 0, 0.5));
        return new LossOnPath(waveform, new FadingSkies(paths, passband, BURSTS, 5)).needDb(0.1);
    }
}
