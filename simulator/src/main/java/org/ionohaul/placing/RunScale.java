package org.ionohaul.placing;

import java.util.List;
import org.ionohaul.fieldlog.LoggedRun;

/** The simulated runs of one kind in order, from quick to slow, and where others stand among them. */
public final class RunScale {
    private final Slowness slowness;
    private final double[] rising;

    private RunScale(Slowness slowness, double[] rising) {
        this.slowness = slowness;
        this.rising = rising;
    }

    /**
     * Returns the scale for a logged run.
     *
     * @param simulated runs of its kind, at least one
     */
    public static RunScale of(LoggedRun run, List<SimulatedRun> simulated) {
        Slowness slowness = new Slowness(run);
        return new RunScale(
                slowness, simulated.stream().mapToDouble(slowness::of).sorted().toArray());
    }

    /** Returns where the logged run lies. */
    public RankSpan logged() {
        return RankSpan.of(slowness.logged(), rising);
    }

    /** Returns whether the logged run, with all that rounding leaves open, lies beyond every simulated one. */
    public boolean isBeyondAll() {
        RankSpan logged = logged();
        return logged.high() * (size() + 1) < 1.5 || logged.low() * (size() + 1) > size() - 0.5;
    }

    /** Returns where one of the simulated runs lies as far as it would be known if the same person had logged it. */
    public RankSpan noted(SimulatedRun simulated) {
        return RankSpan.among(slowness.noted(slowness.of(simulated)), rising);
    }

    /** Returns where one of the simulated runs stands: a range where it is like others. */
    public RankSpan standing(SimulatedRun simulated) {
        double place = slowness.of(simulated);
        return RankSpan.among(new Slowness.Span(place, place), rising);
    }

    /** Returns how many simulated runs there are. */
    public int size() {
        return rising.length;
    }
}
