package org.ionohaul.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of cases as spreadsheets write them, and as they slip. */
final class CaseTableReaderTest {
    private static CaseTable read(String text) throws ScenarioProblems {
        return CaseTableReader.read(SourceFiles.of(Map.of("hours.csv", text)), Path.of("hours.csv"));
    }

    @Test
    @DisplayName("labels change nothing, an empty cell leaves the key as it is in the file")
    void cellsBecomeChanges() throws ScenarioProblems {
        CaseTable table = read("# invented\nlabel.hour;near.snr;far.snr\n08; 12 dB ;\n20;9 dB;4,5 dB\n");

        assertEquals("hours", table.name());
        assertEquals(List.of("label.hour", "near.snr", "far.snr"), table.heads());
        assertEquals(Map.of("near.snr", "12 dB"), table.rows().get(0).changes());
        assertEquals(
                Map.of("near.snr", "9 dB", "far.snr", "4,5 dB"),
                table.rows().get(1).changes());
        assertEquals(List.of("08", "12 dB", ""), table.rows().get(0).cells());
        assertEquals(4, table.rows().get(1).line());
    }

    @Test
    @DisplayName("a table of a hundred thousand rows is read, though a scenario may not be that long")
    void longTable(@TempDir Path folder) throws IOException, ScenarioProblems {
        Path file = Files.writeString(
                folder.resolve("long.csv"),
                "label.place,far.snr\n"
                        + IntStream.range(0, 100_000)
                                .mapToObj(i -> "invented place " + i + "," + i % 30 + " dB\n")
                                .collect(Collectors.joining()));
        assertTrue(Files.size(file) > SourceFiles.MOST_BYTES);
        List<CaseRow> rows = CaseTableReader.read(SourceFiles.DISK, file).rows();
        assertEquals(100_000, rows.size());
        assertEquals(100_001, rows.get(99_999).line());
        assertEquals(Map.of("far.snr", "9 dB"), rows.get(99_999).changes());
    }

    @Test
    @DisplayName("a table that another jar reads is told as such, before a byte of it is taken for text")
    void parquet() {
        ScenarioProblems wrong = assertThrows(
                ScenarioProblems.class, () -> CaseTableReader.read(SourceFiles.of(Map.of()), Path.of("cases.parquet")));
        assertTrue(wrong.problems().get(0).remedy().contains("spark-submit"), wrong::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "near.snr | hours.csv:1:1: holds no case",
                "near.snr,near.snr/1 dB,2 dB | hours.csv:1:10: near.snr: stands twice",
                "seed,near.snr/1,2 dB | hours.csv:1:1: seed: can't differ from row to row",
                "label.hour/08 | hours.csv:1:1: no column names a key",
                "near.snr/1 dB,2 | hours.csv:2:6: has more cells than there are heads",
                "near.snr,/1 dB,2 | hours.csv:1:10: a column has no head",
            })
    void slipsAreToldWithTheirPlace(String text, String told) {
        ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> read(text.replace('/', '\n')));
        assertTrue(
                problems.told().get(0).startsWith(told), () -> problems.told().toString());
    }
}
