package org.ionohaul.net;

import java.util.List;
import java.util.Optional;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;

/** A burst as it is heard while other stations of the net are on the air. */
final class DisturbedReception implements DerivedReception {
    /** Others come and go in the midst of a frame: nothing is taken as steady for longer than that. */
    private static final long LONGEST_STEADY_NANOS = 20_000_000;

    /**
     * Another station's burst as it arrives.
     *
     * @param fromNanos when its first symbol does
     * @param untilNanos when it has ended
     * @param reception how it is heard; empty if its power is steady
     * @param power its mean power over the floor, linear, where that is steady
     */
    record Disturber(long fromNanos, long untilNanos, Optional<Reception> reception, double power) {
        static Disturber fading(long fromNanos, long untilNanos, Reception reception) {
            return new Disturber(fromNanos, untilNanos, Optional.of(reception), 0);
        }

        static Disturber steady(long fromNanos, long untilNanos, double power) {
            return new Disturber(fromNanos, untilNanos, Optional.empty(), power);
        }

        double powerAt(long atNanos) {
            if (atNanos < fromNanos || atNanos >= untilNanos) {
                return 0;
            }
            return reception.map(it -> meanOverBand(it, atNanos)).orElse(power);
        }

        private static double meanOverBand(Reception reception, long atNanos) {
            double[] signal = new double[reception.subBands()];
            reception.powers(atNanos, signal, new double[signal.length]);
            double sum = 0;
            for (double band : signal) {
                sum += band;
            }
            return sum / signal.length;
        }
    }

    private final Reception original;
    private final List<Disturber> disturbers;
    private final double densityRatio;

    /**
     * Makes it.
     *
     * @param original how it would be heard alone
     * @param disturbers all others
     * @param densityRatio of their bursts, see {@link NetEther}
     */
    DisturbedReception(Reception original, List<Disturber> disturbers, double densityRatio) {
        this.original = original;
        this.disturbers = List.copyOf(disturbers);
        this.densityRatio = densityRatio;
    }

    @Override
    public Reception original() {
        return original;
    }

    @Override
    public void powers(long atNanos, double[] signal, double[] disturbance) {
        original.powers(atNanos, signal, disturbance);
        double others = 0;
        for (Disturber disturber : disturbers) {
            others += densityRatio * disturber.powerAt(atNanos);
        }
        for (int band = 0; band < disturbance.length; band++) {
            disturbance[band] += others;
        }
    }

    @Override
    public long steadyNanos() {
        return Math.min(original.steadyNanos(), LONGEST_STEADY_NANOS);
    }
}
