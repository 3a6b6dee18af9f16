package org.ionohaul.report;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.study.CaseSummary;

/** The axis of time that suits a case: long enough for nearly all that is reached and for the deadlines. */
final class CaseScale {
    private static final double MARGIN = 1.08;
    /** A mode so slow that others would be squeezed into a corner does not set the scale. */
    private static final double MOST_TIMES_THE_FASTEST = 8;

    private CaseScale() {}

    static TimeScale of(CaseSummary summary) {
        double fastest = finite(
                        summary.modes().stream().map(it -> it.medianSeconds().value()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double slowest = finite(
                        summary.modes().stream().map(it -> it.ninthSeconds().value()))
                .map(it -> Math.min(it, MOST_TIMES_THE_FASTEST * fastest))
                .max()
                .orElse(60);
        double longest = Math.max(
                slowest,
                finite(summary.modes().stream().map(it -> it.medianSeconds().value()))
                        .map(it -> Math.min(it, MOST_TIMES_THE_FASTEST * fastest))
                        .max()
                        .orElse(60));
        double deadline =
                finite(summary.transfer().deadlinesSeconds().stream()).max().orElse(0);
        return new TimeScale(MARGIN * Math.max(longest, deadline));
    }

    private static DoubleStream finite(Stream<Double> seconds) {
        return seconds.mapToDouble(Double::doubleValue).filter(Double::isFinite);
    }
}
