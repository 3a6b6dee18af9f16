package org.ionohaul.anchor;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;

/**
 * What a link is tried under.
 *
 * @param about what sets it apart, in a few words
 * @param paths delays are whole samples of a {@link ReferenceLink}
 * @param impulses impulsive noise
 * @param interfererDb power of a narrow interferer over that of the noise in 3 kHz, negative infinity for none
 */
record AirCondition(String about, List<PropagationPath> paths, ImpulsiveNoise impulses, double interfererDb) {
    static final double INTERFERER_LOW_HZ = 300;
    static final double INTERFERER_HIGH_HZ = 400;

    /** Two paths of which the second is {@code delaySamples} late and has so many dB more power than the first. */
    static AirCondition twoPaths(String about, int delaySamples, double spreadHz, double echoDb) {
        return shifted(about, delaySamples, spreadHz, echoDb, 0);
    }

    /** Two paths likewise, of which the second is shifted in frequency. */
    static AirCondition shifted(String about, int delaySamples, double spreadHz, double echoDb, double shiftHz) {
        double delaySeconds = delaySamples / ReferenceLink.SAMPLE_RATE;
        return quiet(
                about,
                List.of(
                        new PropagationPath(0, 0, 0, spreadHz),
                        new PropagationPath(delaySeconds, echoDb, shiftHz, spreadHz)));
    }

    static AirCondition onePath(String about, double spreadHz) {
        return quiet(about, List.of(new PropagationPath(0, 0, 0, spreadHz)));
    }

    AirCondition with(ImpulsiveNoise noise) {
        return new AirCondition(about, paths, noise, interfererDb);
    }

    AirCondition withInterferer(double powerDb) {
        return new AirCondition(about, paths, impulses, powerDb);
    }

    private static AirCondition quiet(String about, List<PropagationPath> paths) {
        return new AirCondition(about, paths, ImpulsiveNoise.NONE, Double.NEGATIVE_INFINITY);
    }

    SkyConditions sky(double snrDb) {
        EndConditions end = new EndConditions(snrDb, Schedule.NONE, impulses, List.of());
        return new SkyConditions(paths, SlowVariation.NONE, Schedule.NONE, end, end);
    }

    int[] delays() {
        return paths.stream()
                .mapToInt(path -> (int) Math.round(path.delaySeconds() * ReferenceLink.SAMPLE_RATE))
                .toArray();
    }

    double[] powers() {
        double total = paths.stream()
                .mapToDouble(path -> Decibels.toRatio(path.powerDb()))
                .sum();
        return paths.stream()
                .mapToDouble(path -> Decibels.toRatio(path.powerDb()) / total)
                .toArray();
    }

    /** Returns the spread of each path as a receiver feels it that does not know the shift: both widths together. */
    double[] spreadsHz() {
        return paths.stream()
                .mapToDouble(path -> Math.hypot(path.dopplerSpreadHz(), 2 * path.dopplerShiftHz()))
                .toArray();
    }

    double interferer() {
        return Decibels.toRatio(interfererDb);
    }

    /** Returns the model's reception with the interferer added. */
    Reception heard(Reception original, Passband passband) {
        List<Double> added = IntStream.range(0, passband.subBands())
                .mapToObj(band -> density(passband.centreHz(band), passband.widthHz() / passband.subBands()))
                .toList();
        return new Jammed(original, added);
    }

    private double density(double centreHz, double widthHz) {
        double overlapHz = Math.min(INTERFERER_HIGH_HZ, centreHz + widthHz / 2)
                - Math.max(INTERFERER_LOW_HZ, centreHz - widthHz / 2);
        double share = Math.max(0, overlapHz) / (INTERFERER_HIGH_HZ - INTERFERER_LOW_HZ);
        return interferer() * share * Reception.NOISE_BANDWIDTH_HZ / widthHz;
    }

    /** A reception with more disturbance. */
    private record Jammed(Reception original, List<Double> added) implements DerivedReception {
        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            original.powers(atNanos, signal, disturbance);
            for (int band = 0; band < disturbance.length; band++) {
                disturbance[band] += added.get(band);
            }
        }
    }
}
