package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.ToleranceBound;
import org.ionohaul.study.TrialPool;
import org.ionohaul.trial.Trials;
import org.ionohaul.trial.UncertainDraws;

/**
 * What is to be expected of a transfer before the log and after it, in the same trials but for what was learned.
 *
 * @param transfer what is sent
 * @param direction which way
 * @param mode with which mode
 * @param before completion times, infinite if never
 * @param after completion times, infinite if never
 */
record Forecast(Transfer transfer, Direction direction, Mode mode, OrderedSample before, OrderedSample after) {
    /** A time that is promised is kept by so many of ten trials. */
    static final ToleranceBound PROMISE = new ToleranceBound(0.9, Estimate.CONFIDENCE);

    /**
     * Simulates the transfers of a scenario, on a day that is not in the log.
     *
     * @return for each transfer, direction and mode; empty if cancelled
     */
    static List<Forecast> of(Scenario scenario, ScenarioModel model, Belief belief, TrialPool pool) {
        Trials trials = new Trials(scenario);
        List<List<double[]>> times =
                pool.run(scenario.trials(), trial -> times(scenario, trials, model, belief, trial));
        List<Forecast> forecasts = new ArrayList<>();
        if (times.size() < scenario.trials()) {
            return forecasts;
        }
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                for (Mode mode : scenario.modes()) {
                    int place = forecasts.size();
                    forecasts.add(
                            new Forecast(transfer, direction, mode, sample(times, place, 0), sample(times, place, 1)));
                }
            }
        }
        return forecasts;
    }

    private static OrderedSample sample(List<List<double[]>> times, int place, int which) {
        return OrderedSample.of(
                times.stream().mapToDouble(it -> it.get(place)[which]).toArray());
    }

    private static List<double[]> times(
            Scenario scenario, Trials trials, ScenarioModel model, Belief belief, int trial) {
        Draws before = UncertainDraws.of(scenario.seed(), trial);
        double[] scores = belief.draws().get(trial % belief.draws().size());
        Draws after = model.later(scores, before);
        TrialStreams chance = new TrialStreams(scenario.seed(), trial);
        List<double[]> times = new ArrayList<>();
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                for (Mode mode : scenario.modes()) {
                    SessionResult without =
                            trials.run(transfer, direction, mode, scenario.sky().conditions(before), chance);
                    SessionResult with = trials.run(
                            transfer,
                            direction,
                            mode,
                            scenario.sky().conditions(after).raisedBy(-model.gapDb(mode.name(), scores)),
                            chance);
                    times.add(new double[] {seconds(without), seconds(with)});
                }
            }
        }
        return times;
    }

    private static double seconds(SessionResult result) {
        return result.deliveredNanos().isPresent()
                ? result.deliveredNanos().getAsLong() / 1e9
                : Double.POSITIVE_INFINITY;
    }
}
