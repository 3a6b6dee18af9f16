package org.ionohaul.whatif;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Limits;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.KeySweep;

/**
 * Points of a variation made up one by one, of the modes "Quick" and "Tough" in two cases that are alike: 6 of 10 trials get
 * through (5 to 7), half within 100 s (90 to 120), 9 of 10 within 200 s (150 to 400).
 */
final class InventedPoints {
    static final double NEVER = Double.POSITIVE_INFINITY;
    static final PairedEffect NO_EFFECT = effect(new Estimate(0, 0, 0), 0, 0, false);

    private InventedPoints() {}

    static Variation variation(List<KeySweep> sweeps, List<CasePoint> points) {
        return new Variation(
                FabricatedStudy.result().scenario(),
                sweeps,
                IntStream.range(0, points.size())
                        .mapToObj(i -> point(Variation.plan(sweeps).get(i).values(), points.get(i)))
                        .toList());
    }

    static VariationPoint point(List<String> values, CasePoint point) {
        return new VariationPoint(values, List.of(point, point));
    }

    static ModePoint mode(PairedEffect effect) {
        return new ModePoint(
                new Estimate(0.6, 0.5, 0.7),
                new Estimate(100, 90, 120),
                new Estimate(200, 150, 400),
                deadline(300, 0.6),
                effect);
    }

    /** Returns a mode that never gets anything through. */
    static ModePoint silent() {
        Estimate nothing = new Estimate(0, 0, 0.1);
        Estimate never = new Estimate(NEVER, NEVER, NEVER);
        return new ModePoint(nothing, never, never, deadline(300, 0), NO_EFFECT);
    }

    static List<DeadlineChance> deadline(double seconds, double share) {
        return List.of(new DeadlineChance(
                seconds,
                new Proportion((int) Math.round(100 * share), 100),
                new Estimate(share, Math.max(0, share - 0.1), share + 0.1),
                new Limits(Map.of())));
    }

    /** Returns an effect on times that does nothing to one deadline. */
    static PairedEffect effect(Estimate seconds, int quicker, int slower, boolean isBeyondChance) {
        Estimate nothing = new Estimate(0, 0, 0);
        return new PairedEffect(
                seconds,
                seconds,
                quicker,
                slower,
                isBeyondChance ? 0.001 : 0.5,
                isBeyondChance,
                List.of(nothing),
                List.of(false),
                1);
    }

    /** Returns a point at which one of the two modes is best. */
    static CasePoint clear(int best) {
        return new CasePoint(
                Collections.nCopies(2, mode(NO_EFFECT)),
                new Leaders(List.of(best), Optional.empty()),
                Optional.of(ahead(1 - best)));
    }

    /** Returns a point at which the modes differ by 4 of 100 trials and 30 s at most. */
    static CasePoint open() {
        return new CasePoint(
                Collections.nCopies(2, mode(NO_EFFECT)),
                new Leaders(List.of(0, 1), Optional.of(new Alike(0.031, 29.5))),
                Optional.of(ahead(1)));
    }

    static CasePoint nothing() {
        return new CasePoint(
                Collections.nCopies(2, silent()),
                new Leaders(List.of(0, 1), Optional.of(new Alike(0.031, NEVER))),
                Optional.of(ahead(1)));
    }

    /** First on 69 of 100 trials (59 to 77), behind on 20. */
    static Margin ahead(int next) {
        return new Margin(
                next,
                Verdict.Standing.SURER,
                new Estimate(0.69, 0.59, 0.77),
                new Estimate(0.2, 0.1, 0.3),
                new Estimate(40, 30, 50),
                List.of(new Estimate(0.1, -0.02, 0.2), new Estimate(0.08, 0.01, 0.15)),
                new Estimate(0.1, 0.05, 0.15));
    }
}
