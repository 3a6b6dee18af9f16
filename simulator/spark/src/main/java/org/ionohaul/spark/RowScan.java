package org.ionohaul.spark;

import java.io.Serializable;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.grid.CaseRow;
import org.ionohaul.grid.CaseTable;
import org.ionohaul.grid.GridQuestion;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.trial.Trials;

/** What a first look at some rows tells. */
final class RowScan implements Serializable {
    private static final long serialVersionUID = 1;

    /** One trial says little of a row: the uncertain inputs differ from trial to trial. */
    private static final int TRIALS = 5;

    private final int[] lines;
    private final double[] costs;
    private final ArrayList<Problem> problems;

    private RowScan(int[] lines, double[] costs, List<Problem> problems) {
        this.lines = lines;
        this.costs = costs;
        this.problems = new ArrayList<>(problems);
    }

    /**
     * Looks at rows.
     *
     * @param table the rows, the first of the whole table before them: all must agree with it in what is compared
     */
    static RowScan of(GridQuestion question, CaseTable table) {
        try {
            question.check(table);
            List<CaseRow> rows = table.rows().subList(1, table.rows().size());
            double[] costs = new double[rows.size()];
            for (int i = 0; i < costs.length; i++) {
                costs[i] = seconds(question.scenarioOf(rows.get(i)));
            }
            return new RowScan(rows.stream().mapToInt(CaseRow::line).toArray(), costs, List.of());
        } catch (ScenarioProblems e) {
            return new RowScan(new int[0], new double[0], e.problems());
        }
    }

    /** The processor's time, not the clock's: other tasks run beside this one. */
    private static double seconds(Scenario scenario) {
        long start = processorNanos();
        Trials trials = new Trials(scenario);
        IntStream.range(0, Math.min(TRIALS, scenario.trials())).forEach(trials::run);
        return 1e-9 * Math.max(1, processorNanos() - start);
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** Returns where the rows stand in the table; none if anything is wrong in one of them. */
    IntStream lines() {
        return IntStream.of(lines);
    }

    /** Returns what trials of each are predicted to cost, in seconds of a processor. */
    DoubleStream costs() {
        return DoubleStream.of(costs);
    }

    /** Returns what is wrong in the rows. */
    List<Problem> problems() {
        return Collections.unmodifiableList(problems);
    }
}
