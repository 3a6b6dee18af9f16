package org.ionohaul.report;

import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Race;
import org.ionohaul.analysis.Rerun;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;

/**
 * The race of a case for whoever shows it beside others.
 *
 * @param scenario what was simulated
 * @param summary what the case's trials come to
 * @param race how far they get over time
 */
public record ShownRace(Scenario scenario, CaseSummary summary, Race race) {
    /** How much of a trial's sky is shown at most. */
    private static final double LONGEST_SKY_SECONDS = 3600;

    /**
     * Returns the race of a case.
     *
     * @param result the study, with at least one trial done
     * @param summary what its trials come to
     * @param place of the case among the study's
     * @param rerun where its one trial is run again
     */
    public static ShownRace of(StudyResult result, StudySummary summary, int place, Rerun rerun) {
        Scenario scenario = result.scenario();
        CaseSummary shown = summary.cases().get(place);
        return new ShownRace(
                scenario,
                shown,
                Race.of(
                        result.cases().get(place),
                        shown.ranking().get(0),
                        Math.min(LONGEST_SKY_SECONDS, scenario.horizonSeconds()),
                        rerun));
    }

    /** Returns where the axis of time that suits it ends, in seconds after pressing send. */
    public double endSeconds() {
        return CaseScale.ofRace(summary, race).endSeconds();
    }

    /**
     * Returns its picture.
     *
     * @param id a name unique on the page
     * @param endSeconds where the axis of time ends, above 0
     * @param order the colours of its modes
     */
    public Chart chart(String id, double endSeconds, ModeOrder order) {
        return RaceChart.chart(id, scenario, summary, race, new TimeScale(endSeconds), order);
    }
}
