package org.ionohaul.grid;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.PrecisionGoal;
import org.ionohaul.study.RowStore;
import org.ionohaul.study.SameCases;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.ionohaul.trial.Trials;

/**
 * What is asked of every row of a table. The answer to a row depends on this and the row alone: on no other row, no thread and
 * no machine.
 *
 * @param files where scenario and modes come from
 * @param scenario the scenario's file
 * @param changes what is changed in it for all rows, by key
 * @param goal how exact answers must be; empty for the scenario's number of trials
 * @param mostTrials where to stop short of the goal, 1 or more
 */
public record GridQuestion(
        SourceFiles files, Path scenario, Map<String, String> changes, Optional<PrecisionGoal> goal, int mostTrials) {
    /** Copies the map, and sees to it that all rows come from the same texts. */
    public GridQuestion {
        files = files.remembered();
        changes = Map.copyOf(changes);
    }

    /**
     * Checks that every row can be simulated.
     *
     * @throws ScenarioProblems if some can't, with what is wrong in each and where it stands in the table
     */
    public void check(CaseTable table) throws ScenarioProblems {
        List<Problem> problems = problems(table, TrialPool.of(1)).orElseThrow();
        if (!problems.isEmpty()) {
            throw new ScenarioProblems(problems);
        }
    }

    /**
     * Looks for rows that can't be simulated, many at a time.
     *
     * @param pool looks at a row a trial
     * @return what is wrong in each and where it stands in the table, none if all can be simulated; empty if the pool was
     *     cancelled before
     */
    public Optional<List<Problem>> problems(CaseTable table, TrialPool pool) {
        Optional<SameCases> first = first(table);
        List<List<Problem>> problems =
                pool.run(table.rows().size(), i -> problems(table, table.rows().get(i), first));
        return problems.size() < table.rows().size()
                ? Optional.empty()
                : Optional.of(problems.stream()
                        .flatMap(List::stream)
                        .sorted()
                        .distinct()
                        .toList());
    }

    /** Returns what all rows must be like: as the first that is in order; what is wrong in those before it is told later. */
    private Optional<SameCases> first(CaseTable table) {
        return table.rows().stream().flatMap(it -> cases(it).stream()).findFirst();
    }

    private Optional<SameCases> cases(CaseRow row) {
        try {
            return Optional.of(SameCases.of(scenarioOf(row)));
        } catch (ScenarioProblems e) {
            return Optional.empty();
        }
    }

    private List<Problem> problems(CaseTable table, CaseRow row, Optional<SameCases> first) {
        try {
            SameCases cases = SameCases.of(scenarioOf(row));
            return first.orElse(cases).equals(cases)
                    ? List.of()
                    : List.of(new Problem(
                            table.file(),
                            row.line(),
                            1,
                            "",
                            "has other modes, transfers, directions or another number of deadlines than the first row",
                            "put it into a table of its own"));
        } catch (ScenarioProblems e) {
            return e.problems().stream().map(it -> inTable(it, table, row)).toList();
        }
    }

    /** A value that stands in no file stands in the row, if its key is one of the table's. */
    private static Problem inTable(Problem problem, CaseTable table, CaseRow row) {
        return problem.line() == 0 && row.changes().containsKey(problem.key())
                ? new Problem(
                        table.file(),
                        row.line(),
                        row.columns().get(table.heads().indexOf(problem.key())),
                        problem.key(),
                        problem.message(),
                        problem.remedy())
                : problem;
    }

    /**
     * Returns the scenario of a row.
     *
     * @throws ScenarioProblems if it can't be simulated
     */
    public Scenario scenarioOf(CaseRow row) throws ScenarioProblems {
        Map<String, String> all = new LinkedHashMap<>(changes);
        all.putAll(row.changes());
        return ScenarioReader.read(files, scenario, all);
    }

    /**
     * Answers a row.
     *
     * @param isCancelled asked before each trial whether to break off
     * @return what it comes to, a line for each case and mode, as {@link GridColumns} says; none if it was broken off
     * @throws IllegalStateException if the row can't be simulated, which {@link #check} tells beforehand
     */
    public List<String> answer(CaseRow row, BooleanSupplier isCancelled) {
        try {
            Scenario scenario = scenarioOf(row);
            StudyResult result = study(scenario, isCancelled);
            return result.isPartial() ? List.of() : GridColumns.lines(row, scenario, StudySummary.of(result));
        } catch (ScenarioProblems e) {
            throw new IllegalStateException(e);
        }
    }

    /** One thread: rows run side by side. */
    private StudyResult study(Scenario scenario, BooleanSupplier isCancelled) {
        StudyRunner runner = new StudyRunner(scenario, new Trials(scenario)::run, 1, (done, asked) -> {}, isCancelled);
        return goal.map(it -> runner.runUntil(RowStore.nameless(), it, mostTrials))
                .orElseGet(runner::run);
    }
}
