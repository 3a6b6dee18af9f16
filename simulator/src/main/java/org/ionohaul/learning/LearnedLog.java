package org.ionohaul.learning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.Understood;
import org.ionohaul.study.TrialPool;

/**
 * What a log says of a scenario's uncertain inputs, and what is to be expected now.
 *
 * @param scenario the scenario
 * @param log the log
 * @param learned what was learned
 * @param inputs what became of each input; none if the log was not fitted
 * @param entangled inputs of which the log tells little but a combination; none if the log was not fitted
 * @param forecasts what is to be expected before and after; none if the log was not fitted
 */
public record LearnedLog(
        Scenario scenario,
        FieldLog log,
        Learned learned,
        List<InputChange> inputs,
        List<Entangled> entangled,
        List<Forecast> forecasts) {
    private static final double ENTANGLED = 0.5;

    /** Copies the lists. */
    public LearnedLog {
        inputs = List.copyOf(inputs);
        entangled = List.copyOf(entangled);
        forecasts = List.copyOf(forecasts);
    }

    /**
     * Two inputs that the log does not tell apart well.
     *
     * @param one one of them
     * @param other the other
     * @param correlation of what is believed of both, by Pearson
     */
    record Entangled(Unknown one, Unknown other, double correlation) {}

    /**
     * Learns.
     *
     * @param text the scenario's text, for the numbers in which its inputs are written
     * @param dailyKeys inputs that change from day to day
     * @param gapDb standard deviation of by how much a mode falls short of its model or exceeds it, in dB; 0 if it does not
     * @return empty if cancelled
     */
    public static Optional<LearnedLog> of(
            Understood understood,
            ScenarioText text,
            FieldLog log,
            Set<String> dailyKeys,
            double gapDb,
            TrialPool pool) {
        Scenario scenario = understood.scenario();
        ScenarioModel model = new ScenarioModel(understood, text, log.runs(), dailyKeys, gapDb);
        Optional<Learned> learned = new Learner(model, scenario.trials(), pool, scenario.seed()).learned();
        if (learned.isEmpty()) {
            return Optional.empty();
        }
        if (!learned.get().isFitted()) {
            return Optional.of(new LearnedLog(scenario, log, learned.get(), List.of(), List.of(), List.of()));
        }
        Belief belief = learned.get().belief();
        List<Forecast> forecasts = Forecast.of(scenario, model, belief, pool);
        return forecasts.isEmpty()
                ? Optional.empty()
                : Optional.of(new LearnedLog(
                        scenario,
                        log,
                        learned.get(),
                        IntStream.range(0, model.unknowns())
                                .mapToObj(it -> InputChange.of(model, it, belief))
                                .toList(),
                        entangled(model, belief),
                        forecasts));
    }

    private static List<Entangled> entangled(ScenarioModel model, Belief belief) {
        double[][] columns = IntStream.range(0, model.unknowns())
                .mapToObj(it ->
                        belief.draws().stream().mapToDouble(draw -> draw[it]).toArray())
                .toArray(double[][]::new);
        PearsonsCorrelation pearson = new PearsonsCorrelation();
        return IntStream.range(0, columns.length)
                .boxed()
                .flatMap(one -> IntStream.range(one + 1, columns.length)
                        .mapToObj(other -> new Entangled(
                                model.list().get(one),
                                model.list().get(other),
                                pearson.correlation(columns[one], columns[other]))))
                .filter(it -> Math.abs(it.correlation()) >= ENTANGLED)
                .toList();
    }

    /** Returns whether there is anything learned to show. */
    public boolean isFitted() {
        return learned.isFitted();
    }

    /**
     * Returns the scenario's text with its inputs as narrow as the log makes them, each by itself. Inputs that the log says hardly
     * anything of, that change from day to day, or that are not written in plain quantities stay as they are.
     *
     * @param text the text that was learned with
     */
    public ScenarioText sharpened(ScenarioText text) {
        ScenarioText sharper = text;
        for (InputChange input : inputs) {
            if (isSharpened(input)) {
                String value = input.narrowed().orElseThrow();
                sharper = sharper.with(input.unknown().key(), value).orElse(sharper);
            }
        }
        return sharper.withChanges();
    }

    static boolean isSharpened(InputChange input) {
        return input.written().isPresent()
                && !input.isUntouched()
                && !input.unknown().isGap()
                && input.unknown().day().isEmpty();
    }
}
