package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.analysis.PointsDone;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;

/**
 * Variations made up without simulating: {@link FabricatedStudy} with everything so many seconds later the further its
 * keys are turned.
 */
public final class FabricatedVariation {
    public static final KeySweep SNR = new KeySweep("near.snr", List.of("6 dB", "9 dB", "12 dB"));
    public static final KeySweep CONGESTION =
            new KeySweep("near.congestion", List.of("quiet-band", "<busy> & \"evening\""));

    private FabricatedVariation() {}

    /** Returns three values of a number, of which so many are done. */
    public static Variation oneKey(int done) {
        return variation(List.of(SNR), done);
    }

    /** Returns six combinations of a number and a choice, of which so many are done. */
    public static Variation twoKeys(int done) {
        return variation(List.of(CONGESTION, SNR), done);
    }

    /** Returns a tornado of the same two keys. */
    public static Tornado tornado() {
        List<KeySweep> sweeps = List.of(SNR, CONGESTION);
        return Tornado.of(scenario(), sweeps, points(Tornado.plan(sweeps), 5));
    }

    private static Variation variation(List<KeySweep> sweeps, int done) {
        return new Variation(scenario(), sweeps, points(Variation.plan(sweeps), done));
    }

    private static Scenario scenario() {
        return FabricatedStudy.result().scenario();
    }

    private static List<VariationPoint> points(List<PlannedPoint> plan, int count) {
        PointsDone done = PointsDone.noneOf(plan.size());
        for (int i = 0; i < count; i++) {
            done = done.and(plan.get(i), FabricatedStudy.later(40 * i));
        }
        return done.points();
    }
}
