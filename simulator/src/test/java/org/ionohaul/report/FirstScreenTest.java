package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ionohaul.analysis.Findings;
import org.ionohaul.rendering.StyledLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a study prints first. */
final class FirstScreenTest {
    private static List<String> lines(Findings findings, int width) {
        return new FirstScreen(findings.result(), findings.summary(), width)
                .lines().stream().map(StyledLine::text).toList();
    }

    private static String text(Findings findings) {
        return String.join(" ", lines(findings, 200)).replaceAll(" +", " ");
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 61, 80, 120, 200})
    void noLineIsLongerThanTheTerminalIsWide(int width) {
        for (int trials : new int[] {40, 100}) {
            Findings findings = FabricatedStudy.findings(trials);
            lines(findings, width).forEach(it -> assertTrue(it.length() <= width, it));
            new TextReport(findings, width).details().forEach(it -> assertTrue(it.length() <= width, it));
        }
    }

    /** Tough takes 200 + 5 i s: 21 of 100 within 300 s, all within 900 s; Quick 30 and 90: nine to none, and none to ten. */
    @Test
    void eachPlaceNamesTheModeWithItsChance() {
        List<String> lines = lines(FabricatedStudy.findings(FabricatedStudy.TRIALS), 120);
        int head = lines.indexOf(lines.stream()
                .filter(it -> it.contains("within 15 min"))
                .findFirst()
                .orElseThrow());
        assertEquals("plan for within 5 min within 15 min", words(lines.get(head)));
        assertEquals("to Flood Desk Tough Quick Tough", words(lines.get(head + 2)));
        // 0.025 to the power of 1/100 is 0.964; Clopper and Pearson's interval for 30 of 100 is 0.2124 to 0.3998.
        assertEquals("12 min 30 %, at least 21 % 100 %, at least 96 %", words(lines.get(head + 3)));
    }

    private static String words(String line) {
        return line.strip().replaceAll(" +", " ");
    }

    @Test
    void withTooFewTrialsForAPlanTheGridSaysHowManyAreNeeded() {
        assertTrue(text(FabricatedStudy.findings(20)).contains("open: 36 trials are needed"));
    }

    @Test
    void anInterruptedStudySaysSoBeforeAnyNumber() {
        assertTrue(lines(FabricatedStudy.findings(40), 80)
                .get(1)
                .startsWith("PARTIAL: interrupted after 40 of 100 trials."));
    }

    /** The grid, summary.json and the verdict are one finding. */
    @Test
    void theGridSaysWhatTheSummarySays() throws IOException {
        for (int trials : new int[] {40, 100}) {
            Findings findings = FabricatedStudy.findings(trials);
            StringWriter json = new StringWriter();
            new SummaryJson(findings).writeTo(json);
            JsonNode cases = new JsonMapper().readTree(json.toString()).get("cases");
            AnswerTable table = AnswerTable.of(findings.result(), findings.summary());
            List<AnswerTable.Row> rows =
                    table.blocks().stream().flatMap(it -> it.rows().stream()).toList();
            assertEquals(cases.size(), rows.size());
            for (int i = 0; i < rows.size(); i++) {
                JsonNode answer = cases.get(i).get("answer");
                assertEquals(i + 1, rows.get(i).number());
                assertEquals(
                        title(cases.get(i).get("best_first").get(0)),
                        rows.get(i).answers().get(0).modes().get(0));
                for (int k = 0; k < answer.get("by_deadline").size(); k++) {
                    JsonNode place = answer.get("by_deadline").get(k);
                    AnswerTable.Answer shown = rows.get(i).answers().get(k + 1);
                    JsonNode leaders = cases.get(i)
                            .get("deadline_leaders")
                            .get(k)
                            .get("leaders")
                            .get("modes");
                    assertEquals(place.get("modes"), leaders);
                    assertEquals(
                            leaders.valueStream().map(FirstScreenTest::title).collect(Collectors.toList()),
                            shown.modes());
                    assertEquals(
                            String.format(Locale.ROOT, "at least %d %%", (int)
                                    (100 * place.get("safe_share").asDouble())),
                            shown.safe());
                }
            }
        }
    }

    private static String title(JsonNode name) {
        return CaseWords.capital(name.asString());
    }

    @Test
    void eachCaseHasOneSentence() {
        String text = text(FabricatedStudy.findings(FabricatedStudy.TRIALS));
        assertTrue(
                text.contains("Photo to Flood Desk: which of Tough and Quick is best depends on the deadline."), text);
        assertTrue(text.contains("Photo to Weir Cottage: which of"), text);
    }

    @Test
    void modesAreColouredByTheirPlaceAmongTheNames() {
        Findings findings = FabricatedStudy.findings(FabricatedStudy.TRIALS);
        List<StyledLine.Piece> pieces = new FirstScreen(findings.result(), findings.summary(), 80)
                .lines().stream().flatMap(it -> it.pieces().stream()).toList();
        assertTrue(pieces.stream().anyMatch(it -> it.text().equals("Tough")));
        pieces.stream()
                .filter(it -> it.text().equals("Tough"))
                .forEach(it -> assertEquals(1, it.mode().orElseThrow()));
        pieces.stream()
                .filter(it -> it.text().equals("Quick"))
                .forEach(it -> assertEquals(0, it.mode().orElseThrow()));
    }
}
