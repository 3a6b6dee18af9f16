package org.ionohaul.waveform;

import java.util.List;
import org.ionohaul.channel.Reception;

/**
 * A waveform that remembers what it once worked out, for sessions under one sky that go the same way until one has less left to
 * send. It answers as the original does, which is a pure function; of other receptions than two it asks that afresh. Belongs
 * to one thread.
 */
final class RememberingWaveform implements Waveform {
    private static final int DETECTION = 1;
    private static final int EVIDENCE = 2;
    private static final int FATE = 3;
    private static final int MEAN_SNR = 4;
    private static final List<Fate> FATES = List.of(Fate.values());

    private final Waveform original;
    private final Reception first;
    private final Reception second;
    private final Answers answers = new Answers();

    /** Remembers what a waveform says of two receptions. */
    RememberingWaveform(Waveform original, Reception first, Reception second) {
        this.original = original;
        this.first = first;
        this.second = second;
    }

    @Override
    public int payloadBytes() {
        return original.payloadBytes();
    }

    @Override
    public long burstNanos(int frames) {
        return original.burstNanos(frames);
    }

    @Override
    public long preambleNanos() {
        return original.preambleNanos();
    }

    @Override
    public double detectionProbability(Reception reception, long startNanos) {
        if (!isKnown(reception)) {
            return original.detectionProbability(reception, startNanos);
        }
        long what = what(DETECTION, reception, 0, 0);
        double known = answers.find(startNanos, what, 0);
        if (!Double.isNaN(known)) {
            return known;
        }
        double fresh = original.detectionProbability(reception, startNanos);
        answers.keep(startNanos, what, 0, fresh);
        return fresh;
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        if (!isKnown(reception)) {
            return original.evidence(reception, startNanos, frame, frames);
        }
        long what = what(EVIDENCE, reception, frame, frames);
        double known = answers.find(startNanos, what, 0);
        if (!Double.isNaN(known)) {
            return known;
        }
        double fresh = original.evidence(reception, startNanos, frame, frames);
        answers.keep(startNanos, what, 0, fresh);
        return fresh;
    }

    @Override
    public Fate fate(Reception reception, long startNanos, int frame, int frames, double draw) {
        if (!isKnown(reception)) {
            return original.fate(reception, startNanos, frame, frames, draw);
        }
        long what = what(FATE, reception, frame, frames);
        double known = answers.find(startNanos, what, draw);
        if (!Double.isNaN(known)) {
            return FATES.get((int) known);
        }
        Fate fresh = original.fate(reception, startNanos, frame, frames, draw);
        answers.keep(startNanos, what, draw, FATES.indexOf(fresh));
        return fresh;
    }

    @Override
    public double combined(double earlier, double fresh) {
        return original.combined(earlier, fresh);
    }

    @Override
    public double decodingProbability(double evidence) {
        return original.decodingProbability(evidence);
    }

    @Override
    public double unnoticedErrorProbability(double evidence) {
        return original.unnoticedErrorProbability(evidence);
    }

    @Override
    public double meanSnrDb(Reception reception, long startNanos, int frames) {
        if (!isKnown(reception)) {
            return original.meanSnrDb(reception, startNanos, frames);
        }
        long what = what(MEAN_SNR, reception, 0, frames);
        double known = answers.find(startNanos, what, 0);
        if (!Double.isNaN(known)) {
            return known;
        }
        double fresh = original.meanSnrDb(reception, startNanos, frames);
        answers.keep(startNanos, what, 0, fresh);
        return fresh;
    }

    private boolean isKnown(Reception reception) {
        return reception == first || reception == second;
    }

    /** Returns a number for what is asked about an instant: never zero, and no two alike. */
    private long what(int question, Reception reception, int frame, int frames) {
        return ((long) frame << 32 | (long) frames << 4) | (reception == first ? 0 : 8) | question;
    }
}
