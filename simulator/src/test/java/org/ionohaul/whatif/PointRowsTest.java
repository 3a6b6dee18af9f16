package org.ionohaul.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.study.KeySweep;
import org.junit.jupiter.api.Test;

/** "Quick" is 40 s later with each point run, "Tough" never is: the tables must say just that. */
final class PointRowsTest {
    private static List<CSVRecord> read(ResultFolder.Text table) throws IOException {
        StringWriter text = new StringWriter();
        table.writeTo(text);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text.toString()))
                .getRecords();
    }

    private static List<String> of(List<CSVRecord> rows, String mode, String direction, String head) {
        return rows.stream()
                .filter(it -> it.get("mode").equals(mode) && it.get("direction").equals(direction))
                .map(it -> it.get(head))
                .toList();
    }

    @Test
    void eachValueOfAKeyHasALineForEachCaseAndModeWithItsOwnTimes() throws IOException {
        List<CSVRecord> rows = read(new VariationCsv(FabricatedVariation.oneKey(3)));
        assertEquals(3 * 2 * 2, rows.size(), "values x directions x modes");
        assertEquals(List.of("6 dB", "9 dB", "12 dB"), of(rows, "quick", "upload", "near.snr"));
        assertEquals(List.of("500.0", "540.0", "580.0"), of(rows, "quick", "upload", "median_s"));
        assertEquals(List.of("0.0", "40.0", "80.0"), of(rows, "quick", "upload", "median_change_s"));
        assertEquals(List.of("0", "95", "95"), of(rows, "quick", "upload", "slower_trials"));
        assertEquals(List.of("0.0", "0.0", "0.0"), of(rows, "tough", "upload", "median_change_s"));
    }

    @Test
    void twoKeysStandBesideEachOtherTheLastRunningFastest() throws IOException {
        List<CSVRecord> rows = read(new VariationCsv(FabricatedVariation.twoKeys(6)));
        assertEquals(
                List.of("6 dB", "9 dB", "12 dB", "6 dB", "9 dB", "12 dB"), of(rows, "quick", "download", "near.snr"));
        assertEquals(
                List.of("0.0", "40.0", "80.0", "120.0", "160.0", "200.0"),
                of(rows, "quick", "upload", "median_change_s"));
    }

    /** Points run: all in the middle, then each key's low and high value alone. */
    @Test
    void aTornadoTellsEachKeysTwoEndsAgainstTheMiddle() throws IOException {
        List<CSVRecord> rows = read(new TornadoCsv(FabricatedVariation.tornado()));
        assertEquals("", of(rows, "quick", "upload", "key").get(0));
        assertEquals("0.0", of(rows, "quick", "upload", "median_change_s").get(0));
        CSVRecord lowSnr = rows.stream()
                .filter(it -> it.get("key").equals("near.snr")
                        && it.get("value").equals("6 dB")
                        && it.get("mode").equals("quick"))
                .findFirst()
                .orElseThrow();
        assertEquals("40.0", lowSnr.get("median_change_s"));
    }

    /** One case "Tough" alone is best, one it can't be told from "Quick", one in which nothing arrives. */
    @Test
    void whoMayBeBestIsInTheRowsOfThoseWhoMayAndTheMarginInThatOfTheBest() throws IOException {
        KeySweep sweep = new KeySweep("near.snr", List.of("3 dB", "6 dB", "9 dB"));
        List<CSVRecord> rows = read(new VariationCsv(InventedPoints.variation(
                List.of(sweep), List.of(InventedPoints.clear(1), InventedPoints.open(), InventedPoints.nothing()))));
        assertEquals(List.of("false", "true", "true"), of(rows, "quick", "upload", "is_best"));
        assertEquals(List.of("true", "false", "false"), of(rows, "tough", "upload", "is_best"));
        assertEquals(List.of("true", "false", "false"), of(rows, "tough", "upload", "is_clear"));
        assertEquals(List.of("false", "false", "false"), of(rows, "quick", "upload", "is_clear"));
        assertEquals(List.of("false", "true", "true"), of(rows, "quick", "upload", "may_be_best"));
        assertEquals(List.of("true", "true", "true"), of(rows, "tough", "upload", "may_be_best"));
        assertEquals(List.of("", "0.031", "0.031"), of(rows, "quick", "upload", "alike_within_share"));
        assertEquals(List.of("", "29.5", ""), of(rows, "tough", "upload", "alike_within_s"));
        assertEquals(List.of("", "tough", "tough"), of(rows, "quick", "upload", "next_mode"));
        assertEquals(List.of("quick", "", ""), of(rows, "tough", "upload", "next_mode"));
        assertEquals(List.of("0.69", "", ""), of(rows, "tough", "upload", "best_first_share"));
        assertEquals(List.of("0.59", "", ""), of(rows, "tough", "upload", "best_first_share_low"));
        assertEquals(List.of("100.0", "100.0", ""), of(rows, "quick", "upload", "median_s"));
        assertEquals(List.of("300.0", "300.0", "300.0"), of(rows, "quick", "upload", "deadline_1_s"));
        assertEquals(List.of("0.6", "0.6", "0.0"), of(rows, "quick", "upload", "deadline_1_share"));
        assertEquals(List.of("0.0", "0.0", "0.0"), of(rows, "quick", "upload", "deadline_1_change"));
    }
}
