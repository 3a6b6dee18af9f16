package org.ionohaul.spark;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.ionohaul.grid.CaseRow;
import org.ionohaul.grid.CaseTable;
import org.ionohaul.grid.CaseTableReader;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;

/**
 * A table of cases that need not fit into one machine's memory.
 *
 * @param file where it stands, as the user named it
 * @param heads what stands over its columns
 * @param rows its rows
 */
record CaseRows(String file, List<String> heads, JavaRDD<CaseRow> rows) {
    /** The heads take the first line, also of a table that has no lines. */
    private static final int FIRST_LINE = 2;

    /** Copies the list. */
    CaseRows {
        heads = List.copyOf(heads);
    }

    /**
     * Reads a table: Parquet, a file of that ending or a folder of them, whose rows stay on the cluster; otherwise CSV as
     * the program reads it, whose rows pass through the driver's memory.
     *
     * @param table its path, in any file system that the cluster knows
     * @throws ScenarioProblems if it can't be used; what its cells say is not looked at
     * @throws IOException if it can't be read
     */
    static CaseRows read(SparkSession spark, String table) throws ScenarioProblems, IOException {
        Path path = new Path(table);
        FileSystem files = path.getFileSystem(spark.sparkContext().hadoopConfiguration());
        try {
            boolean isParquet =
                    table.endsWith(".parquet") || files.getFileStatus(path).isDirectory();
            return isParquet ? ofParquet(spark, table) : ofText(spark, files, path, table);
        } catch (FileNotFoundException e) {
            throw new ScenarioProblems(List.of(new Problem(table, 0, 0, "", "there is no such file", "")));
        }
    }

    private static CaseRows ofText(SparkSession spark, FileSystem files, Path path, String table)
            throws ScenarioProblems, IOException {
        try (InputStream in = files.open(path)) {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(in.readAllBytes()))
                    .toString();
            CaseTable read = CaseTableReader.read(
                    SourceFiles.of(Map.of(path.getName(), text)), java.nio.file.Path.of(path.getName()));
            JavaSparkContext context = JavaSparkContext.fromSparkContext(spark.sparkContext());
            return new CaseRows(table, read.heads(), context.parallelize(read.rows()));
        }
    }

    /** Rows are numbered by file and place in it, as they would stand in one text. */
    private static CaseRows ofParquet(SparkSession spark, String table) throws ScenarioProblems {
        Dataset<Row> read = spark.read().parquet(table);
        List<String> heads = List.of(read.columns());
        CaseTableReader.checkHeads(table, heads);
        JavaRDD<CaseRow> rows = read.orderBy(functions.col("_metadata.file_path"), functions.col("_metadata.row_index"))
                .javaRDD()
                .zipWithIndex()
                .map(it -> CaseTable.of(Math.toIntExact(it._2() + FIRST_LINE), heads, cells(it._1())));
        return new CaseRows(table, heads, rows);
    }

    private static List<String> cells(Row row) {
        return IntStream.range(0, row.length())
                .mapToObj(i -> row.isNullAt(i) ? "" : String.valueOf(row.get(i)))
                .toList();
    }
}
