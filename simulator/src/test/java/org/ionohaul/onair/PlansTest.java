package org.ionohaul.onair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.statistics.SignTestStops;
import org.junit.jupiter.api.Test;

final class PlansTest {
    private static final int OVER_EVENINGS = 10;

    /** The first mode wins 3 of 4 rounds: what is worked out from rounds seen holds the exact chance in its range. */
    @Test
    void whatAPlanPromisesIsWhatItsTestDoes() throws ScenarioProblems {
        RunAnswer answer = FabricatedRuns.answer(400, 0, PlansTest::isWorkedOut, 250, 750);
        for (int power = 0; power < RunAnswer.POWERS.size(); power++) {
            List<Plan> plans = answer.plans().get(power);
            assertEquals(
                    plans.stream()
                            .sorted(Comparator.comparingDouble(Plan::airSeconds))
                            .toList(),
                    plans);
            double asked = RunAnswer.POWERS.get(power);
            Plan paired = first(plans, Plan.Way.PAIRED);
            double exact =
                    SignTestStops.atEnd(paired.runsEach(), 0.05).chances(0.75).first();
            assertTrue(paired.right().low() <= exact && exact <= paired.right().high(), paired + " but " + exact);
            assertTrue(paired.right().low() >= asked, paired::toString);
            assertTrue(paired.falseAlarm().value() <= 0.05, paired::toString);
            Plan stopping = first(plans, Plan.Way.STOPPING);
            SignTestStops.Chances chances =
                    SignTestStops.atSafeLead(stopping.runsEach(), 0.05).chances(0.75);
            assertTrue(stopping.right().low() <= chances.first()
                    && chances.first() <= stopping.right().high());
            // The share of 3 of 4 is known to 4 standard errors of 4,000 rounds, 0.03; rounds go by a fifth with it.
            assertEquals(chances.meanPairs(), stopping.meanRunsEach(), 0.2 * chances.meanPairs());
            assertTrue(stopping.airSeconds() < paired.airSeconds(), "stopping early saves air time");
        }
    }

    /**
     * Repeats whole computations, of few comparisons: the cheapest plan has the chance it promises, exactly worked out, in at
     * least 95 of 100, less 4 standard errors; it is chosen among several, each of which would fail in 2.5.
     */
    @Test
    void theCheapestPlanKeepsItsPromise() throws ScenarioProblems {
        int repeats = 100;
        int kept = 0;
        int planned = 0;
        for (int repeat = 0; repeat < repeats; repeat++) {
            List<Plan> plans =
                    FabricatedRuns.answer(25, repeat, PlansTest::isWorkedOut, 250, 750).plans().get(0).stream()
                            .filter(Plan::isWorkedOut)
                            .toList();
            if (!plans.isEmpty()) {
                Plan plan = plans.get(0);
                SignTestStops stops = plan.way() == Plan.Way.STOPPING
                        ? SignTestStops.atSafeLead(plan.runsEach(), 0.05)
                        : SignTestStops.atEnd(plan.runsEach(), 0.05);
                planned++;
                kept += stops.chances(0.75).first() >= 0.8 ? 1 : 0;
            }
        }
        assertTrue(planned > 0.9 * repeats, "planned " + planned);
        assertTrue(kept >= planned * 0.95 - 4 * Math.sqrt(planned * 0.95 * 0.05), "kept " + kept + " of " + planned);
    }

    private static boolean isWorkedOut(Design design) {
        return design.size() == 0 && design.runsEach() == 10 && design.order().isOverEvenings();
    }

    private static Plan first(List<Plan> plans, Plan.Way way) {
        return plans.stream()
                .filter(it -> it.order() == RunOrder.ROUND_AN_EVENING && it.way() == way)
                .findFirst()
                .orElseThrow();
    }

    /** Two runs of 250 and 750 s in the mean: a round of any order costs 1,000 s on the air, within 4 standard errors. */
    @Test
    void airTimeIsThatOfAllRuns() throws ScenarioProblems {
        RunAnswer answer = FabricatedRuns.answer(400, 0, PlansTest::isWorkedOut, 250, 750);
        Plan paired = first(answer.plans().get(0), Plan.Way.PAIRED);
        double error = Math.hypot(250, 750) / Math.sqrt(400 * OVER_EVENINGS);
        assertEquals(1000, paired.airSeconds() / paired.runsEach(), 4 * error);
        assertEquals(paired.runsEach(), paired.evenings());
    }

    @Test
    void wherePlansCantHelpThereIsNone() throws ScenarioProblems {
        RunAnswer alike = FabricatedRuns.answer(60, 300, 300);
        assertFalse(alike.findings().truth().isBetter());
        assertEquals(List.of(List.of(), List.of()), alike.plans());
        RunAnswer nearly = FabricatedRuns.answer(60, 300, 360);
        assertTrue(nearly.findings().truth().isBetter());
        assertEquals(List.of(List.of(), List.of()), nearly.plans(), "6 of 11 rounds: over 200 of them");
        assertTrue(new RunsText(nearly).lines().stream().anyMatch(it -> it.contains("no plan will do")));
    }
}
