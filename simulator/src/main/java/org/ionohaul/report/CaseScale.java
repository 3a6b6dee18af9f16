package org.ionohaul.report;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Race;
import org.ionohaul.rendering.TimeScale;

/** The axis of time that suits a case: long enough for nearly all that is reached and for the deadlines. */
final class CaseScale {
    private static final double MARGIN = 1.08;
    /** A mode so slow that others would be squeezed into a corner does not set the scale. */
    private static final double MOST_TIMES_THE_FASTEST = 8;
    /** Nor does a deadline so late that everything is through long before. */
    private static final double MOST_TIMES_THE_SLOWEST = 2;

    /** In a race, what comes so much later has lost. */
    private static final double MOST_TIMES_THE_FIRST = 3;

    private static final double NOTHING_ARRIVES_SECONDS = 60;

    private CaseScale() {}

    static TimeScale of(CaseSummary summary) {
        return of(summary, MOST_TIMES_THE_FASTEST, MOST_TIMES_THE_SLOWEST);
    }

    /** Returns a shorter axis, on which beginnings and the quicker modes are seen well, and first bytes of nearly all. */
    static TimeScale ofRace(CaseSummary summary, Race race) {
        double firstByte = race.lanes().stream()
                .mapToDouble(it -> it.marks().get(0).medianSeconds())
                .filter(it -> it <= MOST_TIMES_THE_FASTEST * fastest(summary) && Double.isFinite(it))
                .max()
                .orElse(0);
        return new TimeScale(Math.max(of(summary, MOST_TIMES_THE_FIRST, 1).endSeconds(), MARGIN * MARGIN * firstByte));
    }

    private static double fastest(CaseSummary summary) {
        return finite(summary.modes().stream().map(it -> it.medianSeconds().value()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static TimeScale of(CaseSummary summary, double mostTimesTheFastest, double mostTimesTheSlowest) {
        double fastest = fastest(summary);
        double slowest = summary.modes().stream()
                .filter(it -> it.medianSeconds().value() <= mostTimesTheFastest * fastest)
                .flatMapToDouble(it -> DoubleStream.of(
                        it.medianSeconds().value(), it.ninthSeconds().value()))
                .filter(it -> it <= mostTimesTheFastest * fastest && Double.isFinite(it))
                .max()
                .orElse(NOTHING_ARRIVES_SECONDS);
        boolean isReached = Double.isFinite(fastest);
        double deadline = finite(summary.transfer().deadlinesSeconds().stream())
                .filter(it -> !isReached || it <= mostTimesTheSlowest * slowest)
                .max()
                .orElse(0);
        return new TimeScale(MARGIN * Math.max(slowest, deadline));
    }

    private static DoubleStream finite(Stream<Double> seconds) {
        return seconds.mapToDouble(Double::doubleValue).filter(Double::isFinite);
    }
}
