package org.ionohaul.waveform;

import java.util.Arrays;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.NoiseBursts;
import org.ionohaul.channel.Reception;

/**
 * What a front end leaves of an instant of fading and of the bursts of noise about it. Level 0 is the time between bursts.
 */
final class HeardInstant {
    private final FrontEnd frontEnd;
    private final boolean hasCarriers;
    private final double limit;
    private final Leakage leakage;
    private final NoiseBursts bursts = new NoiseBursts();
    private final double[] signal;
    private final double[] noise;
    private final double[] spread;
    private double unfaded;
    private double[] share = new double[2];
    private double[] energy = new double[2];
    private double[] added = new double[2];
    private int levels;
    private double meanEnergy;
    private double meanGain;
    private double meanAdded;

    HeardInstant(FrontEnd frontEnd, boolean hasCarriers, Leakage leakage, int subBands) {
        this.frontEnd = frontEnd;
        this.hasCarriers = hasCarriers;
        this.limit = Decibels.toRatio(frontEnd.impulseLimitDb());
        this.leakage = leakage;
        this.signal = new double[subBands];
        this.noise = new double[subBands];
        this.spread = new double[subBands];
    }

    void hear(Reception reception, long fromNanos, long atNanos, long toNanos) {
        reception.powers(atNanos, signal, noise);
        unfaded = reception.meanSignal(atNanos);
        reception.bursts(fromNanos, toNanos, bursts);
        defend(mean(signal), mean(noise));
        excise();
    }

    /** Lets the samples of each level through the limiter or blanker. */
    private void defend(double meanSignal, double meanNoise) {
        levels = 1 + bursts.levels();
        if (levels > share.length) {
            share = Arrays.copyOf(share, 2 * levels);
            energy = Arrays.copyOf(energy, 2 * levels);
            added = Arrays.copyOf(added, 2 * levels);
        }
        double between = 1;
        for (int level = 1; level < levels; level++) {
            share[level] = Math.min(bursts.share(level - 1), between);
            between -= share[level];
            pass(level, bursts.power(level - 1), meanSignal + meanNoise);
        }
        share[0] = between;
        pass(0, 0, meanSignal + meanNoise);
        meanEnergy = 0;
        meanAdded = 0;
        double amplitude = 0;
        for (int level = 0; level < levels; level++) {
            meanEnergy += share[level] * energy[level];
            meanAdded += share[level] * added[level];
            amplitude += share[level] * Math.sqrt(energy[level]);
        }
        meanGain = meanEnergy;
        if (hasCarriers) {
            // A symbol is added up over samples of uneven gain: the mean is what is left, the rest carriers do each
            // other.
            meanGain = amplitude * amplitude;
            meanAdded += (meanEnergy - meanGain) * meanSignal;
        }
    }

    private void pass(int level, double burst, double without) {
        ImpulseDefence defence = frontEnd.impulseDefence();
        if (defence == ImpulseDefence.NONE) {
            energy[level] = 1;
            added[level] = burst;
            return;
        }
        double arriving = without + burst;
        double reach = limit * without / arriving;
        double amplitude = defence.amplitude(reach);
        energy[level] = amplitude * amplitude;
        added[level] = Math.max(0, defence.power(reach) * arriving - energy[level] * without);
    }

    private void excise() {
        switch (frontEnd.excision()) {
            case NONE -> Arrays.fill(noise, mean(noise));
            case WEIGHTING -> {
                if (hasCarriers) {
                    leakage.spread(noise, spread);
                }
            }
            case NOTCH -> {
                // Each sub-band is heard as it is.
            }
        }
    }

    private static double mean(double[] powers) {
        double sum = 0;
        for (double power : powers) {
            sum += power;
        }
        return sum / powers.length;
    }

    /** Returns the signal's power in a sub-band, all levels together. */
    double signal(int band) {
        return meanGain * signal[band];
    }

    /** Returns what the signal would be if the path did not fade. */
    double unfaded() {
        return meanGain * unfaded;
    }

    /** Returns the noise power in a sub-band in the mean over all levels. */
    double noise(int band) {
        return meanEnergy * noise[band] + meanAdded;
    }

    int levels() {
        return levels;
    }

    double share(int level) {
        return share[level];
    }

    double signalAt(int level, int band) {
        return energy[level] * signal[band];
    }

    double noiseAt(int level, int band) {
        return energy[level] * noise[band] + added[level];
    }

    double unfadedAt(int level) {
        return energy[level] * unfaded;
    }
}
