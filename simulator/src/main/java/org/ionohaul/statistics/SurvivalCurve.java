package org.ionohaul.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * The Kaplan-Meier estimate of the share that has not yet had its event, from observations of which some broke off
 * before (E. L. Kaplan and P. Meier, J. Am. Stat. Assoc. 53, 1958), with Greenwood's standard error.
 *
 * <p>It answers for a world in which nobody breaks off, provided that those who did were no different from those who
 * were still watched. Where breaking off is itself the answer, count it as never: see {@link OrderedSample}.
 */
public final class SurvivalCurve {
    /** Products of shares come out a few ulp off; 1e-12 is far above that and far below one observation. */
    private static final double ROUNDING = 1e-12;

    private final List<Step> steps;

    private SurvivalCurve(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    /**
     * A fall of the curve.
     *
     * @param time when
     * @param atRisk how many were watched just before
     * @param events how many of them had their event then, 1 or more
     * @param survival share without event from then on, from 0 to 1
     * @param standardError Greenwood's standard error of that share; 0 once the share is 0
     */
    public record Step(double time, int atRisk, int events, double survival, double standardError) {}

    /** Returns the curve; an observation that broke off at the instant of an event counts as watched at that instant. */
    public static SurvivalCurve of(List<Observation> observations) {
        List<Observation> ordered = observations.stream().sorted().toList();
        List<Step> steps = new ArrayList<>();
        double survival = 1;
        double greenwoodSum = 0;
        for (int i = 0; i < ordered.size(); ) {
            double time = ordered.get(i).time();
            int atRisk = ordered.size() - i;
            int events = 0;
            for (; i < ordered.size() && ordered.get(i).time() == time; i++) {
                events += ordered.get(i).isEvent() ? 1 : 0;
            }
            if (events > 0) {
                survival *= (double) (atRisk - events) / atRisk;
                greenwoodSum += events / ((double) atRisk * (atRisk - events));
                double error = survival > 0 ? survival * Math.sqrt(greenwoodSum) : 0;
                steps.add(new Step(time, atRisk, events, survival, error));
            }
        }
        return new SurvivalCurve(steps);
    }

    /** Returns the falls in order of time. */
    public List<Step> steps() {
        return steps;
    }

    /**
     * Returns the first instant at which at most {@code 1 - probability} have not had their event; infinite if the
     * curve never falls so far.
     *
     * @param probability above 0, below 1
     */
    public double quantile(double probability) {
        return steps.stream()
                .filter(step -> step.survival() <= 1 - probability + ROUNDING)
                .mapToDouble(Step::time)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
