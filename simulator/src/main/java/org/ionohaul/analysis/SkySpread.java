package org.ionohaul.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.trial.EndSky;

/**
 * How a measure of the sky at one end differs from trial to trial.
 *
 * @param measure which
 * @param tenth what it is at most on 1 of 10 trials
 * @param median what it is at most on 5 of 10
 * @param ninth what it is at most on 9 of 10
 */
public record SkySpread(SkyMeasure measure, double tenth, double median, double ninth) {
    /** Returns the spreads of all measures, in order. */
    static List<SkySpread> all(List<EndSky> skies) {
        return Arrays.stream(SkyMeasure.values())
                .map(measure -> of(
                        measure,
                        OrderedSample.of(skies.stream().mapToDouble(measure::of).toArray())))
                .collect(Collectors.toUnmodifiableList());
    }

    private static SkySpread of(SkyMeasure measure, OrderedSample values) {
        return new SkySpread(measure, values.quantile(0.1), values.quantile(0.5), values.quantile(0.9));
    }
}
