package org.ionohaul.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.ionohaul.analysis.Variation;
import org.ionohaul.grid.AlikeProblems;
import org.ionohaul.grid.CaseRow;
import org.ionohaul.grid.CaseTable;
import org.ionohaul.grid.CaseTableReader;
import org.ionohaul.grid.GridColumns;
import org.ionohaul.grid.GridCsv;
import org.ionohaul.grid.GridMap;
import org.ionohaul.grid.GridPage;
import org.ionohaul.grid.GridQuestion;
import org.ionohaul.grid.GridTally;
import org.ionohaul.grid.GridText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Spelling;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.LineStore;
import org.ionohaul.study.PrecisionGoal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Answers a table of cases. */
@Command(
        name = "grid",
        description = {
            "Answers many cases of one scenario, a row each: every hour of the day, every month, thirty places, five"
                    + " sizes. Out comes a table with a line for each row, transfer, direction and mode: chances,"
                    + " times, times to plan for, which modes may be best.",
            "",
            "The cases stand in a table (CSV) whose heads are keys of the scenario, such as near.snr, and labels, such as"
                    + " label.hour, or are all combinations of lists, --set near.snr=\"6 dB | 9 dB | 12 dB\". All rows"
                    + " meet the same skies as far as their keys agree.",
            "",
            "Writes a folder of results with grid.csv. Rows are kept as they are done: Ctrl-C, kill -9 or a power"
                    + " cut loses the rows at work and seconds; --resume goes on to the same table.",
            ""
        },
        mixinStandardHelpOptions = true)
final class GridCommand implements Callable<Integer> {
    private static final int MAP_COLUMNS = 2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Mixin
    private final Screen screen = new Screen();

    @Option(
            names = "--rows",
            paramLabel = "TABLE",
            description =
                    "The table of cases, as a spreadsheet writes it: a line of heads, a line a case. An empty cell"
                            + " leaves the key as in the file.")
    private Optional<Path> table = Optional.empty();

    @Option(
            names = "--map",
            paramLabel = "COLUMN,COLUMN",
            split = ",",
            description = "Prints the answers as maps: the values of the first column down, of the second across, such"
                    + " as --map label.month,label.hour. The page has such maps in any case where two columns tell all rows"
                    + " apart.")
    private List<String> map = new ArrayList<>();

    @Option(
            names = "--precision",
            paramLabel = "GOAL",
            description =
                    "Simulates each row until its answers are exact enough, such as \"P(deadline) within 5 points\","
                            + " or its verdicts sure, such as \"P(deadline) above or below 90 %% within 2 points\": few trials where"
                            + " a deadline is clearly kept or missed, many where it is close; at most as many as --trials says,"
                            + " else 100,000.",
            converter = PrecisionConverter.class)
    private Optional<PrecisionGoal> precision = Optional.empty();

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    @Mixin
    private final Resumption resumption = new Resumption();

    GridCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        int width = screen.width();
        Map<String, String> changes = new LinkedHashMap<>(choice.changes());
        CaseTable cases = cases(changes);
        List<Integer> mapped = mapped(cases);
        changes.putAll(simulation.changes());
        GridQuestion question =
                new GridQuestion(SourceFiles.DISK, choice.file(), changes, precision, simulation.mostTrials());
        Optional<List<Problem>> problems =
                simulation.inPool("Checking", cases.rows().size(), pool -> question.problems(cases, pool));
        if (problems.isEmpty()) {
            return nothingDone();
        }
        if (!problems.get().isEmpty()) {
            throw new ScenarioProblems(AlikeProblems.once(problems.get()));
        }
        Scenario first = question.scenarioOf(cases.rows().get(0));
        ResultFolder folder = out.folder(choice.folderName(first, Set.copyOf(cases.heads()), cases.name()));
        try (UnfinishedRun run = resumption.open(folder, fingerprint(cases, first, changes))) {
            LineStore lines = run.lines("rows");
            simulation.inPool("Rows", cases.rows().size(), pool -> {
                pool.run(cases.rows().size(), i -> question.answer(cases.rows().get(i), pool.isCancelled()), lines);
                return lines;
            });
            return finish(run, folder, cases, first, lines, mapped, width);
        }
    }

    private int nothingDone() {
        spec.commandLine().getErr().println("Interrupted before the first row was done; nothing was written.");
        return ExitCode.PARTIAL;
    }

    private int finish(
            UnfinishedRun run,
            ResultFolder folder,
            CaseTable cases,
            Scenario first,
            LineStore lines,
            List<Integer> mapped,
            int width)
            throws NotWritten {
        boolean isPartial = lines.trials() < cases.rows().size();
        if (lines.trials() == 0) {
            return nothingDone();
        }
        String heads = GridColumns.heads(cases.heads(), first);
        ResultFolder written = isPartial ? run.partial() : folder;
        List<ResultFolder.Text> files = new ArrayList<>();
        show(cases, first, heads, lines, mapped, width).ifPresent(files::add);
        files.add(new GridCsv(heads, lines));
        NotWritten.write(written, files);
        print(List.of("", "Written to " + written.path() + ": " + ResultFolder.names(files)));
        if (isPartial) {
            print(List.of("PARTIAL: interrupted after " + lines.trials() + " of "
                    + cases.rows().size() + " rows. Go on with the same command and --resume."));
            return ExitCode.PARTIAL;
        }
        run.finish();
        return ExitCode.DONE;
    }

    /** Prints what the rows come to, and returns the page with their maps, if there are two columns for them. */
    private Optional<ResultFolder.Text> show(
            CaseTable cases, Scenario first, String heads, LineStore lines, List<Integer> mapped, int width) {
        List<Integer> columns = mapped.isEmpty() ? cases.mapped() : mapped;
        try {
            List<GridMap> maps =
                    columns.isEmpty() ? List.of() : GridMap.of(cases, heads, lines, columns.get(0), columns.get(1));
            GridTally tally = GridTally.of(cases, heads, lines);
            print(new GridText(first, cases.heads(), tally, mapped.isEmpty() ? List.of() : maps, width).lines());
            return maps.isEmpty()
                    ? Optional.empty()
                    : Optional.of(GridPage.of(first, cases, columns, tally, maps, Provenance.programVersion()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the cases; what is varied for them is taken from the changes to all rows. */
    private CaseTable cases(Map<String, String> changes) throws ScenarioProblems {
        if (table.isPresent()) {
            CaseTable read = CaseTableReader.read(SourceFiles.DISK, table.get());
            read.heads().stream().filter(changes::containsKey).findFirst().ifPresent(key -> {
                throw wrong("--set " + key + ": the table says it row by row; leave one of them out.");
            });
            return read;
        }
        List<KeySweep> sweeps = new SweepReader(spec.commandLine(), changes).sweeps(Integer.MAX_VALUE);
        sweeps.forEach(it -> changes.remove(it.key()));
        return CaseTable.product(sweeps, Variation.plan(sweeps));
    }

    private List<Integer> mapped(CaseTable cases) {
        if (!map.isEmpty() && map.size() != MAP_COLUMNS) {
            throw wrong("--map takes two columns, such as --map label.month,label.hour");
        }
        return map.stream()
                .map(String::strip)
                .map(column -> place(cases, column))
                .toList();
    }

    private int place(CaseTable cases, String column) {
        int place = cases.heads().indexOf(column);
        if (place < 0) {
            throw wrong("--map: there is no column \"" + column + "\"\n    " + Spelling.advice(column, cases.heads()));
        }
        return place;
    }

    private String fingerprint(CaseTable cases, Scenario first, Map<String, String> changes) {
        String rows = cases.rows().stream()
                .map(CaseRow::cells)
                .map(List::toString)
                .collect(Collectors.joining("\n", cases.heads().toString(), ""));
        return String.join(
                "|",
                StudyFingerprint.of(choice.provenance(), first.seed(), changes),
                Integer.toString(first.trials()),
                precision + " " + simulation.mostTrials(),
                new InputFile(cases.name(), rows).sha256());
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private void print(List<String> lines) {
        lines.forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().flush();
    }
}
