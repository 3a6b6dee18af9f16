package org.ionohaul.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyResult;

/**
 * By when one file may be promised in one direction, with each mode.
 *
 * @param summary what its trials come to
 * @param confidence how sure the promise must be, above 0, below 1
 * @param confidences the usual ones and the one asked for, rising
 * @param asked for each mode, the time that may be promised with the confidence asked for
 * @param byConfidence for each mode, the same with each confidence
 * @param soonest the promise that is kept soonest; empty if none can be made
 */
public record FilePromises(
        CaseSummary summary,
        double confidence,
        List<Double> confidences,
        List<SafeTime> asked,
        List<List<SafeTime>> byConfidence,
        Optional<Soonest> soonest) {
    /**
     * The soonest of the times that may be promised.
     *
     * @param mode index of the mode with which it may be
     * @param seconds the time, after pressing send
     * @param leaders the modes that have the file through by then most often, as far as they can be told apart
     */
    public record Soonest(int mode, double seconds, Leaders leaders) {}

    /** Copies the lists. */
    public FilePromises {
        confidences = List.copyOf(confidences);
        asked = List.copyOf(asked);
        byConfidence = byConfidence.stream().map(List::copyOf).toList();
    }

    /**
     * Works out the promises of every case of a study.
     *
     * @param result a study with at least one trial done
     * @param confidence above 0, below 1
     */
    public static List<FilePromises> of(StudyResult result, double confidence) {
        return result.cases().stream().map(it -> of(it, confidence)).toList();
    }

    static FilePromises of(CaseTrials trials, double confidence) {
        List<double[]> seconds =
                trials.modes().stream().map(ModeTrials::completionSeconds).toList();
        List<OrderedSample> completions =
                seconds.stream().map(OrderedSample::of).toList();
        List<Double> confidences = SizePromises.withUsual(confidence);
        List<SafeTime> asked = completions.stream()
                .map(it -> SafeTime.of(confidence, it, seconds.size()))
                .toList();
        return new FilePromises(
                CaseSummary.of(trials),
                confidence,
                confidences,
                asked,
                completions.stream()
                        .map(it -> confidences.stream()
                                .map(sure -> SafeTime.of(sure, it, seconds.size()))
                                .toList())
                        .toList(),
                soonest(asked, seconds));
    }

    private static Optional<Soonest> soonest(List<SafeTime> asked, List<double[]> seconds) {
        return IntStream.range(0, asked.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> asked.get(i).secondsOrNever()))
                .filter(i -> Double.isFinite(asked.get(i).secondsOrNever()))
                .map(i -> {
                    double by = asked.get(i).secondsOrNever();
                    return new Soonest(i, by, SubsetSelection.ofDeadline(seconds, by));
                });
    }
}
