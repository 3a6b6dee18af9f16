package org.ionohaul.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is written of a log beside the simulation. */
final class PlacementFormatsTest {
    private static final Path SCENARIO = Path.of("../scenarios/orchard-net.toml");
    private static final Path LOG = Path.of("../scenarios/orchard-net.csv");
    private static final Provenance PROVENANCE = new Provenance("test", List.of(), Map.of("far.snr", "12 dB"));

    static LogPlacement placement(int trials) throws ScenarioProblems {
        FieldLog log = FieldLogReader.read(SourceFiles.DISK, LOG, List.of("brisk-comb", "patient-climber"));
        return LogPlacement.of(
                        ScenarioReader.understand(
                                SourceFiles.DISK, SCENARIO, Map.of("trials", Integer.toString(trials))),
                        log,
                        TrialPool.of(2))
                .orElseThrow();
    }

    @Test
    void theJsonKeepsToItsSchemaAndSaysWhatTheLogSays() throws IOException, ScenarioProblems {
        PublishedSchema schema = PublishedSchema.named("place.schema.json");
        String json = PublishedSchema.written(new PlacementJson(placement(30), PROVENANCE));
        schema.assertHolds(json);
        schema.assertRefuses(json.replace("\"rank_low\"", "\"lowest_rank\""));
        JsonNode runs = new JsonMapper().readTree(json).get("runs");
        assertEquals(8, runs.size());
        // Run 5 of the log: broken off after 12 min to the nearest minute, 14 kB through.
        JsonNode fifth = runs.get(4);
        assertEquals("broken_off", fifth.get("outcome").asString());
        assertEquals(14_000, fifth.get("through_bytes").asLong());
        assertEquals(690, fifth.get("session").get("low_s").asDouble());
        assertTrue(fifth.get("delivered").isNull());
        assertTrue(fifth.get("is_read_used").asBoolean());
        // Run 6 delivered but never closed: what was timed is when it was delivered.
        assertEquals("delivered_not_closed", runs.get(5).get("outcome").asString());
        assertEquals(240, runs.get(5).get("delivered").get("seconds").asDouble());
        assertEquals(19, runs.get(0).get("twentieths_s").size());
    }

    @Test
    void thePageHasTwentyDotsARunAndAMarkWhereEachWasLoggedAndNothingThatNeedsAScript()
            throws IOException, ScenarioProblems {
        LogPlacement placement = placement(30);
        String page = PublishedSchema.written(PlacementPage.of(placement, PROVENANCE));
        for (String kind : List.of("at350", "at520")) {
            String svg = PublishedSchema.picture(page, "runs", kind);
            assertEquals(8 * 20, svg.split("<circle", -1).length - 1, kind);
            assertTrue(svg.contains("off at 12 min"), "as logged");
            String ranks = PublishedSchema.picture(page, "ranks", kind);
            assertEquals(8, ranks.split("<rect class=\"open\"", -1).length - 1, "a row a run");
            assertTrue(ranks.contains("run 8"), ranks);
        }
        assertTrue(page.contains("aria-label=\"Run 1, brisk-comb, 15 kB up 18:30"), "the picture says its finding");
    }

    private static RankSpan point(double rank) {
        return new RankSpan(rank - 1e-9, rank + 1e-9);
    }

    /**
     * Ranks of independent runs under a right model are uniform, and the i-th lowest of n is of the beta distribution
     * (i, n + 1 - i) (H. A. David and H. N. Nagaraja, "Order Statistics", 3rd ed. 2003, section 2.1).
     */
    @Test
    void usualPlacesAreThoseOfOrderStatisticsAndHoldTheNextLogAsOftenAsTheySay() {
        int runs = 5;
        int trials = 4000;
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20_311L);
        List<List<RankSpan>> simulated = IntStream.range(0, runs)
                .mapToObj(run -> IntStream.range(0, trials)
                        .mapToObj(trial -> point(random.nextDouble()))
                        .toList())
                .toList();
        List<UsualPlace> usual = UsualPlace.of(simulated);
        for (int i = 1; i <= runs; i++) {
            BetaDistribution theory = BetaDistribution.of(i, runs + 1.0 - i);
            assertQuantile(theory, 0.025, usual.get(i - 1).low(), trials);
            assertQuantile(theory, 0.975, usual.get(i - 1).high(), trials);
        }
        int logs = 2000;
        for (int place = 0; place < runs; place++) {
            int its = place;
            long held = IntStream.range(0, logs)
                    .filter(log -> {
                        double[] ranks = random.doubles(runs).sorted().toArray();
                        return ranks[its] >= usual.get(its).low()
                                && ranks[its] <= usual.get(its).high();
                    })
                    .count();
            // Four standard errors of a share of 2000 logs, and of what 4000 trials leave open at both ends.
            double tolerance = 4 * Math.sqrt(0.95 * 0.05 / logs + 2 * 0.025 * 0.975 / trials);
            assertEquals(0.95, (double) held / logs, tolerance, "place " + place);
        }
    }

    /** The probability below an empirical quantile is off by its binomial standard error; four of them are allowed. */
    private static void assertQuantile(BetaDistribution theory, double share, double value, int trials) {
        assertEquals(share, theory.cumulativeProbability(value), 4 * Math.sqrt(share * (1 - share) / trials));
    }
}
