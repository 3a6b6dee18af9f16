package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.TrialSkies;

/**
 * Everything that is to be reported of a study.
 *
 * @param result its trials, at least one
 * @param summary what they come to
 * @param spreads for each case, for each mode, why its trials differ; empty if every input is known, or of too few trials
 * @param sizes answers for files of every size, one entry a direction; empty if they were not asked for
 * @param rates how fast each mode goes at each SNR; empty if that was not asked for
 * @param besidesAreCutShort whether trials besides the study's own (sizes, rates, rare misses) were interrupted
 * @param skies what its skies were, and on which of them its modes differ most
 * @param sky one of its trials' skies
 * @param races how far each case gets over time, an entry a case
 * @param provenance where it all comes from
 */
public record Findings(
        StudyResult result,
        StudySummary summary,
        List<List<Optional<SpreadSplit>>> spreads,
        List<SizeAnswers> sizes,
        Optional<NetRates> rates,
        boolean besidesAreCutShort,
        SkyAnswers skies,
        SkyView sky,
        List<Race> races,
        Provenance provenance) {
    /** How much of a trial's sky is shown at most. */
    private static final double LONGEST_SKY_SECONDS = 3600;

    /** Copies the lists. */
    public Findings {
        spreads = spreads.stream().map(List::copyOf).toList();
        sizes = List.copyOf(sizes);
        races = List.copyOf(races);
    }

    /** Works out what the trials of a study, at least one, come to. */
    public static Findings of(StudyResult result, Provenance provenance) {
        return of(result, StudySummary.of(result), Besides.NOTHING, provenance);
    }

    /**
     * Works out what the trials of a study come to.
     *
     * @param result its trials, at least one
     * @param summary their summary
     * @param besides what else was simulated
     * @param provenance where it all comes from
     */
    public static Findings of(StudyResult result, StudySummary summary, Besides besides, Provenance provenance) {
        Scenario scenario = result.scenario();
        TrialSkies skies = new TrialSkies(scenario);
        double skySeconds = Math.min(LONGEST_SKY_SECONDS, scenario.horizonSeconds());
        return new Findings(
                result,
                summary,
                spreads(result),
                besides.sizes()
                        .filter(it -> it.trialsDone() > 0)
                        .map(SizeAnswers::of)
                        .orElse(List.of()),
                besides.rates(),
                besides.isCutShort(),
                SkyAnswers.of(result, summary, skies::watched),
                SkyView.of(scenario, 0, skies.sky(0), skySeconds),
                races(result, summary, skySeconds, Rerun.of(scenario)),
                provenance);
    }

    /** Returns why the trials of each mode of each case differ. */
    public static List<List<Optional<SpreadSplit>>> spreads(StudyResult result) {
        return result.cases().stream()
                .map(it -> it.modes().stream()
                        .map(mode ->
                                SpreadSplit.of(result.scenario(), it.transfer().deadlinesSeconds(), mode))
                        .toList())
                .toList();
    }

    /** Returns how far each case gets over time. */
    public static List<Race> races(StudyResult result, StudySummary summary, double skySeconds, Rerun rerun) {
        return IntStream.range(0, result.cases().size())
                .mapToObj(i -> Race.of(
                        result.cases().get(i), summary.cases().get(i).ranking().get(0), skySeconds, rerun))
                .toList();
    }

    /** Returns these findings of a study whose own trials are whole, and whose other trials were interrupted. */
    public Findings cutShort() {
        return new Findings(result, summary, spreads, sizes, rates, true, skies, sky, races, provenance);
    }

    /** Returns whether anything was interrupted before it was complete. */
    public boolean isPartial() {
        return result.isPartial() || besidesAreCutShort;
    }
}
