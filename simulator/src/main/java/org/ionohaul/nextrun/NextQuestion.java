package org.ionohaul.nextrun;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.learning.Belief;
import org.ionohaul.learning.Learned;
import org.ionohaul.learning.Learner;
import org.ionohaul.learning.ScenarioModel;
import org.ionohaul.placing.Gauge;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.study.TrialPool;

/**
 * What somebody asks who is about to choose a mode and may still try something on the air.
 *
 * @param understood the scenario
 * @param text its text, for the numbers in which its inputs are written
 * @param log what was run so far; empty if nothing was
 * @param dailyKeys inputs that change from day to day
 * @param gapDb standard deviation of by how much a mode falls short of its model, in dB; 0 if it does not
 * @param transfer what is to be sent in the end
 * @param direction which way
 * @param deadlineSeconds by when
 * @param worthIt from which difference of two modes' chances on the worse one is a wrong choice, above 0
 * @param limitSeconds how long somebody is willing to be on the air, positive
 * @param sizes how many bytes candidates send; empty for all that is to be sent and a quarter of it
 * @param starts when candidates begin; empty for the scenario's clock
 * @param meterDb standard deviation of the meters' error, in dB, positive
 */
public record NextQuestion(
        Understood understood,
        ScenarioText text,
        Optional<FieldLog> log,
        Set<String> dailyKeys,
        double gapDb,
        Transfer transfer,
        Direction direction,
        double deadlineSeconds,
        double worthIt,
        double limitSeconds,
        List<Long> sizes,
        List<LocalTime> starts,
        double meterDb) {
    /** An average over many fades takes about so long. */
    private static final double READING_SECONDS = 60;

    /** Draws of what is believed where no log was learned from. */
    private static final int DRAWS = 1000;

    private static final int FEWEST_A_ROUND = 100;

    /** Copies the collections. */
    public NextQuestion {
        dailyKeys = Set.copyOf(dailyKeys);
        sizes = List.copyOf(sizes);
        starts = List.copyOf(starts);
    }

    private Scenario scenario() {
        return understood.scenario();
    }

    /** Returns how many draws of what is believed are simulated under. */
    public int sets() {
        return Math.min(DRAWS, scenario().trials());
    }

    /** A round of learning has some more that serve it, those of the other rounds. */
    private int setsARound() {
        return Math.max(FEWEST_A_ROUND, sets() / 2);
    }

    /** Returns what is tried: each mode each way with each size at each time, and a meter at each end. */
    List<Candidate> candidates() {
        List<Long> bytes =
                sizes.isEmpty() ? List.of(transfer.totalBytes(), Math.max(1, transfer.totalBytes() / 4)) : sizes;
        List<Optional<LocalTime>> times = starts.isEmpty()
                ? List.of(Optional.empty())
                : starts.stream().map(Optional::of).toList();
        List<Candidate> candidates = new ArrayList<>();
        for (Mode mode : scenario().modes()) {
            for (Direction way : Direction.values()) {
                for (long size : bytes) {
                    times.forEach(start -> candidates.add(new Candidate.Send(mode, way, size, start)));
                }
            }
        }
        for (End end : End.values()) {
            shown(end).forEach(it -> candidates.add(new Candidate.Listen(end, it, READING_SECONDS, meterDb)));
        }
        return candidates;
    }

    /** Where a scenario states levels, somebody has a meter that shows them; elsewhere just their ratio says anything. */
    private List<Gauge.What> shown(End end) {
        return scenario().sky().levels(end, key -> 0.5).isPresent()
                ? List.of(Gauge.What.SIGNAL, Gauge.What.NOISE)
                : List.of(Gauge.What.SNR);
    }

    /** Works out what to do next; empty if cancelled. */
    public Optional<NextRun> answer(TrialPool pool) {
        ScenarioModel model = new ScenarioModel(
                understood,
                text,
                log.map(FieldLog::runs).orElse(List.of()),
                dailyKeys,
                gapDb,
                scenario().modes().stream().map(Mode::name).toList());
        Optional<Learned> learned = log.isPresent()
                ? new Learner(model, setsARound(), pool, scenario().seed()).learned()
                : Optional.empty();
        if (log.isPresent() && learned.isEmpty()) {
            return Optional.empty();
        }
        if (learned.filter(it -> !it.isFitted()).isPresent()) {
            return Optional.of(new NextRun(this, learned, Optional.empty()));
        }
        World world = new ScenarioWorld(understood, model, transfer, direction, candidates(), limitSeconds);
        Valuation.Stakes stakes = new Valuation.Stakes(deadlineSeconds, worthIt, limitSeconds);
        Belief belief = learned.map(Learned::belief).orElseGet(() -> prior(model.unknowns()));
        return new Valuation(world, belief, sets(), stakes, scenario().seed())
                .found(pool)
                .map(it -> new NextRun(this, learned, Optional.of(it)));
    }

    private Belief prior(int unknowns) {
        UniformRandomProvider random = new TrialStreams(scenario().seed(), 0).open(Purpose.LEARNING, 0);
        return new Belief(Belief.prior(unknowns, DRAWS, random), 0);
    }
}
