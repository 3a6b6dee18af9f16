package org.ionohaul.foresight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.ionohaul.foresight.Guess.Span;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.WrongValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a learner types, and how it is remembered. */
final class AnswerReaderTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final List<Mode> modes;

    @TempDir
    private Path folder = Path.of("");

    AnswerReaderTest() throws ScenarioProblems {
        modes = ScenarioReader.read(Path.of("../scenarios/orchard-net.toml"), Map.of())
                .modes();
    }

    @Test
    void rangesAreReadAsPeopleWriteThem() throws WrongValue {
        Span span = new Span(240, 540);
        for (String text : List.of("4 9", "4-9", "4..9", "4 to 9", " 4 min - 9 min ", "240 s .. 9 min", "4 – 9")) {
            assertEquals(span, AnswerReader.span(text), text);
        }
        assertEquals(new Span(1200, NEVER), AnswerReader.span("20 never"));
        assertEquals(new Span(1200, NEVER), AnswerReader.span("20 to Never"));
        assertEquals(new Span(NEVER, NEVER), AnswerReader.span("never never"));
        assertEquals(new Span(270, 540), AnswerReader.span("4.5 9"));
        assertEquals(new Span(300, 300), AnswerReader.span("5 5"));
        for (String text : List.of("", "5", "9 4", "never 4", "soon later", "4 9 12", "-4 9")) {
            assertThrows(WrongValue.class, () -> AnswerReader.span(text), text);
        }
    }

    @Test
    void winnersAreNamedByNumberOrNameWithAChance() throws WrongValue {
        assertEquals(new AnswerReader.Winner(0, 0.8), AnswerReader.winner("1 80", modes));
        assertEquals(new AnswerReader.Winner(1, 0.55), AnswerReader.winner(" patient-climber, 55 %", modes));
        assertEquals(new AnswerReader.Winner(1, 1), AnswerReader.winner("Patient climber 100", modes));
        assertEquals(new AnswerReader.Winner(0, 0.5), AnswerReader.winner("1 50", modes));
        for (String text : List.of("1", "80", "3 80", "1 40", "1 101", "patient-climer 60", "")) {
            assertThrows(WrongValue.class, () -> AnswerReader.winner(text, modes), text);
        }
    }

    @Test
    void roundsComeBackAsTheyWereAndALineThatWasCutOffIsLeftOut() throws IOException {
        Played round = new Played(
                "invented",
                7,
                3,
                20_000,
                3600,
                "one",
                0.8,
                Played.Verdict.UNDECIDED,
                List.of(
                        new Played.Run("one", new Span(60, NEVER), NEVER, new Span(100, NEVER)),
                        new Played.Run("two", new Span(1, 2.5), 77.25, new Span(70, 80))));
        RoundsFile file = new RoundsFile(folder.resolve("new").resolve("foreseen.jsonl"));
        assertEquals(List.of(), file.all());
        file.add(round);
        Files.writeString(file.path(), "{\"source\":\"inven\n[]\n{}\n", StandardOpenOption.APPEND);
        file.add(round);
        assertEquals(List.of(round, round), file.all());
        assertTrue(Files.readString(file.path()).contains("\"delivered_s\":77.25"));
    }
}
