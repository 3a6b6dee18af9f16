package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** Expected numbers are reckoned by hand. */
final class VerdictWordsTest {
    private static String sentences(List<Double> deadlines, List<SessionResult> hare, List<SessionResult> tortoise) {
        CaseTrials trials = InventedStudy.oneCase(deadlines, List.of("hare", "tortoise"), List.of(hare, tortoise));
        StudyResult result = new StudyResult(
                InventedStudy.scenario(hare.size(), trials.transfer(), "hare", "tortoise"),
                List.of(trials),
                hare.size(),
                hare.size());
        return VerdictWords.sentences(StudySummary.of(result).cases().get(0));
    }

    private static List<SessionResult> trials(int count, IntFunction<SessionResult> trial) {
        return IntStream.range(0, count).mapToObj(trial).toList();
    }

    private static List<SessionResult> all(double seconds) {
        return trials(100, i -> InventedStudy.delivered(seconds));
    }

    @Test
    void whereMoreArrivesTheFailureIsNamedAndWhatItMakesOfTheLead() {
        assertEquals(
                "Tortoise beats Hare mostly because it gets through at all more often, on 100 % of trials against 80 %. That"
                        + " is 20 of 100 trials more; its lead in keeping the deadline is 30 of 100. When Hare fails, it"
                        + " loses its link and gives up (20 % of trials). Yet Hare is usually the sooner.",
                sentences(
                        List.of(300.0),
                        trials(
                                100,
                                i -> i < 20 ? InventedStudy.gaveUp(600) : InventedStudy.delivered(i < 30 ? 400 : 100)),
                        all(200)));
    }

    /** All but 5 s of each session are new payload. */
    @Test
    void whatSavesMostOfTheLeadIsNamedWithItsPart() {
        assertEquals(
                "Tortoise beats Hare mostly because it spends 3 min 20 s less a trial on new payload, 100 % of the 3 min 20 s by which"
                        + " its sessions are shorter (mean of the 100 trials on which both deliver).",
                sentences(List.of(300.0), all(400), all(200)));
    }

    /** 35 s of which dialling is 15 s, new payload 15 s and repeats 5 s. */
    @Test
    void whatSavesLessThanHalfOfTheLeadIsNotCalledMostOfIt() {
        assertEquals(
                "By how surely they deliver Tortoise and Hare can't be told apart; Tortoise is usually through first. Its"
                        + " sessions are shorter by 35 s (mean of the 100 trials on which both deliver), and no single thing"
                        + " makes most of that: the largest is 15 s less on dialling.",
                sentences(
                        List.of(),
                        trials(100, i -> InventedStudy.steady(60, 50, 2000)),
                        trials(100, i -> InventedStudy.steady(44.8, 100, 2000))));
    }

    /** No trial differs: twice the Bonett-Price reach of one pair in 102, at 1 - 0.05 / 2, is 3.1 points. */
    @Test
    void modesThatAreAlikeAreSaidToBeAlikeWithinSoMuch() {
        assertEquals(
                "Hare and Tortoise can't be told apart: by each deadline they are alike within 4 of 100 trials, and within"
                        + " 1 s on the median.",
                sentences(List.of(300.0), all(200), all(200)));
    }

    @Test
    void fewTrialsMayHideADifferenceAndThatIsSaid() {
        assertEquals(
                "Hare and Tortoise can't be told apart on so few trials: by each deadline they may differ by up to 27 of"
                        + " 100, and within 1 s on the median.",
                sentences(
                        List.of(300.0),
                        trials(10, i -> InventedStudy.delivered(200)),
                        trials(10, i -> InventedStudy.delivered(200))));
    }

    /** Quick keeps 5 min on 30 of 100 trials against 21, Tough 15 min on all against 90. */
    @Test
    void whereEachKeepsADeadlineMoreOftenThatIsSaid() {
        assertEquals(
                "Which of Tough and Quick is better depends on the deadline: Tough keeps 15 min more often, Quick keeps 5"
                        + " min more often.",
                VerdictWords.sentences(
                        StudySummary.of(FabricatedStudy.result()).cases().get(0)));
    }
}
