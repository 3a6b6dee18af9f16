package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.session.Ending;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** What promises name and promise, counted over whole studies made up again and again. */
final class PromisesTest {
    private static final double ACCEPTED = 0.05;
    private static final double SURE = 0.9;
    private static final double DEADLINE = 175;
    /** Share of trials that keep it: 1 - (2 - 1.5)^2 / 2. */
    private static final double KEPT = 0.875;

    private static final List<String> THREE = List.of("a", "b", "c");

    private final UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(811L);

    /** A time that rises with its rank among all as a straight line: from 100 to 200 s, times a factor. */
    private double seconds(double common, double factor) {
        return factor * (100 + 50 * common + 50 * random.nextDouble());
    }

    /** Half of the spread is the sky's, common to all modes. */
    private FilePromises file(int trials, double... factors) {
        List<List<SessionResult>> sessions = new ArrayList<>();
        IntStream.range(0, factors.length).forEach(i -> sessions.add(new ArrayList<>()));
        for (int trial = 0; trial < trials; trial++) {
            double common = random.nextDouble();
            for (int mode = 0; mode < factors.length; mode++) {
                sessions.get(mode).add(InventedStudy.delivered(seconds(common, factors[mode])));
            }
        }
        return FilePromises.of(
                InventedStudy.oneCase(List.of(DEADLINE), THREE.subList(0, factors.length), sessions), SURE);
    }

    private static double limit(double accepted, int studies) {
        return accepted + 3 * Math.sqrt(accepted * (1 - accepted) / studies);
    }

    /**
     * Modes alike: the time promised is picked from the same trials, and yet a mode is named alone in at most 5 of 100
     * studies, the promise is kept by 9 of 10 trials in at least 95 of 100, and a deadline as often as is said. A tent of two uniform numbers has the
     * distribution 1 - (2 - x)^2 / 2 above its middle.
     */
    @Test
    void ofModesAlikeNoneIsNamedAloneForTheSoonestPromise() {
        int studies = 600;
        int alone = 0;
        int broken = 0;
        int tooSure = 0;
        for (int i = 0; i < studies; i++) {
            FilePromises promises = file(80, 1, 1, 1);
            FilePromises.Soonest soonest = promises.soonest().orElseThrow();
            int picked = promises.summary().deadlineLeaders().get(0).first();
            DeadlineChance chance =
                    promises.summary().modes().get(picked).deadlines().get(0);
            tooSure += chance.safeShare(3) > KEPT ? 1 : 0;
            double x = (soonest.seconds() - 100) / 50;
            alone += soonest.leaders().isSole() ? 1 : 0;
            broken += 1 - (2 - x) * (2 - x) / 2 < SURE ? 1 : 0;
        }
        assertTrue(alone <= studies * limit(ACCEPTED, studies), "named alone: " + alone);
        assertTrue(tooSure <= studies * limit(ACCEPTED, studies), "too sure: " + tooSure);
        assertTrue(broken <= studies * limit(ACCEPTED, studies), "broken: " + broken);
    }

    /** Kept on all of n trials: the exact one-sided bound is the n-th root of the error rate (Clopper and Pearson). */
    @Test
    void theSafeShareIsExactAndAllowsForThePick() {
        DeadlineChance all =
                new DeadlineChance(60, new Proportion(80, 80), new Estimate(1, 1, 1), new Limits(Map.of()));
        assertEquals(Math.pow(0.05, 1 / 80.0), all.safeShare(1), 1e-9);
        assertEquals(Math.pow(0.05 / 4, 1 / 80.0), all.safeShare(4), 1e-9);
    }

    @Test
    void aModeThatIsSoonerBeyondChanceIsNamedAlone() {
        FilePromises.Soonest soonest = file(200, 1, 1.5, 1.5).soonest().orElseThrow();
        assertEquals(List.of(0), soonest.leaders().modes());
        assertEquals(0, soonest.mode());
    }

    @Test
    void withoutEnoughTrialsOrWithNothingThroughThereIsNoSoonestPromise() {
        assertEquals(Optional.empty(), file(20, 1, 1).soonest());
        List<SessionResult> none =
                IntStream.range(0, 100).mapToObj(i -> InventedStudy.gaveUp(60)).toList();
        assertEquals(
                Optional.empty(),
                FilePromises.of(InventedStudy.oneCase(List.of(), List.of("a"), List.of(none)), SURE)
                        .soonest());
    }

    /** The size promised is picked from the same trials as well. */
    @Test
    void ofModesAlikeNoneIsNamedAloneForTheLargestFile() {
        int studies = 200;
        int alone = 0;
        for (int i = 0; i < studies; i++) {
            List<List<SessionResult>> sessions = IntStream.range(0, 2)
                    .mapToObj(mode -> IntStream.range(0, 60)
                            .mapToObj(trial -> InventedStudy.inOvers(0, 50 + 100 * random.nextDouble(), 100_000, 1000))
                            .toList())
                    .toList();
            StudyResult study = InventedStudy.oneFileStudy(100_000, List.of("a", "b"), sessions);
            alone += SizePromises.of(study, 600, SURE)
                            .get(0)
                            .leaders()
                            .orElseThrow()
                            .isSole()
                    ? 1
                    : 0;
        }
        assertTrue(alone <= studies * limit(ACCEPTED, studies), "named alone: " + alone);
    }

    /**
     * An over of 1000 bytes each T seconds, T evenly from 1 to 3 s: 9 of 10 trials have n overs after n (1 + 2 x 0.9) s. The
     * point of a contour is kept by so many trials in at least 95 of 100 studies, whichever of two modes is taken for it.
     */
    @Test
    void thePointsOfContoursAreKeptAsOftenAsTheySay() {
        int studies = 300;
        int[] broken = new int[SizePromises.CONTOURS.size()];
        for (int i = 0; i < studies; i++) {
            List<SizePromises.OfMode> modes = overs(60).modes();
            for (int contour = 0; contour < broken.length; contour++) {
                double share = SizePromises.CONTOURS.get(contour);
                double picked = Math.min(deadline(modes.get(0), contour), deadline(modes.get(1), contour));
                broken[contour] += (picked / 20 - 1) / 2 < share ? 1 : 0;
            }
        }
        for (int count : broken) {
            assertTrue(count <= studies * limit(ACCEPTED, studies), "broken: " + count);
            assertTrue(count > 0, "bounds that are never broken promise too little");
        }
    }

    @Test
    void contoursSayWhatTheTablesSay() {
        SizePromises promises = overs(60);
        for (SizePromises.OfMode mode : promises.modes()) {
            for (SizePromises.ByDeadline row : mode.deadlines()) {
                for (Promise cell : row.byConfidence()) {
                    int contour = SizePromises.CONTOURS.indexOf(cell.confidence());
                    if (contour >= 0) {
                        long below = mode.contours().get(contour).stream()
                                .filter(it -> it <= cell.deadlineSeconds())
                                .count();
                        assertEquals(cell.safeBytes(), below == 0 ? 0 : SizeGrid.BYTES.get((int) below - 1));
                    }
                }
            }
        }
    }

    private SizePromises overs(int trials) {
        List<List<SessionResult>> sessions = IntStream.range(0, 2)
                .mapToObj(mode -> IntStream.range(0, trials)
                        .mapToObj(
                                trial -> InventedStudy.inOvers(0, 1000 / (1 + 2 * random.nextDouble()), 100_000, 1000))
                        .toList())
                .toList();
        return SizePromises.of(InventedStudy.oneFileStudy(100_000, List.of("a", "b"), sessions), 60, SURE)
                .get(0);
    }

    /** Returns from when on 20 kB may be promised. */
    private static double deadline(SizePromises.OfMode mode, int contour) {
        return mode.contours().get(contour).get(SizeGrid.BYTES.indexOf(20_000L));
    }

    /** Of 40 trials 20 lose their link, 10 run out of patience, 6 get no call answered, 4 still send at the horizon. */
    @Test
    void whatKeptTheLateTrialsIsCounted() {
        List<SessionResult> sessions = new ArrayList<>();
        IntStream.range(0, 20).forEach(i -> sessions.add(InventedStudy.gaveUp(100)));
        IntStream.range(0, 10).forEach(i -> sessions.add(InventedStudy.outOfPatience(200)));
        IntStream.range(0, 6).forEach(i -> sessions.add(InventedStudy.neverLinked(Ending.NEVER_LINKED, 50)));
        IntStream.range(0, 4).forEach(i -> sessions.add(InventedStudy.running(3600)));
        List<DeadlineChance> deadlines = CaseSummary.of(
                        InventedStudy.oneCase(List.of(60.0, 150.0, 3600.0), List.of("a"), List.of(sessions)))
                .best()
                .deadlines();
        Limits soon = deadlines.get(0).limits();
        assertEquals(Optional.of(Limit.DEADLINE), soon.largest());
        assertEquals(34 / 40.0, soon.partOfLargest());
        Limits later = deadlines.get(1).limits();
        assertEquals(Optional.of(Limit.LOST_LINKS), later.largest());
        assertTrue(deadlines.get(1).isLimitedOtherwise() && !later.areAllForGood(), later::toString);
        Limits last = deadlines.get(2).limits();
        assertEquals(
                List.of(20, 10, 6, 4),
                List.of(Limit.LOST_LINKS, Limit.PATIENCE, Limit.NO_LINK, Limit.HORIZON).stream()
                        .map(it -> last.counts().getOrDefault(it, 0))
                        .toList());
        assertTrue(last.areAllForGood() && last.late() == 40, last::toString);
    }
}
