package org.ionohaul.onair;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;

/** Answers about runs without any sky. */
final class FabricatedRuns {
    private static final Path DEMO = Path.of("../scenarios/river-watch.toml");

    private FabricatedRuns() {}

    /** Returns what is found of two modes that need so many seconds in the mean, whatever the size. */
    static RunAnswer answer(int comparisons, double firstSeconds, double secondSeconds) throws ScenarioProblems {
        return answer(comparisons, 0, firstSeconds, secondSeconds);
    }

    /**
     * Returns what is found of modes that need so many seconds in the mean, whatever the size.
     *
     * @param chances which chances: other numbers give other evenings
     */
    static RunAnswer answer(int comparisons, int chances, double... meanSeconds) throws ScenarioProblems {
        return answer(comparisons, chances, it -> true, meanSeconds);
    }

    /** Returns the same of those designs alone that are asked for. */
    static RunAnswer answer(int comparisons, int chances, Predicate<Design> isTried, double... meanSeconds)
            throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO);
        RunQuestion question = new RunQuestion(
                scenario,
                comparisons,
                scenario.modes().subList(0, meanSeconds.length),
                scenario.transfers().get(1),
                Direction.UPLOAD,
                new Criterion(OptionalDouble.empty()),
                0,
                180,
                0.05);
        MadeUpEvenings made =
                new MadeUpEvenings(DoubleStream.of(meanSeconds).boxed().toList(), 0);
        LongFunction<Evening> skies = trial -> made.apply(trial + 100_000_000L * chances);
        Comparisons asked = question.ways();
        Comparisons comparing = new Comparisons(
                meanSeconds.length,
                asked.skiesBySize().stream()
                        .<LongFunction<Evening>>map(it -> skies)
                        .toList(),
                asked.criterion(),
                asked.timetable(),
                asked.errorRate(),
                asked.seed(),
                asked.designs().stream().filter(isTried).toList());
        Truth truth = Truth.of(
                question.criterion(),
                IntStream.range(0, meanSeconds.length)
                        .mapToObj(mode -> times(skies, mode))
                        .toArray(double[][]::new));
        List<Verdicts> verdicts =
                IntStream.range(0, comparisons).mapToObj(comparing::make).toList();
        RunFindings findings = RunFindings.of(question, comparing, List.of(truth, truth, truth), verdicts);
        return RunAnswer.of(findings, 18 * 3600, 10800, FabricatedStudy.provenance());
    }

    private static double[] times(LongFunction<Evening> skies, int mode) {
        return IntStream.range(0, 2000)
                .mapToDouble(it -> skies.apply(1_000_000 + it).run(mode, 0, 0).throughSeconds())
                .toArray();
    }
}
