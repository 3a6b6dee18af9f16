package org.ionohaul.spark;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DataTypes;
import org.ionohaul.grid.AlikeProblems;
import org.ionohaul.grid.CaseRow;
import org.ionohaul.grid.CaseTable;
import org.ionohaul.grid.GridColumns;
import org.ionohaul.grid.GridQuestion;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.jspecify.annotations.Nullable;
import scala.Tuple2;

/**
 * A grid as a cluster answers it. The answer to a row depends on the question and the row alone, so that a task may be tried
 * again anywhere, and the bytes are those of one machine.
 */
final class ClusterGrid {
    /** Spark ends a line with a line feed alone; the program as RFC 4180 says. */
    private static final String LINE_END = "\r";

    private final SparkSession spark;
    private final CaseRows table;
    private final Scenario sample;
    private final JavaRDD<String> answers;

    private ClusterGrid(SparkSession spark, CaseRows table, Scenario sample, JavaRDD<String> answers) {
        this.spark = spark;
        this.table = table;
        this.sample = sample;
        this.answers = answers;
    }

    /**
     * Looks at every row and shares the rows out; none is answered before all are found right.
     *
     * @param question what is asked of every row
     * @param table the rows
     * @param pieces how many tasks there may be, 1 or more
     * @throws ScenarioProblems if rows can't be simulated, with what is wrong in each
     */
    static ClusterGrid plan(SparkSession spark, ShippedQuestion question, CaseRows table, int pieces)
            throws ScenarioProblems {
        CaseRow first = table.rows().first();
        EqualCostPieces shares = shares(scans(question, table, first), pieces);
        JavaRDD<String> answers = table.rows()
                .mapToPair(row -> new Tuple2<>(row.line(), row))
                .repartitionAndSortWithinPartitions(shares)
                .values()
                .mapPartitions(rows -> answers(question.question(), rows));
        return new ClusterGrid(spark, table, question.question().scenarioOf(first), answers);
    }

    private static Iterator<String> answers(GridQuestion question, Iterator<CaseRow> rows) {
        Iterable<CaseRow> each = () -> rows;
        return StreamSupport.stream(each.spliterator(), false)
                .flatMap(row -> question.answer(row, () -> false).stream())
                .iterator();
    }

    private static List<RowScan> scans(ShippedQuestion question, CaseRows table, CaseRow first) {
        String file = table.file();
        List<String> heads = table.heads();
        return table.rows()
                .mapPartitions(rows -> {
                    List<CaseRow> some = new ArrayList<>(List.of(first));
                    rows.forEachRemaining(some::add);
                    return List.of(RowScan.of(question.question(), new CaseTable(file, heads, some)))
                            .iterator();
                })
                .collect();
    }

    private static EqualCostPieces shares(List<RowScan> scans, int pieces) throws ScenarioProblems {
        List<Problem> problems = scans.stream()
                .flatMap(it -> it.problems().stream())
                .distinct()
                .sorted()
                .toList();
        if (!problems.isEmpty()) {
            throw new ScenarioProblems(AlikeProblems.once(problems));
        }
        return EqualCostPieces.of(
                scans.stream().flatMapToInt(RowScan::lines).toArray(),
                scans.stream().flatMapToDouble(RowScan::costs).toArray(),
                pieces);
    }

    /** Returns how many tasks answer it. */
    int pieces() {
        return answers.getNumPartitions();
    }

    /** Writes parts of a table that, one after the other, are the bytes that the program writes on one machine. */
    void writeCsv(String folder) {
        JavaSparkContext.fromSparkContext(spark.sparkContext())
                .parallelize(List.of(GridColumns.heads(table.heads(), sample)), 1)
                .union(answers)
                .map(line -> line + LINE_END)
                .saveAsTextFile(folder);
    }

    /** Writes the same as a table of typed columns; what was not reached is null. */
    void writeParquet(String folder) {
        List<GridColumns.Column> columns = GridColumns.columns(table.heads(), sample);
        List<GridColumns.Kind> kinds =
                columns.stream().map(GridColumns.Column::kind).toList();
        spark.createDataFrame(
                        answers.map(line -> row(kinds, GridColumns.cells(line))),
                        DataTypes.createStructType(columns.stream()
                                .map(it -> DataTypes.createStructField(it.head(), type(it.kind()), true))
                                .toList()))
                .write()
                .parquet(folder);
    }

    private static DataType type(GridColumns.Kind kind) {
        return switch (kind) {
            case TEXT -> DataTypes.StringType;
            case WHOLE -> DataTypes.LongType;
            case NUMBER -> DataTypes.DoubleType;
            case FLAG -> DataTypes.BooleanType;
        };
    }

    private static Row row(List<GridColumns.Kind> kinds, List<String> cells) {
        return RowFactory.create(IntStream.range(0, cells.size())
                .mapToObj(i -> value(kinds.get(i), cells.get(i)))
                .toArray());
    }

    private static @Nullable Object value(GridColumns.Kind kind, String cell) {
        if (kind == GridColumns.Kind.TEXT) {
            return cell;
        }
        if (cell.isEmpty()) {
            return null;
        }
        return switch (kind) {
            case WHOLE -> Long.valueOf(cell);
            case NUMBER -> Double.valueOf(cell);
            default -> Boolean.valueOf(cell);
        };
    }
}
