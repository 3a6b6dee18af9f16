package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Headlines, sentences, tables and {@code summary.json} of a study tell one story, over studies of every kind. */
final class OneAnswerTest {
    private static final List<String> MODES = List.of("ant", "bee", "cat");

    private final UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(1311L);

    /** Some modes are early and break off, some are late and sure, some are alike; with one, two or no deadlines. */
    @Test
    void studiesMadeUpAreToldInOneVoice() throws IOException {
        List<List<Double>> deadlines = List.of(List.of(), List.of(150.0), List.of(120.0, 240.0));
        Map<Verdict.Standing, Integer> met = new EnumMap<>(Verdict.Standing.class);
        for (int study = 0; study < 150; study++) {
            Findings findings = FabricatedStudy.findings(madeUp(deadlines.get(study % 3), 30 + 60 * (study % 4)));
            assertOneVoice(findings);
            met.merge(findings.summary().cases().get(0).verdict().standing(), 1, Integer::sum);
        }
        assertTrue(met.keySet().containsAll(List.of(Verdict.Standing.values()).subList(1, 5)), met::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-watch", "noon-hop", "polar-hut", "unknown-evening"})
    void theShippedScenariosAreToldInOneVoice(String name) throws IOException, ScenarioProblems {
        Path file = Path.of("..", "scenarios", name + ".toml");
        Scenario scenario = ScenarioReader.read(file, Map.of("trials", "30"));
        assertOneVoice(Findings.of(StudyRunner.of(scenario).run(), FabricatedStudy.provenance()));
    }

    private StudyResult madeUp(List<Double> deadlines, int trials) {
        List<List<SessionResult>> sessions = new ArrayList<>();
        for (int mode = 0; mode < MODES.size(); mode++) {
            double middle = 80 + 20 * random.nextInt(6);
            double spread = 20 + 60 * random.nextInt(3);
            double fails = 0.15 * random.nextInt(3) * random.nextInt(2);
            sessions.add(IntStream.range(0, trials)
                    .mapToObj(i -> random.nextDouble() < fails
                            ? InventedStudy.gaveUp(100)
                            : InventedStudy.delivered(Math.rint(middle + spread * random.nextDouble())))
                    .toList());
        }
        return InventedStudy.study(deadlines, MODES, sessions);
    }

    private static void assertOneVoice(Findings findings) throws IOException {
        String text = oneLine(new TextReport(findings).lines());
        JsonNode json = JsonMapper.shared().readTree(PublishedFormatsTest.summary(findings));
        for (int i = 0; i < findings.summary().cases().size(); i++) {
            CaseSummary summary = findings.summary().cases().get(i);
            JsonNode told = json.get("cases").get(i);
            String answer = CaseWords.answer(summary);
            String verdict = VerdictWords.sentences(summary);
            assertTrue(text.contains(answer) && text.contains(verdict), text);
            if (summary.verdict().standing() != Verdict.Standing.ALONE) {
                assertNames(summary, told, answer, verdict);
            }
            assertTimes(summary, told, answer);
            assertChances(summary, told);
            assertPair(summary, told);
        }
    }

    /** Whoever the headline names is the best of summary.json, and never as if alone where it does not stand alone. */
    private static void assertNames(CaseSummary summary, JsonNode told, String answer, String verdict) {
        String both = answer + " / " + verdict + " / " + told.get("verdict");
        List<String> titles = new ArrayList<>();
        told.get("leaders").get("modes").forEach(name -> titles.add(title(summary, name.asString())));
        assertTrue(answer.contains(titles.get(0)), both);
        assertEquals(titles.get(0), title(summary, told.get("best_first").get(0).asString()));
        boolean isClear = told.get("verdict").get("clear").asBoolean();
        assertEquals(isClear, titles.size() == 1, both);
        assertEquals(isClear, verdict.contains(" beats ") || verdict.contains(" is usually through first"), both);
        if (!isClear) {
            titles.forEach(it -> assertTrue(answer.contains(it) && verdict.contains(it), both));
        }
        String usuallyFirst = told.get("verdict").get("usually_first").asString();
        assertEquals(
                isClear && usuallyFirst.equals("next"),
                verdict.contains("Yet " + summary.next().mode().title() + " is usually the sooner."),
                both);
        assertEquals(told.get("verdict").get("sentence").asString(), verdict);
    }

    /** What is announced is the bound of summary.json, rounded up by a quarter at most from half a minute on. */
    private static void assertTimes(CaseSummary summary, JsonNode told, String answer) {
        JsonNode plan = mode(summary, told).get("plans").get(1).get("completion_s");
        assertEquals(!plan.isNull(), answer.startsWith("Plan for "), answer);
        if (!plan.isNull()) {
            double announced = seconds(answer);
            assertTrue(announced >= plan.asDouble(), answer + plan);
            assertTrue(announced <= 1.25 * Math.max(40, plan.asDouble()), answer + plan);
        }
    }

    private static double seconds(String answer) {
        String[] words = answer.substring("Plan for ".length()).split(" ", -1);
        double first = Double.parseDouble(words[0]) * (words[1].equals("min") ? 60 : 1);
        return words[3].equals("s") ? first + Double.parseDouble(words[2]) : first;
    }

    /** Sentences, table and summary.json have one number for each deadline. */
    private static void assertChances(CaseSummary summary, JsonNode told) {
        List<List<Cell>> rows = CaseTables.sure(summary.modes()).rows();
        String sentences = String.join(" ", CaseWords.deadlines(summary));
        for (int i = 0; i < summary.transfer().deadlinesSeconds().size(); i++) {
            for (int mode = 0; mode < summary.modes().size(); mode++) {
                JsonNode deadline = told.get("modes").get(mode).get("deadlines").get(i);
                assertEquals(
                        OddsText.percent(deadline.get("chance").get("value").asDouble()),
                        rows.get(mode).get(1 + i).text());
                int late = 0;
                for (JsonNode count : deadline.get("late_because")) {
                    late += count.asInt();
                }
                assertEquals(
                        told.get("modes").get(mode).get("trials").asInt(),
                        late + deadline.get("kept").asInt());
            }
            JsonNode leader = told.get("deadline_leaders")
                    .get(i)
                    .get("leaders")
                    .get("modes")
                    .get(0);
            assertTrue(
                    sentences.contains("with " + title(summary, leader.asString()))
                            || sentences.contains("none of the simulated trials"),
                    sentences);
        }
    }

    private static void assertPair(CaseSummary summary, JsonNode told) {
        CaseWords.pair(summary).ifPresent(sentence -> {
            JsonNode pair = told.get("comparisons").get(0);
            double trials = summary.best().trials();
            assertTrue(
                    sentence.startsWith("Under the same sky "
                            + title(summary, pair.get("first").asString()) + " is first on "
                            + OddsText.percent(pair.get("first_before").asInt() / trials)),
                    sentence);
            assertTrue(
                    sentence.contains(title(summary, pair.get("second").asString()) + " on "
                            + OddsText.percent(pair.get("second_before").asInt() / trials)),
                    sentence);
            JsonNode lead = pair.get("median_lead_s").get("value");
            assertEquals(
                    !lead.isNull(),
                    sentence.contains("Its median lead is " + (lead.isNull() ? "" : TimeText.signed(lead.asDouble()))),
                    sentence);
        });
    }

    private static JsonNode mode(CaseSummary summary, JsonNode told) {
        return told.get("modes").get(summary.ranking().get(0));
    }

    private static String title(CaseSummary summary, String name) {
        return summary.modes().stream()
                .filter(it -> it.mode().name().equals(name))
                .map(it -> it.mode().title())
                .findFirst()
                .orElseThrow();
    }

    /** Without the line breaks of a terminal. */
    private static String oneLine(List<String> lines) {
        return String.join(" ", lines).replaceAll(" +", " ");
    }
}
