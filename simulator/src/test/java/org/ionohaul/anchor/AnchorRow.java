package org.ionohaul.anchor;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.waveform.ReferenceFile;

/**
 * One line of the published table.
 *
 * @param link the link
 * @param condition what it is tried under
 */
record AnchorRow(ReferenceLink link, AirCondition condition) {
    /** Needs are those for this loss. */
    static final double LOSS = 0.1;

    private static final long SEED = 3;
    private static final AirCondition WHITE = AirCondition.onePath("white noise", 0);
    private static final List<AirCondition> CONDITIONS = List.of(
            WHITE,
            AirCondition.onePath("one path 1 Hz", 1),
            AirCondition.twoPaths("0.42 ms 0.1 Hz", 1, 0.1, 0),
            AirCondition.twoPaths("2.08 ms 1 Hz", 5, 1, 0),
            AirCondition.twoPaths("2.08 ms 2 Hz", 5, 2, 0),
            AirCondition.twoPaths("2.08 ms 5 Hz", 5, 5, 0),
            AirCondition.twoPaths("3.33 ms 0.5 Hz", 8, 0.5, 0),
            AirCondition.twoPaths("6.67 ms 1 Hz", 16, 1, 0),
            AirCondition.twoPaths("9.17 ms 1 Hz; echo 20 dB down", 22, 1, -20),
            AirCondition.twoPaths("9.17 ms 1 Hz; echo 10 dB down", 22, 1, -10),
            AirCondition.shifted("2.08 ms 0.5 Hz; echo shifted 4 Hz", 5, 0.5, 0, 4),
            AirCondition.twoPaths("2.08 ms 1 Hz; impulses 20 dB 5 ms 1 in 20", 5, 1, 0)
                    .with(new ImpulsiveNoise(0.05, 20, 5e-3)),
            AirCondition.twoPaths("2.08 ms 1 Hz; impulses 20 dB 5 ms 1 in 20; no blanker", 5, 1, 0)
                    .with(new ImpulsiveNoise(0.05, 20, 5e-3))
                    .withoutBlanker(),
            AirCondition.twoPaths("2.08 ms 1 Hz; interferer 20 dB 100 Hz", 5, 1, 0)
                    .withInterferer(20));

    static final List<ReferenceLink> LINKS =
            List.of(new SingleCarrier(Mapping.QPSK), new Multicarrier(Mapping.QPSK), new Multicarrier(Mapping.QAM16));

    /** Rows of one link lie together, white noise first. */
    static final List<AnchorRow> ALL = Stream.concat(
                    LINKS.stream().limit(2).flatMap(link -> CONDITIONS.stream().map(it -> new AnchorRow(link, it))),
                    IntStream.of(0, 3, 4, 5, 8).mapToObj(i -> new AnchorRow(LINKS.get(2), CONDITIONS.get(i))))
            .toList();

    static AnchorRow of(String link, String modulation, String condition) {
        return ALL.stream()
                .filter(it -> it.link.name().equals(link)
                        && it.link.mapping().name().equals(modulation)
                        && it.condition.about().equals(condition))
                .findFirst()
                .orElseThrow();
    }

    /** Returns whether the row is cheap and tells enough to be tried always. */
    boolean isQuick() {
        return link.mapping() == Mapping.QPSK && List.of(0, 3, 5).contains(CONDITIONS.indexOf(condition));
    }

    AnchorBench bench(int frames) {
        return new AnchorBench(link, condition, frames, SEED);
    }

    /** Returns what the model needs, in dB. */
    double model(int frames, Tracking tracking, double gapDb) {
        AnchorBench bench = bench(frames);
        return bench.modelNeedDb(LOSS, bench.receiver(tracking, gapDb));
    }

    /** Returns the gap in dB that makes the model agree with the reference in white noise, to a hundredth as published. */
    static double gapDb(ReferenceLink link, int frames, Tracking tracking) {
        AnchorRow white = new AnchorRow(link, WHITE);
        double gapDb = white.bench(frames).referenceNeedDb(LOSS, tracking) - white.model(frames, tracking, 0);
        return Math.round(100 * gapDb) / 100.0;
    }

    /** Works out the line's cells. */
    Object[] cells(int frames, double gapKnownDb, double gapDb) {
        double knownDb = bench(frames).referenceNeedDb(LOSS, Tracking.KNOWN);
        double modelKnownDb = model(frames, Tracking.KNOWN, gapKnownDb);
        double referenceDb = bench(frames).referenceNeedDb(LOSS, Tracking.LINES);
        double modelDb = model(frames, Tracking.LINES, gapDb);
        return new Object[] {
            ReferenceFile.programVersion(),
            SEED,
            frames,
            link.name(),
            link.mapping(),
            condition.about(),
            gapKnownDb,
            gapDb,
            knownDb,
            modelKnownDb,
            modelKnownDb - knownDb,
            referenceDb,
            modelDb,
            modelDb - referenceDb,
            errorDb(frames, gapKnownDb)
        };
    }

    /**
     * Returns the standard error of the difference between reference and model, told their luck apart: that of verdict less
     * probability where the told reference is, by the slope of the model.
     */
    private double errorDb(int frames, double gapDb) {
        AnchorBench bench = bench(frames);
        double needDb = model(frames, Tracking.KNOWN, gapDb);
        double[] lost = bench.lost(needDb, Tracking.KNOWN);
        double[] modelled = bench.lossModelled(needDb, bench.receiver(Tracking.KNOWN, gapDb));
        double[] less = bench.lossModelled(needDb + 1, bench.receiver(Tracking.KNOWN, gapDb));
        double[] differences = new double[frames];
        Arrays.setAll(differences, i -> lost[i] - modelled[i]);
        double mean = mean(differences);
        double variance =
                Arrays.stream(differences).map(it -> (it - mean) * (it - mean)).sum() / (frames - 1);
        return Math.sqrt(variance / frames) / (mean(modelled) - mean(less));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }
}
