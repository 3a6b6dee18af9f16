package org.ionohaul.waveform;

import java.util.Arrays;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.NoiseBursts;
import org.ionohaul.channel.Reception;

/**
 * What a front end leaves of an instant of fading: in each sub-band, and of symbols that bursts of noise strike. Level 0 is
 * a symbol that none strikes; its signal stands as it came, and noise is told over that.
 */
final class HeardInstant {
    /** Below so many samples a symbol is as good as one: it is blanked or not. */
    private static final double FEW_SAMPLES = 2;

    private final FrontEnd frontEnd;
    private final double limit;
    private final double meanPower;
    private final double symbolSeconds;
    /** By what amplitudes are raised after limiter or blanker, so that the signal between bursts stands as it came. */
    private final double gain;

    /** Power of samples that no burst strikes, over that of what came: it does not depend on how strong they are. */
    private final double quietPower;

    private final Leakage leakage;
    private final double[] signal;
    private final double[] noise;
    private final double[] spread;
    private double unfaded;
    private int levels;
    private double[] share = new double[2];
    private double[] amplitude = new double[2];
    private double[] energy = new double[2];
    private double[] added = new double[2];
    private double blanked;

    /** Prepares. */
    HeardInstant(WaveformPlan plan, Leakage leakage, int subBands) {
        this.frontEnd = plan.shape().frontEnd();
        this.limit = Decibels.toRatio(frontEnd.impulseLimitDb());
        this.meanPower = plan.hearing().meanPower();
        this.symbolSeconds = plan.symbolSeconds();
        ImpulseDefence defence = frontEnd.impulseDefence();
        this.gain = through(limit) / defence.amplitude(limit);
        this.quietPower = gain * gain * defence.power(limit) / through(limit);
        this.leakage = leakage;
        this.signal = new double[subBands];
        this.noise = new double[subBands];
        this.spread = new double[subBands];
    }

    /** Hears an instant of a stretch in which there are such bursts. */
    void hear(Reception reception, long atNanos, NoiseBursts bursts) {
        reception.powers(atNanos, signal, noise);
        unfaded = reception.meanSignal(atNanos);
        double meanNoise = mean(noise);
        defend(bursts, meanPower * mean(signal), meanNoise);
        excise(meanNoise);
    }

    /** Lets samples through the limiter or blanker, and adds them up to symbols. */
    private void defend(NoiseBursts bursts, double meanSignal, double meanNoise) {
        prepare(bursts.levels() + 1);
        keep(0, 1, quietPower, 0, meanSignal + meanNoise);
        for (int level = 1; level < levels; level++) {
            if (bursts.share(level - 1) == 0) {
                continue;
            }
            double seconds = bursts.seconds(level - 1);
            double part = seconds / (seconds + symbolSeconds);
            double struck = Math.min(bursts.share(level - 1) / part, share[0]);
            double through = pass(level, bursts.power(level - 1), meanSignal + meanNoise);
            addUp(level, Math.min(1, bursts.share(level - 1) / struck), meanSignal);
            share[0] -= struck;
            share[level] = through * struck;
            blanked += (1 - through) * struck;
        }
    }

    private void prepare(int count) {
        if (count > share.length) {
            share = new double[2 * count];
            amplitude = new double[2 * count];
            energy = new double[2 * count];
            added = new double[2 * count];
        }
        levels = count;
        Arrays.fill(share, 0, levels, 0);
        share[0] = 1;
        blanked = 0;
    }

    /**
     * Works out what is left of the samples of a level: amplitude and energy of what was there without the burst, over what
     * is left between bursts, and what is added. Returns which share of symbols it holds for; the others are blanked.
     */
    private double pass(int level, double burst, double without) {
        double reach = limit * without / (without + burst);
        ImpulseDefence defence = frontEnd.impulseDefence();
        double through = through(reach);
        double power = defence.power(reach);
        keep(level, gain * defence.amplitude(reach, power) / through, gain * gain * power / through, burst, without);
        return through;
    }

    private double through(double reach) {
        return symbolSeconds * Reception.NOISE_BANDWIDTH_HZ < FEW_SAMPLES
                ? frontEnd.impulseDefence().passes(reach)
                : 1;
    }

    private void keep(int level, double left, double power, double burst, double without) {
        amplitude[level] = left;
        energy[level] = left * left;
        double more = power * (without + burst) - energy[level] * without;
        added[level] = more > 0 ? more : 0;
    }

    /** Adds up symbols of which a part lies on a level, the rest on level 0: uneven gain makes noise of the signal. */
    private void addUp(int level, double part, double meanSignal) {
        double uneven = amplitude[level] - amplitude[0];
        amplitude[level] = amplitude[0] + part * uneven;
        energy[level] = energy[0] + part * (energy[level] - energy[0]);
        added[level] = added[0] + part * (added[level] - added[0]) + part * (1 - part) * uneven * uneven * meanSignal;
    }

    private void excise(double meanNoise) {
        switch (frontEnd.excision()) {
            case NONE -> Arrays.fill(noise, meanNoise);
            case WEIGHTING -> {
                if (symbolSeconds > 0) {
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

    /** Returns the signal's power in a sub-band before limiter or blanker. */
    double signal(int band) {
        return signal[band];
    }

    /** Returns what the signal would be if the path did not fade. */
    double unfaded() {
        return unfaded;
    }

    /** Returns whether bursts strike any symbols. */
    boolean isStruck() {
        return share[0] < 1;
    }

    /** Returns the share of symbols of which nothing is left; they are on no level. */
    double blanked() {
        return blanked;
    }

    /** Returns how many levels there are, 1 or more. */
    int levels() {
        return levels;
    }

    /** Returns the share of symbols on a level. */
    double share(int level) {
        return share[level];
    }

    /** Returns which part of the signal's amplitude is left of symbols on a level, over that on level 0; from 0 to 1. */
    double amplitude(int level) {
        return amplitude[level];
    }

    /** Returns the noise power of symbols on a level in a sub-band. */
    double noise(int level, int band) {
        return energy[level] * noise[band] + added[level];
    }

    /** Returns which part of the signal's amplitude is left in the mean over all levels. */
    double meanAmplitude() {
        double mean = 0;
        for (int level = 0; level < levels; level++) {
            mean += share[level] * amplitude[level];
        }
        return mean;
    }

    /** Returns the noise in a sub-band in the mean over all levels. */
    double meanNoise(int band) {
        double mean = 0;
        for (int level = 0; level < levels; level++) {
            mean += share[level] * noise(level, band);
        }
        return mean;
    }
}
