package org.ionohaul.nextrun;

import java.util.List;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.learning.ScenarioModel;
import org.ionohaul.placing.Gauge;
import org.ionohaul.placing.RunBench;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.trial.Trials;
import org.ionohaul.trial.UncertainDraws;

/** A scenario, in which one transfer is to be sent. */
final class ScenarioWorld implements World {
    /** Chances of what is chosen, of a later day, and of each candidate lie apart from each other and from those of logged runs. */
    private static final long CHOSEN = 1L << 62;

    private static final long LATER_DAY = (1L << 62) + (1L << 61);
    private static final int FIRST_NUMBER = 100_000;

    private final Scenario scenario;
    private final ScenarioModel model;
    private final Transfer transfer;
    private final Direction direction;
    private final List<Candidate> candidates;
    private final double limitSeconds;
    private final Trials trials;
    private final RunBench bench;

    ScenarioWorld(
            Understood understood,
            ScenarioModel model,
            Transfer transfer,
            Direction direction,
            List<Candidate> candidates,
            double limitSeconds) {
        this.scenario = understood.scenario();
        this.model = model;
        this.transfer = transfer;
        this.direction = direction;
        this.candidates = List.copyOf(candidates);
        this.limitSeconds = limitSeconds;
        this.trials = new Trials(scenario);
        this.bench = new RunBench(understood, List.of());
    }

    @Override
    public double[] straightened(double[] scores) {
        return model.straightened(scores);
    }

    @Override
    public int modes() {
        return scenario.modes().size();
    }

    @Override
    public SimulatedRun chosen(int mode, double[] scores, long number) {
        Mode chosen = scenario.modes().get(mode);
        SkyConditions conditions = scenario.sky()
                .conditions(model.later(scores, UncertainDraws.of(scenario.seed(), LATER_DAY + number)))
                .raisedBy(-model.gapDb(chosen.name(), scores));
        return SimulatedRun.of(
                trials.run(transfer, direction, chosen, conditions, new TrialStreams(scenario.seed(), CHOSEN + number)),
                Double.POSITIVE_INFINITY);
    }

    @Override
    public List<Candidate> candidates() {
        return candidates;
    }

    @Override
    public LoggedRun plan(Candidate.Send send) {
        return PlannedRun.of(
                FIRST_NUMBER + candidates.indexOf(send),
                send.mode().name(),
                send.direction(),
                send.bytes(),
                send.start(),
                limitSeconds);
    }

    @Override
    public SimulatedRun sent(Candidate.Send send, double[] scores, long number) {
        LoggedRun plan = plan(send);
        return bench.simulated(
                plan,
                bench.conditions(plan, model.later(scores, nextDay(plan.number(), number)))
                        .raisedBy(-model.gapDb(send.mode().name(), scores)),
                number);
    }

    @Override
    public double shown(Candidate.Listen listen, double[] scores, long number) {
        Gauge gauge = new Gauge(PlannedRun.watched(), listen.end(), listen.what(), 0, listen.deviationDb());
        return bench.expected(gauge, model.later(scores, nextDay(FIRST_NUMBER + candidates.indexOf(listen), number)));
    }

    /** What changes from day to day is that of another day than when the choice is put to use. */
    private UncertainDraws nextDay(int candidate, long number) {
        return UncertainDraws.of(scenario.seed(), LATER_DAY + ((long) candidate << Integer.SIZE) + number);
    }
}
