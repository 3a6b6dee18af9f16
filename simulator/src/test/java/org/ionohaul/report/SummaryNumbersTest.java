package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Comparison;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.ProvenLead;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeComparison;
import org.ionohaul.analysis.SizePoint;
import org.ionohaul.scenario.Direction;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The summary holds the findings, each in its place, and nothing that its schema does not promise there. */
final class SummaryNumbersTest {
    private static final JsonMapper JSON = new JsonMapper();

    private final Findings findings = FabricatedStudy.findings(FabricatedStudy.TRIALS);

    private JsonNode summary() throws IOException {
        StringWriter text = new StringWriter();
        new SummaryJson(findings).writeTo(text);
        return JSON.readTree(text.toString());
    }

    private static void assertEstimate(Estimate expected, JsonNode found) {
        assertNumber(expected.value(), found.get("value"));
        assertNumber(expected.low(), found.get("low"));
        assertNumber(expected.high(), found.get("high"));
    }

    private static void assertNumber(double expected, JsonNode found) {
        assertEquals(Double.isFinite(expected) ? JSON.valueToTree(expected) : JSON.nullNode(), found);
    }

    @Test
    void everyModeHasItsOwnNumbers() throws IOException {
        JsonNode cases = summary().get("cases");
        assertEquals(2, cases.size());
        for (int i = 0; i < cases.size(); i++) {
            CaseSummary expected = findings.summary().cases().get(i);
            assertEquals(2, cases.get(i).get("modes").size());
            for (int j = 0; j < expected.modes().size(); j++) {
                assertMode(expected.modes().get(j), cases.get(i).get("modes").get(j));
            }
        }
    }

    private static void assertMode(ModeSummary expected, JsonNode found) {
        assertEquals(expected.mode().name(), found.get("mode").asString());
        assertEstimate(expected.delivered(), found.get("delivered_share"));
        List<Estimate> quantiles = List.of(expected.tenthSeconds(), expected.medianSeconds(), expected.ninthSeconds());
        for (int i = 0; i < quantiles.size(); i++) {
            assertEstimate(
                    quantiles.get(i), found.get("completion_quantiles").get(i).get("completion_s"));
        }
        assertEquals(2, found.get("deadlines").size());
        for (int i = 0; i < 2; i++) {
            JsonNode deadline = found.get("deadlines").get(i);
            assertNumber(expected.deadlines().get(i).deadlineSeconds(), deadline.get("deadline_s"));
            assertEquals(
                    expected.deadlines().get(i).count().hits(),
                    deadline.get("kept").asInt());
            assertEstimate(expected.deadlines().get(i).chance(), deadline.get("chance"));
        }
        expected.causes()
                .forEach(it -> assertNumber(
                        it.meanSeconds(),
                        found.get("mean_time_budget_s").get(it.cause().name().toLowerCase(Locale.ROOT))));
    }

    @Test
    void everyPairIsToldWithItsCountsAndLead() throws IOException {
        JsonNode found = summary().get("cases").get(0).get("comparisons").get(0);
        Comparison expected = findings.summary().cases().get(0).comparisons().get(0);
        assertEquals(expected.first(), found.get("first").asString());
        assertEquals(expected.firstBefore().hits(), found.get("first_before").asInt());
        assertEquals(expected.secondBefore().hits(), found.get("second_before").asInt());
        assertEquals(expected.neither().hits(), found.get("neither").asInt());
        assertEquals(
                expected.neither().total(),
                found.get("first_before").asInt()
                        + found.get("second_before").asInt()
                        + found.get("at_once").asInt()
                        + found.get("neither").asInt());
        assertEstimate(expected.medianLeadSeconds(), found.get("median_lead_s"));
    }

    @Test
    void everySizeHasItsOwnNumbers() throws IOException {
        JsonNode sizes = summary().get("sizes");
        assertEquals(findings.sizes().size(), sizes.size());
        for (int i = 0; i < sizes.size(); i++) {
            SizeAnswers expected = findings.sizes().get(i);
            JsonNode curve = sizes.get(i).get("curves").get(1);
            assertEstimate(
                    expected.curves().get(1).pace().firstByteSeconds(),
                    curve.get("pace").get("first_byte_s"));
            assertEquals(
                    expected.curves().get(1).points().size(),
                    curve.get("points").size());
            for (int j = 0; j < curve.get("points").size(); j++) {
                SizePoint point = expected.curves().get(1).points().get(j);
                JsonNode found = curve.get("points").get(j);
                assertEquals(point.bytes(), found.get("size_bytes").asLong());
                assertEquals(point.isSent(), found.get("sent").asBoolean());
                assertEstimate(point.tenthSeconds(), found.get("tenth_s"));
                assertEstimate(point.medianSeconds(), found.get("median_s"));
                assertEstimate(point.ninthSeconds(), found.get("ninth_s"));
                assertEstimate(point.reached(), found.get("reached_share"));
            }
        }
    }

    @Test
    void whereModesChangePlacesIsToldTheRightWayRound() {
        Estimate bytes = new Estimate(11_000, 8000, 15_000);
        SizeComparison pair = new SizeComparison(
                "hare",
                "tortoise",
                List.of(),
                List.of(new ProvenLead("hare", 2000, 5000), new ProvenLead("tortoise", 20_000, 50_000)),
                List.of(new Crossing("hare", "tortoise", bytes)));
        PublishedSizes told = PublishedSizes.of(new SizeAnswers(Direction.DOWNLOAD, 60, List.of(), List.of(pair)));
        assertEquals(List.of(new PublishedSizes.Crossing("hare", "tortoise", bytes)), told.crossings());
        assertEquals(
                List.of(
                        new PublishedSizes.Ahead("hare", 2000, 5000),
                        new PublishedSizes.Ahead("tortoise", 20_000, 50_000)),
                told.pairs().get(0).ahead());
        assertEquals(Direction.DOWNLOAD, told.direction());
        assertEquals(60, told.trials());
    }

    @Test
    void whatIsWrittenWhereIsWhatTheSchemaPromisesThere() throws IOException {
        JsonNode schema = JSON.readTree(Files.readString(Path.of("../results/summary.schema.json")));
        Set<String> told = new TreeSet<>();
        compare("", summary(), schema, schema, told);
        assertTrue(told.contains("/cases/modes/plans/fewest_trials"), told::toString);
        assertTrue(told.size() > 100, told::toString);
    }

    /** Walks a value beside its schema: in each place the same names, all of them required. */
    private static void compare(String path, JsonNode value, JsonNode schema, JsonNode root, Set<String> told) {
        JsonNode meant = resolved(schema, root);
        if (value.isArray()) {
            value.forEach(it -> compare(path, it, meant.get("items"), root, told));
        } else if (value.isObject()) {
            Set<String> names = new TreeSet<>(value.propertyNames());
            assertEquals(new TreeSet<>(meant.path("properties").propertyNames()), names, path);
            names.forEach(it -> told.add(path + "/" + it));
            names.forEach(it -> compare(
                    path + "/" + it, value.get(it), meant.get("properties").get(it), root, told));
        }
    }

    private static JsonNode resolved(JsonNode schema, JsonNode root) {
        if (schema.has("$ref")) {
            return resolved(root.at(schema.get("$ref").asString().substring(1)), root);
        }
        for (String choice : List.of("anyOf", "oneOf")) {
            for (JsonNode each : schema.path(choice)) {
                if (!each.path("type").asString("").equals("null")) {
                    return resolved(each, root);
                }
            }
        }
        return schema;
    }
}
