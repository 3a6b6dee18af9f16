package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.KeySweep;
import org.ionohaul.study.PlannedPoint;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** How often a tornado says something wrong when it is repeated: six keys and three deadlines offer many chances to. */
final class TornadoCoverageTest {
    private static final int REPETITIONS = 600;
    private static final int TRIALS = 60;
    private static final List<Double> DEADLINES = List.of(100.0, 130.0, 200.0);
    private static final List<KeySweep> KEYS = IntStream.range(0, 6)
            .mapToObj(i -> new KeySweep("key-" + i, List.of("low", "high")))
            .toList();

    private final UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20);
    private final ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);

    /** A study whose times are drawn anew, so many times as long. */
    private StudyResult study(double factor) {
        List<SessionResult> sessions = Stream.generate(
                        () -> InventedStudy.delivered(factor * 130 * Math.exp(0.4 * normal.sample())))
                .limit(TRIALS)
                .toList();
        return InventedStudy.study(DEADLINES, List.of("hare"), List.of(sessions));
    }

    private Tornado tornado(double lastFactor) {
        List<PlannedPoint> plan = Tornado.plan(KEYS);
        PointsDone done = PointsDone.none();
        List<StudyResult> results = new ArrayList<>();
        for (int i = 0; i < plan.size(); i++) {
            results.add(study(i == plan.size() - 1 ? lastFactor : 1));
            done = done.and(plan.get(i), results.get(i));
        }
        return Tornado.of(results.get(0).scenario(), KEYS, done.points());
    }

    private static Stream<PairedEffect> effects(Tornado tornado) {
        return tornado.bars().stream()
                .flatMap(it -> Stream.of(it.low(), it.high()))
                .map(it -> it.cases().get(0).modes().get(0).effect());
    }

    @Test
    @DisplayName("of tornadoes whose keys do nothing at most 5 of 100 name a key or a change")
    void nothingIsSeldomTold() {
        long named = 0;
        long told = 0;
        for (int i = 0; i < REPETITIONS; i++) {
            Tornado tornado = tornado(1);
            named += tornado.mattering(0).isEmpty() ? 0 : 1;
            told += effects(tornado).allMatch(it -> it.told(tornado.choices()).isNothing()) ? 0 : 1;
        }
        // 0.05 of 600, three standard errors (5.3 each) above.
        assertTrue(named <= 46, "named " + named);
        assertTrue(told <= 46, "told " + told);
    }

    @Test
    @DisplayName("a key that makes a real difference is named, and first")
    void somethingIsTold() {
        Tornado tornado = tornado(1.6);
        assertEquals("key-5", tornado.mattering(0).get(0).key());
        assertEquals(
                1,
                effects(tornado)
                        .filter(it -> !it.told(tornado.choices()).isNothing())
                        .count());
    }
}
