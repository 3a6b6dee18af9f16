package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.ionohaul.channel.Congestion;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.link.FoldBack;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class SkyReaderTest {
    private static final String STATION =
            "name = 'A'\nstation = { hang = '20 ms', relay = '10 ms', recovery = '20 ms' }\n";
    private static final String OTHER_STATION = STATION.replace("'A'", "'B'");

    private final Path folder;
    private WrittenScenario scenario;

    SkyReaderTest(@TempDir Path folder) {
        this.folder = folder;
        this.scenario = WrittenScenario.in(folder);
    }

    @BeforeEach
    void startFromAPlainScenario() {
        scenario = WrittenScenario.in(folder);
    }

    @ParameterizedTest
    @EnumSource
    void everyConditionIsChosenByItsName(FadingCondition condition) throws ScenarioProblems {
        scenario = scenario.with("[sky]", "condition = '" + condition.key() + "'");
        assertEquals(condition.paths(), middle().paths());
    }

    @Test
    void aHeadingAloneFoldsPowerBackByTheUsualValuesAndNoneKeepsItUp() throws ScenarioProblems {
        assertEquals(FoldBack.NEVER, scenario.read().near().radio().foldBack());
        assertEquals(0, scenario.read().near().radio().busyDetectionNanos());
        Scenario small = scenario.with("[near.fold-back]", "").read();
        FoldBack usual = new FoldBack(30_000_000_000L, 3, 30_000_000_000L);
        assertEquals(usual, small.near().radio().foldBack());
        assertEquals(FoldBack.NEVER, small.far().radio().foldBack());
    }

    @Test
    void aMisspeltFoldBackIsToldTheNearestKey() {
        List<Problem> problems =
                scenario.with("[near.fold-back]", "afterr = '20 s'").problems();
        assertEquals(
                List.of("near.fold-back.afterr"),
                problems.stream().map(Problem::key).toList());
        assertTrue(problems.get(0).remedy().contains("after"), problems.get(0).remedy());
    }

    @Test
    void conditionsMayBeWrittenWithSpaces() throws ScenarioProblems {
        scenario = scenario.with("[sky]", "condition = 'Mid-latitude disturbed NVIS'");
        assertEquals(FadingCondition.MID_LATITUDE_DISTURBED_NVIS.paths(), middle().paths());
    }

    @Test
    void pathsMayBeWrittenOut() throws ScenarioProblems {
        scenario = scenario.with("[sky]", """
                path = [
                    { delay = "0 s", doppler-spread = "0.3 Hz" },
                    { delay = "2.5 ms", power = "-6 dB", doppler-shift = "-1 Hz", doppler-spread = "2 Hz" },
                ]
                """);
        assertEquals(
                List.of(new PropagationPath(0, 0, 0, 0.3), new PropagationPath(0.0025, -6, -1, 2)), middle().paths());
    }

    @ParameterizedTest
    @CsvSource({"2 ms", "0 ms .. 4 ms"})
    void pathsOutOfOrderAreRefusedWhereTheyStand(String second) {
        String rest = "\ndoppler-spread = '1 Hz'\n";
        scenario = scenario.with(
                "[sky]",
                "[[sky.path]]\ndelay = '5 ms'" + rest + "[[sky.path]]\ndelay = '" + second + "'" + rest
                        + "[[sky.path]]\ndelay = '" + second + "'" + rest);
        List<Problem> problems = scenario.problems();
        assertEquals(
                List.of("sky.path.2.delay"), problems.stream().map(Problem::key).toList());
        assertTrue(problems.get(0).line() > 1 && problems.get(0).remedy().startsWith("put the paths in order"));
    }

    @Test
    void slowVariationAndTrendAreOffUnlessStated() throws ScenarioProblems {
        assertEquals(SlowVariation.NONE, middle().slowVariation());
        assertEquals(Schedule.NONE, middle().trendDb());
        scenario = scenario.with(
                "[sky]",
                "condition='flat'\nslow-variation={deviation='2 dB', time-constant='1 min'}\n"
                        + "trend=[{at='18:10', rise='-4 dB'}, {at='30 min', rise='1 dB'}]");
        assertEquals(new SlowVariation(2, 60), middle().slowVariation());
        assertEquals(
                new Schedule(List.of(new Schedule.Point(600, -4), new Schedule.Point(1800, 1))), middle().trendDb());
    }

    @Test
    void congestionAndOwnInterferenceAddUp() throws ScenarioProblems {
        scenario = scenario.with("[near]", STATION + """
                snr = "3 dB"
                congestion = "busy evening"
                [[near.interference]]
                visits = "6 /h"
                visit = "3 min"
                over = "15 s"
                pause = "10 s"
                median = "3 dB"
                deviation = "8 dB"
                band-share = "40 %"
                """);
        List<Interference> heard = middle().near().interference();
        assertEquals(Congestion.BUSY_EVENING.populations(), heard.subList(0, 2));
        assertEquals(List.of(new Interference(6, 180, 15, 10, 3, 8, 0.4)), heard.subList(2, heard.size()));
    }

    /** S-units are 6 dB and S9 is -73 dBm (IARU Region 1 R.1). */
    @ParameterizedTest
    @CsvSource({"S7, S4, 18", "S9+10, S9, 10", "-97 dBm, S5, 0", "S5, -103 dBm, 6"})
    void signalAndNoiseMayBeMeterReadingsOrDbm(String signal, String noise, double snrDb) throws ScenarioProblems {
        scenario = scenario.with("[near]", STATION + "signal = '" + signal + "'\nnoise = '" + noise + "'\n");
        assertEquals(snrDb, middle().near().snrDb(), 1e-9);
    }

    /**
     * Free-space loss of ITU-R P.533 at 7.1 MHz over 500 km is 103.455 dB, so 100 W (50 dBm) arrive as -53.455 dBm less 12
     * dB losses less 2 x 3 dB antennas; residential noise of ITU-R P.372 is -90.31 dBm in 3 kHz.
     */
    @Test
    void theOtherStationsPowerAndANoiseCategoryMakeALinkBudget() throws ScenarioProblems {
        scenario = scenario.replacing("", "300 km", "500 km")
                .with("[sky]", "condition='flat'\nfrequency='7.1 MHz'\nlosses='12 dB'\n")
                .with("[near]", STATION + "noise-environment='residential'\nantenna-gain='-3 dBi'\n")
                .with("[far]", OTHER_STATION + "snr='5 dB'\npower='100 W'\nantenna-gain='-3 dBi'\n");
        assertEquals(-53.455 - 12 - 6 + 90.31, middle().near().snrDb(), 0.006);
        assertEquals(List.of("near.noise-environment"), scenario.read().sky().uncertainKeys());
        // P.372, residential: upper decile 10.6 dB above the median.
        assertEquals(-53.455 - 12 - 6 + 90.31 - 10.6, drawn(0.9).near().snrDb(), 0.006);
    }

    @Test
    void signalFromABudgetGoesWithNoiseFromAMeter() throws ScenarioProblems {
        scenario = scenario.replacing("", "300 km", "500 km")
                .with("[sky]", "condition='flat'\nfrequency='7.1 MHz'\n")
                .with("[near]", STATION + "noise='-100 dBm'\n")
                .with("[far]", OTHER_STATION + "snr='5 dB'\npower='100 W'\n");
        assertEquals(46.545, middle().near().snrDb(), 0.001);
    }

    @Test
    void eachEndMayStateItsLevelInOneWayOnly() {
        List<Problem> problems = scenario.with("[near]", STATION + "snr='3 dB'\nsignal='S7'\nnoise='S3'")
                .problems();
        assertEquals(List.of("near.snr"), problems.stream().map(Problem::key).toList());
    }

    @Test
    void uncertainInputsAreDrawnUnderTheirKeys() throws ScenarioProblems {
        scenario = scenario.with("[near]", STATION + "snr='10 dB .. 20 dB'\n").with("[sky]", """
                        path = [{ delay = "0 s", doppler-spread = "1 Hz .. 3 Hz" }]
                        trend = [{ at = "18:20 ± 5 min", rise = "2 dB" }]
                        """);
        SkyDescription sky = scenario.read().sky();
        assertEquals(List.of("near.snr", "sky.path.1.doppler-spread", "sky.trend.1.at"), sky.uncertainKeys());
        SkyConditions drawn = sky.conditions(key -> key.equals("near.snr") ? 0.25 : 0.5);
        assertEquals(12.5, drawn.near().snrDb(), 1e-9);
        assertEquals(2, drawn.dopplerSpreadHz(), 1e-9);
        assertEquals(1200, drawn.trendDb().points().get(0).atSeconds(), 1e-6);
    }

    @Test
    void timesDrawnInTheWrongOrderBecomeAStep() throws ScenarioProblems {
        scenario = scenario.with(
                "[sky]",
                "condition='flat'\ntrend=[{at='18:10 ± 10 min', rise='1 dB'}, " + "{at='18:12', rise='2 dB'}]");
        List<Schedule.Point> points = drawn(0.99).trendDb().points();
        assertTrue(points.get(0).atSeconds() > 720);
        assertTrue(points.get(1).atSeconds() > points.get(0).atSeconds());
    }

    @Test
    void aDistributionThatReachesImpossibleValuesIsRefused() {
        List<Problem> problems = scenario.with("[sky]", "[[sky.path]]\ndelay='0 s'\ndoppler-spread='1 Hz ± 0.4 Hz'")
                .problems();
        assertEquals(
                List.of("sky.path.1.doppler-spread"),
                problems.stream().map(Problem::key).toList());
        assertTrue(problems.get(0).remedy().contains("every value that can be drawn"));
    }

    private SkyConditions middle() throws ScenarioProblems {
        return drawn(0.5);
    }

    private SkyConditions drawn(double probability) throws ScenarioProblems {
        return scenario.read().sky().conditions(key -> probability);
    }
}
