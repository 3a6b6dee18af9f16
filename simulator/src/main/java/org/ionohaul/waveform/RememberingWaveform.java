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
        return answer(DETECTION, reception, startNanos, 0, 0, 0);
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        return answer(EVIDENCE, reception, startNanos, frame, frames, 0);
    }

    @Override
    public Fate fate(Reception reception, long startNanos, int frame, int frames, double draw) {
        return FATES.get((int) answer(FATE, reception, startNanos, frame, frames, draw));
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
        return answer(MEAN_SNR, reception, startNanos, 0, frames, 0);
    }

    private double answer(int question, Reception reception, long startNanos, int frame, int frames, double draw) {
        if (reception != first && reception != second) {
            return fresh(question, reception, startNanos, frame, frames, draw);
        }
        long what = what(question, reception, frame, frames);
        double known = answers.find(startNanos, what, draw);
        if (!Double.isNaN(known)) {
            return known;
        }
        double fresh = fresh(question, reception, startNanos, frame, frames, draw);
        answers.keep(startNanos, what, draw, fresh);
        return fresh;
    }

    private double fresh(int question, Reception reception, long startNanos, int frame, int frames, double draw) {
        return switch (question) {
            case DETECTION -> original.detectionProbability(reception, startNanos);
            case EVIDENCE -> original.evidence(reception, startNanos, frame, frames);
            case FATE -> FATES.indexOf(original.fate(reception, startNanos, frame, frames, draw));
            default -> original.meanSnrDb(reception, startNanos, frames);
        };
    }

    /** Returns a number for what is asked about an instant: never zero, and no two alike. */
    private long what(int question, Reception reception, int frame, int frames) {
        return ((long) frame << 32 | (long) frames << 4) | (reception == first ? 0 : 8) | question;
    }
}
