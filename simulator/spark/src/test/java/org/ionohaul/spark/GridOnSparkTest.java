package org.ionohaul.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.ionohaul.grid.GridColumns;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Grids on Spark in this very process, beside the program on one machine. */
final class GridOnSparkTest {
    private static final String ROWS =
            "label.place,far.snr\n\"Osier Weir, east\",14 dB\nMill,2 dB\n# a remark\n\nBridge,\nFord,-20 dB\n";
    private static final String[] QUESTION = {"--trials", "6", "--set", "modes=[\"brisk-comb\", \"steady-wagon\"]"};

    private static final SparkSession SPARK = SparkSession.builder()
            .master("local[2]")
            .config("spark.ui.enabled", false)
            .config("spark.driver.bindAddress", "127.0.0.1")
            .config("spark.driver.host", "127.0.0.1")
            .getOrCreate();

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private static Path folder = Path.of("");

    private static Path table = Path.of("");
    private static String expected = "";

    @BeforeAll
    static void answerOnOneMachine() throws IOException, InterruptedException {
        table = Files.writeString(folder.resolve("places.csv"), ROWS);
        expected = ProgramRun.onOneMachine(folder, table, QUESTION);
    }

    @AfterAll
    static void stop() {
        SPARK.stop();
    }

    private int run(String... arguments) {
        return GridOnSpark.commandLine(SPARK)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(Stream.of(new String[] {ProgramRun.SCENARIO.toString()}, arguments, QUESTION)
                        .flatMap(Arrays::stream)
                        .toArray(String[]::new));
    }

    @Test
    @DisplayName("parts of CSV, one after the other, are the bytes of the program's table")
    void sameBytes() throws IOException {
        Path answers = folder.resolve("csv");
        assertEquals(0, run("--rows", table.toString(), "--out", answers.toString(), "--tasks", "3"), err::toString);
        assertEquals(1 + 4 * 2 * 2 * 2, expected.lines().count());
        assertEquals(expected, ProgramRun.parts(answers));
    }

    @Test
    @DisplayName("a Parquet table of two files gives the same answers, as typed columns of Parquet")
    void parquetInAndOut() throws IOException {
        Path cases = folder.resolve("cases");
        SPARK.read()
                .option("header", true)
                .option("comment", "#")
                .csv(table.toString())
                .repartition(2)
                .write()
                .parquet(cases.toString());
        Path answers = folder.resolve("parquet");
        assertEquals(
                0, run("--rows", cases.toString(), "--out", answers.toString(), "--format", "parquet"), err::toString);

        List<Row> rows = SPARK.read().parquet(answers.toString()).collectAsList();
        assertEquals(
                DataTypes.DoubleType,
                rows.get(0).schema().apply("safe_9_of_10_s").dataType());
        assertEquals(
                DataTypes.BooleanType, rows.get(0).schema().apply("may_be_best").dataType());
        // The rows' numbers are those of the Parquet table, in which they stand in another order.
        assertEquals(
                expected.lines()
                        .skip(1)
                        .map(line -> withoutNumber(GridColumns.cells(line)))
                        .sorted()
                        .toList(),
                rows.stream()
                        .map(row -> withoutNumber(IntStream.range(0, row.length())
                                .mapToObj(i -> row.isNullAt(i) ? "" : String.valueOf(row.get(i)))
                                .toList()))
                        .sorted()
                        .toList());
    }

    private static String withoutNumber(List<String> cells) {
        return String.join("|", cells.subList(1, cells.size()));
    }

    @Test
    @DisplayName("what is wrong in rows is told with its place before anything is answered")
    void wrongRowsAreTold() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.csv"), "label.hour,far.snr\n08,9 dB\n\"09\",loud\n10,\n");
        Path answers = folder.resolve("none");
        assertEquals(2, run("--rows", wrong.toString(), "--out", answers.toString()));
        assertTrue(err.toString().startsWith(wrong + ":3:6: far.snr: "), err::toString);
        assertFalse(Files.exists(answers));
    }

    @Test
    @DisplayName("a table that is not there is told as such")
    void noTable() {
        Path missing = folder.resolve("missing.csv");
        assertEquals(
                2,
                run(
                        "--rows",
                        missing.toString(),
                        "--out",
                        folder.resolve("none").toString()));
        assertTrue(err.toString().startsWith(missing + ": there is no such file"), err::toString);
    }
}
