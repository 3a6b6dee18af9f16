package org.ionohaul.spark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.apache.spark.sql.SparkSession;
import org.ionohaul.cli.PrecisionConverter;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.PrecisionGoal;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers a table of cases on a cluster. */
@Command(
        name = "spark-submit ionohaul-spark.jar",
        description = {
            "Answers many cases of one scenario on a cluster, as ionohaul grid does on one machine: for each row the same bytes.",
            ""
        },
        mixinStandardHelpOptions = true)
public final class GridOnSpark implements Callable<Integer> {
    private static final int BAD_INPUT = 2;
    private static final int MOST_TRIALS = 100_000;
    private static final int PIECES_A_CORE = 16;

    private enum Format {
        CSV,
        PARQUET
    }

    private final SparkSession spark;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "FILE",
            description = "The scenario file, on the disk of the driver; its modes lie in the folder modes beside it.")
    private Path file = Path.of("");

    @Option(
            names = "--rows",
            paramLabel = "TABLE",
            required = true,
            description =
                    "The table of cases, in any file system of the cluster: CSV, or Parquet (a file of that ending or"
                            + " a folder). Columns are keys of the scenario and labels, as for ionohaul grid.")
    private String table = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            required = true,
            description = "Where the answers go, in any file system of the cluster; must not exist.")
    private String out = "";

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description =
                    "How answers are written: ${COMPLETION-CANDIDATES}; CSV if not given. Parts of CSV make the table of"
                            + " ionohaul grid when laid one after the other.")
    private Format format = Format.CSV;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Takes this value instead of the file's in all rows; may be repeated.")
    private Map<String, String> settings = new LinkedHashMap<>();

    @Option(names = "--trials", paramLabel = "N", description = "How many trials a row, instead of what the file says.")
    private Optional<Integer> trials = Optional.empty();

    @Option(names = "--seed", paramLabel = "N", description = "Seed of all chance, instead of what the file says.")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--precision",
            paramLabel = "GOAL",
            description = "Simulates each row until its answers are exact enough, as for ionohaul grid; at most as many"
                    + " trials as --trials says, else 100,000.",
            converter = PrecisionConverter.class)
    private Optional<PrecisionGoal> precision = Optional.empty();

    @Option(
            names = "--tasks",
            paramLabel = "N",
            description = "Into how many tasks of equal predicted cost to cut the table; 16 a core if not given.")
    private Optional<Integer> tasks = Optional.empty();

    GridOnSpark(SparkSession spark) {
        this.spark = spark;
    }

    /**
     * Runs it and ends the driver.
     *
     * @param arguments the command line
     * @throws IOException if Spark can't be closed
     */
    public static void main(String[] arguments) throws IOException {
        int exitCode;
        try (SparkSession spark =
                SparkSession.builder().appName("ionohaul grid").getOrCreate()) {
            exitCode = commandLine(spark).execute(arguments);
        }
        System.exit(exitCode);
    }

    /** Returns the program, ready to execute. */
    static CommandLine commandLine(SparkSession spark) {
        return new CommandLine(new GridOnSpark(spark)).setCaseInsensitiveEnumValuesAllowed(true);
    }

    @Override
    public Integer call() throws IOException {
        requireCount("--trials", trials);
        requireCount("--tasks", tasks);
        try {
            Map<String, String> changes = new LinkedHashMap<>(settings);
            trials.ifPresent(it -> changes.put("trials", it.toString()));
            seed.ifPresent(it -> changes.put("seed", it.toString()));
            ShippedQuestion question = ShippedQuestion.of(file, changes, precision, trials.orElse(MOST_TRIALS));
            int pieces =
                    tasks.orElseGet(() -> PIECES_A_CORE * spark.sparkContext().defaultParallelism());
            ClusterGrid grid = ClusterGrid.plan(spark, question, CaseRows.read(spark, table), pieces);
            if (format == Format.CSV) {
                grid.writeCsv(out);
            } else {
                grid.writeParquet(out);
            }
            spec.commandLine().getOut().println("Written to " + out + " by " + grid.pieces() + " tasks.");
            return 0;
        } catch (ScenarioProblems e) {
            e.told().forEach(spec.commandLine().getErr()::println);
            return BAD_INPUT;
        }
    }

    private void requireCount(String option, Optional<Integer> count) {
        if (count.orElse(1) < 1) {
            throw new ParameterException(spec.commandLine(), option + " must be at least 1: " + count.orElse(1));
        }
    }
}
