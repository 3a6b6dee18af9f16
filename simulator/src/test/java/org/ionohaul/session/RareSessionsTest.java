package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.PascalDistribution;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.rare.Ladder;
import org.ionohaul.rare.RareChance;
import org.ionohaul.rare.Score;
import org.ionohaul.rare.Splitting;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;

/**
 * Chances too small to be counted, of sessions whose tails are known in closed form; the whole procedure, levels included, over
 * and over. The table is kept in {@code results/reference/rare-coverage.csv}; renew it with {@code -Dgolden.renew=true}.
 */
final class RareSessionsTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "rare-coverage.csv");
    private static final boolean RENEWS = Boolean.getBoolean("golden.renew");
    private static final long HORIZON = 1000 * Bench.HOUR;
    private static final int TREES = 300;

    /** As many as {@code --rare} takes if no number is given. */
    private static final int USUAL_TREES = 1000;

    /** A right program oversteps this once in 16,000 comparisons. */
    private static final double STANDARD_ERRORS = 4;

    /** A tail that is known: sessions with at least so many overs. */
    private record Tail(String name, Bench bench, int overs, double chance) {
        Score score() {
            return streams -> {
                int sent = bench.run(streams, HORIZON).oversSent();
                return sent >= overs ? Double.POSITIVE_INFINITY : sent;
            };
        }
    }

    /** How a tail is looked at: whole procedures, each with so many first trials. */
    private record Series(Tail tail, int trees, int procedures) {}

    /** What the repeats of one tail come to. */
    private record Repeats(int procedures, int told, int held, double mean, double error, double gain) {}

    @Test
    void stopAndWaitIsNegativeBinomial() {
        check(new Series(stopAndWait(86), TREES, 6));
    }

    @Test
    void whatIsSentAnewUntilItIsThroughHasAGeometricTail() {
        check(new Series(restart(12), TREES, 6));
    }

    @Test
    void thePublishedTable() throws IOException {
        List<Tail> tails = List.of(stopAndWait(83), stopAndWait(90), stopAndWait(95), restart(10), restart(14));
        List<Series> all = Stream.concat(
                        tails.stream().map(it -> new Series(it, TREES, 30)),
                        tails.stream().map(it -> new Series(it, USUAL_TREES, 60)))
                .toList();
        if (RENEWS) {
            List<String> lines = new ArrayList<>(List.of(
                    "# Chances of known tails by splitting, whole procedures (levels included) repeated. Told: at least "
                            + RareChance.FEWEST_ARRIVED + " of the first trials led there.",
                    "# Held: the range of 95 of 100 held the true chance, of those told. Gain: trials counted one by one for the same"
                            + " scatter, over trials run.",
                    "tail,true chance,first trials,procedures,told,held,mean over true,standard error of it,gain"));
            for (Series series : all) {
                lines.add(line(series, repeats(series)));
            }
            Files.write(TABLE, lines);
        }
        List<String> rows = Files.readAllLines(TABLE).stream()
                .filter(it -> !it.startsWith("#"))
                .skip(1)
                .toList();
        assertEquals(all.size(), rows.size());
        int usuallyTold = 0;
        int usuallyHeld = 0;
        for (int i = 0; i < rows.size(); i++) {
            String[] cells = rows.get(i).split(",", -1);
            assertEquals(all.get(i).tail().name(), cells[0]);
            assertEquals(all.get(i).trees(), Integer.parseInt(cells[2]));
            assertEquals(1, Double.parseDouble(cells[6]), STANDARD_ERRORS * Double.parseDouble(cells[7]), cells[0]);
            int told = Integer.parseInt(cells[4]);
            int held = Integer.parseInt(cells[5]);
            assertHolds(cells[0], told, held);
            usuallyTold += all.get(i).trees() == USUAL_TREES ? told : 0;
            usuallyHeld += all.get(i).trees() == USUAL_TREES ? held : 0;
        }
        assertHolds("with the usual number of first trials", usuallyTold, usuallyHeld);
        assertTrue(usuallyTold >= 200, "too few to count by: " + usuallyTold);
    }

    private static void check(Series series) {
        Repeats repeats = repeats(series);
        String name = series.tail().name();
        assertEquals(1, repeats.mean(), STANDARD_ERRORS * repeats.error(), name);
        assertTrue(repeats.error() < 0.5, name + " scatters too much to tell: " + repeats);
        assertHolds(name, repeats.told(), repeats.held());
    }

    /** Ranges are made to hold the truth in 95 of 100: fewer than 1 in 1000 right programs hold so few, at 93 of 100. */
    private static void assertHolds(String name, int told, int held) {
        if (told > 0) {
            double chanceOfSoFew = new BinomialDistribution(told, 0.93).cumulativeProbability(held);
            assertTrue(chanceOfSoFew > 0.001, name + ": " + held + " of " + told + " held");
        }
    }

    private static Repeats repeats(Series series) {
        Tail tail = series.tail();
        int climbed = 0;
        int told = 0;
        int held = 0;
        double sum = 0;
        double squares = 0;
        long trials = 0;
        for (int procedure = 0; procedure < series.procedures(); procedure++) {
            Splitting splitting = new Splitting(tail.score(), 1000 + procedure, TrialPool.of(2));
            Optional<Ladder> ladder = splitting.ladder();
            if (ladder.isEmpty()) {
                // Levels come from trials of their own: that they were found says nothing of the estimate.
                continue;
            }
            climbed++;
            RareChance found = splitting.chance(ladder.get(), series.trees()).orElseThrow();
            double ratio = found.chance().value() / tail.chance();
            sum += ratio;
            squares += ratio * ratio;
            trials += found.trials();
            if (found.isTold()) {
                told++;
                held += found.chance().low() <= tail.chance()
                                && tail.chance() <= found.chance().high()
                        ? 1
                        : 0;
            }
        }
        double mean = sum / climbed;
        double variance = (squares - sum * mean) / (climbed - 1);
        double counted = (1 - tail.chance()) / tail.chance() / variance;
        return new Repeats(
                series.procedures(),
                told,
                held,
                mean,
                Math.sqrt(variance / climbed),
                counted / ((double) trials / climbed));
    }

    private static String line(Series series, Repeats repeats) {
        return String.format(
                Locale.ROOT,
                "%s,%.3g,%d,%d,%d,%d,%.3f,%.3f,%.1f",
                series.tail().name(),
                series.tail().chance(),
                series.trees(),
                repeats.procedures(),
                repeats.told(),
                repeats.held(),
                repeats.mean(),
                repeats.error(),
                repeats.gain());
    }

    /** N = 50, frame loss 0.2, acknowledgement loss 0.1: at least so many overs. */
    private static Tail stopAndWait(int overs) {
        Bench bench = bench();
        bench.dataRates = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, 0.2));
        bench.acknowledgement = PlainWaveform.losing(0, 50 * Bench.MILLI, 50 * Bench.MILLI, 0.1);
        bench.cargo = Cargo.from(End.NEAR, List.of(500L));
        double chance = PascalDistribution.of(50, 0.8 * 0.9).survivalProbability(overs - 1 - 50);
        return new Tail("stop-and-wait of 50 frames takes " + overs + " overs", bench, overs, chance);
    }

    /** A file of one frame, sent whole again until it is through: loss to the power of the overs before. */
    private static Tail restart(int overs) {
        Bench bench = bench();
        bench.dataRates = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, 0.5));
        bench.cargo = Cargo.from(End.NEAR, List.of(10L));
        return new Tail(
                "a file sent anew until it is through takes " + overs + " overs",
                bench,
                overs,
                Math.pow(0.5, overs - 1));
    }

    private static Bench bench() {
        Bench bench = new Bench();
        bench.scheme = ArqScheme.STOP_AND_WAIT;
        bench.window = 1;
        bench.shortOver = 1;
        bench.longOver = 1;
        bench.silencesToLost = 1000;
        return bench;
    }
}
