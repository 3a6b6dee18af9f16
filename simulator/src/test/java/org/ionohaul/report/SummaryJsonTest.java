package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

final class SummaryJsonTest {
    @TempDir
    private Path folder = Path.of("");

    private Path written(int trials) throws IOException {
        Path file = folder.resolve("summary.json");
        new SummaryJson(FabricatedStudy.findings(trials)).writeTo(file);
        return file;
    }

    private String at(String pointer) throws IOException {
        return at(written(FabricatedStudy.TRIALS), pointer);
    }

    private static String at(Path file, String pointer) throws IOException {
        JsonNode found = new JsonMapper().readTree(file).at(pointer);
        assertFalse(found.isMissingNode(), pointer);
        return found.asString("null");
    }

    @Test
    void itSaysWhatItIsAndWhereItComesFrom() throws IOException {
        assertEquals("ionohaul-summary", at("/format"));
        assertEquals("2", at("/format_version"));
        assertEquals("1.2.3-test", at("/program_version"));
        assertEquals("4711", at("/seed"));
        assertEquals("weir.toml", at("/inputs/0/name"));
        assertEquals("title = \"<Weir> & dam\"\n", at("/inputs/0/text"));
    }

    @Test
    void inputsCarryTheirSha256() throws IOException {
        // FIPS 180-4's well-known digest of the empty message.
        assertEquals("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", at("/inputs/1/sha256"));
    }

    @Test
    void quantilesStandWithTheirIntervals() throws IOException {
        assertEquals("0.5", at("/cases/0/modes/0/completion_quantiles/1/probability"));
        assertEquals("500.0", at("/cases/0/modes/0/completion_quantiles/1/completion_s/value"));
        assertTrue(Double.parseDouble(at("/cases/0/modes/0/completion_quantiles/1/completion_s/low")) < 500);
    }

    @Test
    void whatHasNoLimitIsNull() throws IOException {
        // 5 of 100 never arrive: the upper end of the interval for the 90th lies among them.
        assertEquals("null", at("/cases/0/modes/0/completion_quantiles/2/completion_s/high"));
    }

    /** Of 20, 19.9 ... 10.1 dB the 50th smallest. */
    @Test
    void theSkiesOfAllTrialsAreSummedUp() throws IOException {
        assertEquals("100", at("/sky/trials"));
        assertEquals(15.0, Double.parseDouble(at("/sky/far/middle_sinr_db/median")), 1e-9);
        assertEquals("receiver", at("/cases/0/comparisons/0/differ_by/at"));
    }

    @Test
    void eachFileHasItsTimes() throws IOException {
        assertEquals("gauge.jpg", at("/cases/0/modes/0/file_completions/0/file"));
        assertEquals("250.0", at("/cases/0/modes/0/file_completions/0/completion_quantiles/1/completion_s/value"));
        assertEquals("500.0", at("/cases/0/modes/0/file_completions/1/completion_quantiles/1/completion_s/value"));
    }

    @Test
    void whereMoreArrivesNoCauseIsNamed() throws IOException {
        Path file = folder.resolve("summary.json");
        new SummaryJson(FabricatedStudy.findings(FabricatedStudy.result(100, 80))).writeTo(file);
        assertEquals("more_arrives", at(file, "/cases/0/verdict/reason"));
        assertEquals("best", at(file, "/cases/0/verdict/more_arrives"));
        assertEquals("null", at(file, "/cases/0/verdict/cause"));
        assertEquals("null", at(file, "/cases/0/verdict/saved_s"));
        assertEquals("20", at(file, "/cases/0/modes/0/failures/links_lost"));
    }

    @Test
    void aPartialStudySaysSo() throws IOException {
        assertEquals("true", at(written(40), "/partial"));
        assertEquals("40", at(written(40), "/trials_done"));
    }
}
