package org.ionohaul.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.SkyAnswers;
import org.ionohaul.analysis.SkyMeasure;
import org.ionohaul.analysis.SkySpread;
import org.ionohaul.statistics.Estimate;

/** The skies of all trials, as {@code summary.json} has them. */
record PublishedSky(int trials, double watchedSeconds, Map<SkyMeasure, Spread> near, Map<SkyMeasure, Spread> far) {
    /** Quantiles of one measure over the trials. */
    record Spread(double tenth, double median, double ninth) {
        static Map<SkyMeasure, Spread> all(List<SkySpread> spreads) {
            Map<SkyMeasure, Spread> all = new LinkedHashMap<>();
            spreads.forEach(it -> all.put(it.measure(), new Spread(it.tenth(), it.median(), it.ninth())));
            return all;
        }
    }

    /** When two modes differ most. */
    record DifferBy(
            String at,
            SkyMeasure measure,
            double watchedSeconds,
            double spreadShare,
            double pValue,
            Fifth most,
            Fifth least) {
        static DifferBy of(Difference difference) {
            return new DifferBy(
                    difference.isAtReceiver() ? "receiver" : "sender",
                    difference.measure(),
                    difference.watchedSeconds(),
                    difference.share(),
                    difference.pValue(),
                    Fifth.of(difference.most()),
                    Fifth.of(difference.least()));
        }
    }

    /** A fifth of the trials, by what their skies measure; fifth 1 has the lowest. */
    record Fifth(
            int fifth,
            double from,
            double to,
            int trials,
            Estimate firstBeforeShare,
            Estimate secondBeforeShare,
            Estimate medianLeadSeconds) {
        static Fifth of(Difference.Fifth fifth) {
            return new Fifth(
                    fifth.place() + 1,
                    fifth.from(),
                    fifth.to(),
                    fifth.trials(),
                    fifth.firstBefore(),
                    fifth.secondBefore(),
                    fifth.medianLeadSeconds());
        }
    }

    static PublishedSky of(SkyAnswers skies) {
        return new PublishedSky(
                skies.trials(), skies.watchedSeconds(), Spread.all(skies.near()), Spread.all(skies.far()));
    }
}
