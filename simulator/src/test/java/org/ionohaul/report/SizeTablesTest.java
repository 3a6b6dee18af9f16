package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.LongStream;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.ProvenLead;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeComparison;
import org.ionohaul.analysis.SizeComparison.Lead;
import org.ionohaul.analysis.SizeComparison.Reading;
import org.ionohaul.scenario.Direction;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;

/** What is said of two modes over file sizes: no more than was found. */
final class SizeTablesTest {
    private static final Reading NOT_READ = new Reading(new DiscordantPairs(0, 0), new Estimate(0, 0, 0));
    private static final List<Lead> LEADS = LongStream.of(1000, 2000, 5000, 10_000, 20_000, 50_000)
            .mapToObj(it -> new Lead(it, true, NOT_READ, NOT_READ))
            .toList();

    @Test
    void whereTheOrderCantBeToldTheSentenceSaysSo() {
        assertEquals(
                "hare is usually through first with files of 2 kB to 5 kB, tortoise with files of 20 kB; they change"
                        + " places at about 11 kB (8 kB to 15 kB). Which is first with files smaller than 2 kB or larger"
                        + " than 20 kB can't be told beyond chance.",
                sentence(
                        List.of(new ProvenLead("hare", 2000, 5000), new ProvenLead("tortoise", 20_000, 20_000)),
                        List.of(new Crossing("hare", "tortoise", new Estimate(11_000, 8000, 15_000)))));
    }

    @Test
    void twoChangesOfPlacesAreToldInTurn() {
        assertEquals(
                "hare is usually through first with files of 1 kB to 2 kB, tortoise with files of 5 kB to 10 kB, hare"
                        + " again with files of 20 kB to 50 kB; they change places at about 3 kB (2.5 kB to 4 kB) and at"
                        + " about 15 kB (12 kB to 18 kB).",
                sentence(
                        List.of(
                                new ProvenLead("hare", 1000, 2000),
                                new ProvenLead("tortoise", 5000, 10_000),
                                new ProvenLead("hare", 20_000, 50_000)),
                        List.of(
                                new Crossing("hare", "tortoise", new Estimate(3000, 2500, 4000)),
                                new Crossing("tortoise", "hare", new Estimate(15_000, 12_000, 18_000)))));
    }

    @Test
    void withoutACrossingNothingIsSaidToChange() {
        assertEquals(
                "Whatever the size, no mode that is ahead falls behind another beyond chance.",
                sentence(List.of(new ProvenLead("hare", 1000, 2000)), List.of()));
    }

    private static String sentence(List<ProvenLead> proven, List<Crossing> crossings) {
        SizeComparison pair = new SizeComparison("hare", "tortoise", LEADS, proven, crossings);
        return SizeTables.crossings(new SizeAnswers(Direction.UPLOAD, 60, List.of(), List.of(pair)))
                .get(0);
    }
}
