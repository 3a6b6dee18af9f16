package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.ionohaul.rendering.Cell;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.trial.ModeBench;
import org.ionohaul.trial.ModeCard;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.TrialSkies;
import org.junit.jupiter.api.Test;

/** What a data rate needs is told twice, on a mode's card and beside a sky: one number, on one scale. */
final class SteadyNeedsAgreeTest {
    private static final Path DEMO = Path.of("..", "scenarios", "river-watch.toml");

    @Test
    void theCardOfAModeAndTheSkyTellOneNeed() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO);
        List<List<Cell>> beside = SkyTables.needs(SkyView.of(scenario, 0, new TrialSkies(scenario).sky(0), 60))
                .rows();
        int row = 0;
        for (Mode mode : scenario.modes()) {
            ModeCard card = new ModeBench(mode).card();
            String sheet = String.join("\n", new ModeSheet(card).lines());
            for (ModeCard.DataRate dataRate : card.dataRates()) {
                String need = beside.get(row++).get(1).text();
                assertTrue(
                        sheet.lines()
                                .anyMatch(it -> it.startsWith("  " + dataRate.number() + " ") && it.endsWith(need)),
                        need + " of data rate " + dataRate.number() + " in\n" + sheet);
                // The card's own curve on a flat path, by the signal's mean power.
                assertEquals(
                        dataRate.carrierNeedDb(),
                        dataRate.paths().get(0).tenthLostDb() + mode.emission().crestFactorDb(),
                        1e-9);
            }
        }
        assertEquals(beside.size(), row);
    }
}
