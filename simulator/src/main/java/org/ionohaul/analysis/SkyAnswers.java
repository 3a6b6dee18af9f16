package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TrialRow;
import org.ionohaul.trial.TrialSky;

/**
 * What the skies of a study were, and on which of them its modes differ most.
 *
 * @param trials how many of the study's trials were looked at, the first ones
 * @param watchedSeconds how long each, from pressing send
 * @param near the spread of each measure at the station that dials
 * @param far the same at the station that is called
 * @param cases for each case, for each of {@link CaseSummary#pairs()}, when the two differ most; empty where nothing of the
 *     sky tells
 */
public record SkyAnswers(
        int trials,
        double watchedSeconds,
        List<SkySpread> near,
        List<SkySpread> far,
        List<List<Optional<Difference>>> cases) {
    /** More trials would tell the same: the cost must not grow with a study's length. */
    private static final int MOST_TRIALS = 200;

    private static final double LONGEST_SECONDS = 3600;
    private static final double SHORTEST_SECONDS = 10;

    /** Copies the lists. */
    public SkyAnswers {
        near = List.copyOf(near);
        far = List.copyOf(far);
        cases = cases.stream().map(List::copyOf).toList();
    }

    /**
     * Looks at the skies of a study's first trials.
     *
     * @param result the study, with at least one trial done
     * @param summary what it comes to
     * @param skies where its skies are read off
     */
    public static SkyAnswers of(StudyResult result, StudySummary summary, SkySource skies) {
        int trials = Math.min(MOST_TRIALS, result.trialsDone());
        double longest = Math.min(LONGEST_SECONDS, result.scenario().horizonSeconds());
        List<TrialSky> whole = watch(skies, trials, longest);
        return new SkyAnswers(
                trials,
                longest,
                SkySpread.all(whole.stream().map(TrialSky::near).toList()),
                SkySpread.all(whole.stream().map(TrialSky::far).toList()),
                IntStream.range(0, result.cases().size())
                        .mapToObj(i -> differences(
                                result.cases().get(i), summary.cases().get(i), skies, trials, longest))
                        .toList());
    }

    /** The skies of the time that the best mode takes on 9 of 10 trials: what comes later decides little. */
    private static List<Optional<Difference>> differences(
            CaseTrials ofCase, CaseSummary summary, SkySource skies, int trials, double longest) {
        if (summary.pairs().isEmpty() || trials < Difference.FEWEST_TRIALS) {
            return summary.pairs().stream()
                    .map(pair -> Optional.<Difference>empty())
                    .toList();
        }
        double ninth = summary.best().ninthSeconds().value();
        double seconds = Math.min(longest, Math.max(SHORTEST_SECONDS, ninth));
        List<TrialSky> watched = watch(skies, trials, seconds);
        List<double[]> times = ofCase.modes().stream()
                .map(mode -> mode.rows().stream()
                        .limit(trials)
                        .mapToDouble(TrialRow::deliveredSeconds)
                        .toArray())
                .toList();
        return summary.pairs().stream()
                .map(pair -> Difference.of(
                        ofCase.direction(),
                        seconds,
                        watched,
                        times.get(index(ofCase, pair.first())),
                        times.get(index(ofCase, pair.second()))))
                .toList();
    }

    private static int index(CaseTrials trials, String mode) {
        return trials.modes().stream().map(it -> it.mode().name()).toList().indexOf(mode);
    }

    private static List<TrialSky> watch(SkySource skies, int trials, double seconds) {
        return LongStream.range(0, trials)
                .mapToObj(trial -> skies.skyOf(trial, seconds))
                .toList();
    }
}
