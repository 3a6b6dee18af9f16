package org.ionohaul.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One end of a trial's sky as somebody with a meter would write it down: the signal of a carrier in the middle of the
 * band and everything that disturbs it in 3 kHz, at even steps. For looking at a sky; what happens between two steps
 * (most impulses, short overs) is seen only by chance.
 */
public final class SkyWatch {
    /** How far a carrier must fall below its mean power of the moment to count as faded, in dB. */
    public static final double FADE_DB = 10;

    private static final long LONGEST_STEP_NANOS = 1_000_000_000L;
    private static final int MOST_SAMPLES = 50_000;
    private static final double FADED = Decibels.toRatio(-FADE_DB);

    /** How many looks at the carrier in a steady time find nearly every fade: all but 1 in 100 of 10 dB. */
    private static final int LOOKS = 4;

    private final long stepNanos;
    private final double[] signalDb;
    private final double[] disturbanceDb;
    private final boolean[] occupied;
    private final boolean[] droppedOut;
    private final boolean[] sporadicE;
    private final int[] fades;
    private final double[] fadedShare;
    private final List<Over> overs;
    private final SkyConditions conditions;

    /**
     * Watches a sky.
     *
     * @param end where the meter stands
     * @param lengthNanos how long from the trial's beginning, positive
     */
    public SkyWatch(Sky sky, End end, long lengthNanos) {
        if (!(lengthNanos > 0)) {
            throw new IllegalArgumentException("lengthNanos must be positive: " + lengthNanos);
        }
        SkyReception carrier = sky.transferTo(end, new Passband(Reception.NOISE_BANDWIDTH_HZ, 1));
        long fineNanos = Math.min(LONGEST_STEP_NANOS, carrier.steadyNanos());
        stepNanos = Math.max(fineNanos, lengthNanos / MOST_SAMPLES);
        int samples = Math.toIntExact((lengthNanos + stepNanos - 1) / stepNanos);
        signalDb = new double[samples];
        disturbanceDb = new double[samples];
        occupied = new boolean[samples];
        droppedOut = new boolean[samples];
        sporadicE = new boolean[samples];
        fades = new int[samples];
        fadedShare = new double[samples];
        readMeter(sky, end, carrier);
        countFades(carrier, Math.toIntExact(LOOKS * stepNanos / fineNanos));
        overs = sky.noise(end).occupancy().before(lengthNanos);
        conditions = sky.conditions();
    }

    private void readMeter(Sky sky, End end, SkyReception carrier) {
        double[] transfer = new double[1];
        for (int i = 0; i < samples(); i++) {
            long atNanos = i * stepNanos;
            carrier.transfer(atNanos, transfer);
            signalDb[i] = Decibels.ofRatio(carrier.meanSignal(atNanos) * transfer[0]);
            disturbanceDb[i] = Decibels.ofRatio(sky.noise(end).disturbance(atNanos));
            occupied[i] = sky.isOccupied(end, atNanos, 0);
            droppedOut[i] = sky.level(end).dropOuts().isOn(atNanos);
            sporadicE[i] = sky.level(end).sporadicE().isOn(atNanos);
        }
    }

    private void countFades(SkyReception carrier, int looks) {
        double[] transfer = new double[1];
        boolean wasFaded = true;
        for (int i = 0; i < samples(); i++) {
            for (int look = 0; look < looks; look++) {
                carrier.transfer(i * stepNanos + look * stepNanos / looks, transfer);
                boolean isFaded = transfer[0] < FADED;
                fades[i] += isFaded && !wasFaded ? 1 : 0;
                fadedShare[i] += isFaded ? 1.0 / looks : 0;
                wasFaded = isFaded;
            }
        }
    }

    /** Returns what is fixed about the sky that is watched. */
    public SkyConditions conditions() {
        return conditions;
    }

    /** Returns how many samples there are, 1 or more. */
    public int samples() {
        return signalDb.length;
    }

    /** Returns the time from one sample to the next, in nanoseconds; the first is at the trial's beginning. */
    public long stepNanos() {
        return stepNanos;
    }

    /** Returns the carrier's power at a sample, in dB over the noise floor in 3 kHz at the trial's beginning. */
    public double signalDb(int sample) {
        return signalDb[sample];
    }

    /** Returns the power of noise, impulses and other stations, in dB over the same floor. */
    public double disturbanceDb(int sample) {
        return disturbanceDb[sample];
    }

    /** Returns the carrier's power over everything that disturbs it in 3 kHz, in dB. */
    public double sinrDb(int sample) {
        return signalDb[sample] - disturbanceDb[sample];
    }

    /** Returns whether other stations together are stronger than the noise floor of the moment. */
    public boolean isOccupied(int sample) {
        return occupied[sample];
    }

    /** Returns the overs of other stations that begin or are under way in the time watched, in order of beginning. */
    public List<Over> overs() {
        return overs;
    }

    /** Returns what can be said of the whole time. */
    public WatchSummary summary() {
        return between(0, samples());
    }

    /**
     * Returns what can be said of each of a number of equal spans, in order.
     *
     * @param count from 1 to {@link #samples()}
     */
    public List<WatchSummary> spans(int count) {
        if (count < 1 || count > samples()) {
            throw new IllegalArgumentException("count must be from 1 to " + samples() + ": " + count);
        }
        List<WatchSummary> spans = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            spans.add(between((int) ((long) samples() * i / count), (int) ((long) samples() * (i + 1) / count)));
        }
        return List.copyOf(spans);
    }

    /**
     * Returns the share of the time in which the SINR is below a need, from 0 to 1.
     *
     * @param needDb SINR in 3 kHz, in dB
     */
    public double shareBelow(double needDb) {
        int below = 0;
        for (int i = 0; i < samples(); i++) {
            below += sinrDb(i) < needDb ? 1 : 0;
        }
        return (double) below / samples();
    }

    private WatchSummary between(int from, int to) {
        double[] sinrDb = new double[to - from];
        int fadeCount = 0;
        double faded = 0;
        for (int i = from; i < to; i++) {
            sinrDb[i - from] = sinrDb(i);
            fadeCount += fades[i];
            faded += fadedShare[i] / sinrDb.length;
        }
        double minutes = sinrDb.length * (stepNanos / 60e9);
        return new WatchSummary(
                from * stepNanos,
                to * stepNanos,
                Deciles.of(Arrays.copyOfRange(signalDb, from, to)),
                Deciles.of(sinrDb),
                Deciles.of(Arrays.copyOfRange(disturbanceDb, from, to)),
                fadeCount / minutes,
                faded,
                share(occupied, from, to),
                share(droppedOut, from, to),
                share(sporadicE, from, to));
    }

    private static double share(boolean[] samples, int from, int to) {
        double share = 0;
        for (int i = from; i < to; i++) {
            share += samples[i] ? 1.0 / (to - from) : 0;
        }
        return share;
    }
}
