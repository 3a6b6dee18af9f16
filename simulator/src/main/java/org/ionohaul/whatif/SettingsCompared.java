package org.ionohaul.whatif;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.PointsDone;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.PlannedPoint;
import org.ionohaul.study.SameCases;
import org.ionohaul.study.StudyResult;

/** What changes from one setting of a scenario to another, trial by trial under the same skies. */
public final class SettingsCompared {
    private static final PlannedPoint UNNAMED = new PlannedPoint(Map.of());

    private SettingsCompared() {}

    /**
     * Returns a sentence a case: what the change does to the mode that is best after it.
     *
     * @param before the study of one setting, with at least one trial done
     * @param after that of the other
     * @param keysChanged the keys in which they differ
     * @param change what is changed, such as {@code with the second setting}
     * @return empty if the two have not the same modes, ways, deadlines or seed
     */
    public static List<String> sentences(
            StudyResult before, StudyResult after, Collection<String> keysChanged, String change) {
        int trials = Math.min(before.trialsDone(), after.trialsDone());
        StudyResult first = before.first(trials);
        StudyResult second = after.first(trials);
        Scenario scenario = second.scenario();
        if (!SameCases.of(first.scenario()).equals(SameCases.of(scenario))) {
            return List.of();
        }
        List<CasePoint> points = PointsDone.noneOf(2)
                .and(UNNAMED, first)
                .and(UNNAMED, second)
                .points()
                .get(1)
                .cases();
        List<CaseName> names = CaseName.all(scenario, keysChanged);
        return IntStream.range(0, points.size())
                .mapToObj(i -> EffectWords.sentence(
                        names.get(i).heading() + ": " + change,
                        scenario.modes().get(points.get(i).best()).title(),
                        points.get(i).modes().get(points.get(i).best())))
                .toList();
    }
}
