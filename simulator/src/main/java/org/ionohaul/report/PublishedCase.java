package org.ionohaul.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.CaseAnswer;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.CauseTime;
import org.ionohaul.analysis.Comparison;
import org.ionohaul.analysis.DeadlineAnswer;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.SavedTime;
import org.ionohaul.analysis.Side;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.session.Cause;
import org.ionohaul.statistics.Estimate;

/** One transfer in one direction, as {@code summary.json} has it. */
record PublishedCase(
        String transfer,
        long totalBytes,
        List<PayloadFile> files,
        Direction direction,
        List<String> bestFirst,
        Leading leaders,
        List<DeadlineLeading> deadlineLeaders,
        Answer answer,
        Decision verdict,
        List<PublishedMode> modes,
        List<Pair> comparisons,
        List<Pair> otherPairs,
        List<PublishedSpread> spreads) {
    /** The modes that can't be told apart at the head. */
    record Leading(List<String> modes, Optional<Double> alikeWithinShare, Optional<Double> alikeWithinSeconds) {
        static Leading of(Leaders leaders, CaseSummary summary) {
            return new Leading(
                    names(summary, leaders.modes()),
                    leaders.alike().map(Alike::share),
                    leaders.alike().map(Alike::seconds));
        }
    }

    /** Those for one deadline. */
    record DeadlineLeading(double deadlineSeconds, Leading leaders) {}

    /** The case's row in the answer grid. */
    record Answer(List<ByDeadline> byDeadline, String plannedMode, OptionalDouble ninthPlanSeconds) {
        static Answer of(CaseAnswer answer) {
            return new Answer(
                    answer.deadlines().stream().map(ByDeadline::of).toList(),
                    answer.planned().name(),
                    answer.plan().seconds());
        }
    }

    /** One place in that row. */
    record ByDeadline(double deadlineSeconds, List<String> modes, double share, double safeShare) {
        static ByDeadline of(DeadlineAnswer answer) {
            return new ByDeadline(
                    answer.deadlineSeconds(),
                    answer.modes().stream().map(Mode::name).toList(),
                    answer.share(),
                    answer.safeShare());
        }
    }

    /** What decides between the best mode and the next. */
    record Decision(
            Verdict.Reason reason,
            Optional<Cause> cause,
            Optional<Double> savedSeconds,
            Optional<Double> leadSeconds,
            boolean causeIsMost,
            boolean clear,
            Verdict.Standing standing,
            String moreArrives,
            String usuallyFirst,
            String sentence) {
        /** Where more arrives, no cause of lost time decides; where there is no next mode, no time is saved. */
        static Decision of(CaseSummary summary) {
            Verdict verdict = summary.verdict();
            Optional<SavedTime> saved = verdict.saved();
            return new Decision(
                    verdict.reason(),
                    saved.map(SavedTime::cause).or(verdict::most).map(CauseTime::cause),
                    saved.map(it -> it.cause().meanSeconds()),
                    saved.map(SavedTime::leadSeconds),
                    saved.map(SavedTime::isMostOfLead).orElse(false),
                    summary.leaders().isSole(),
                    verdict.standing(),
                    side(verdict.moreArrives()),
                    side(verdict.usuallyFirst()),
                    VerdictWords.sentences(summary));
        }

        /** The first of the two is the best mode. */
        private static String side(Side side) {
            return switch (side) {
                case FIRST -> "best";
                case SECOND -> "next";
                case NEITHER -> "neither";
            };
        }
    }

    /** Two modes, trial by trial. */
    record Pair(
            String first,
            String second,
            int firstBefore,
            int secondBefore,
            int atOnce,
            int neither,
            Estimate firstBeforeShare,
            Estimate medianLeadSeconds,
            double signTestP,
            double varianceRatio,
            OptionalInt firstFurthestAheadTrial,
            OptionalInt secondFurthestAheadTrial,
            Optional<PublishedSky.DifferBy> differBy) {
        static Pair of(Comparison pair, Optional<Difference> difference) {
            return new Pair(
                    pair.first(),
                    pair.second(),
                    pair.firstBefore().hits(),
                    pair.secondBefore().hits(),
                    pair.atOnce().hits(),
                    pair.neither().hits(),
                    pair.firstBeforeShare(),
                    pair.medianLeadSeconds(),
                    pair.signPValue(),
                    pair.varianceRatio(),
                    pair.firstFurthestAhead(),
                    pair.secondFurthestAhead(),
                    difference.map(PublishedSky.DifferBy::of));
        }
    }

    static PublishedCase of(Findings findings, int index) {
        CaseSummary summary = findings.summary().cases().get(index);
        List<Double> deadlines = summary.transfer().deadlinesSeconds();
        List<Optional<Difference>> differences = findings.skies().cases().get(index);
        List<Pair> pairs = IntStream.range(0, summary.pairs().size())
                .mapToObj(i -> Pair.of(summary.pairs().get(i), differences.get(i)))
                .toList();
        int ofBest = summary.comparisons().size();
        return new PublishedCase(
                summary.transfer().name(),
                summary.transfer().totalBytes(),
                summary.transfer().files(),
                summary.direction(),
                names(summary, summary.ranking()),
                Leading.of(summary.leaders(), summary),
                IntStream.range(0, summary.deadlineLeaders().size())
                        .mapToObj(i -> new DeadlineLeading(
                                deadlines.get(i),
                                Leading.of(summary.deadlineLeaders().get(i), summary)))
                        .toList(),
                Answer.of(CaseAnswer.of(summary)),
                Decision.of(summary),
                summary.modes().stream().map(PublishedMode::of).toList(),
                pairs.subList(0, ofBest),
                pairs.subList(ofBest, pairs.size()),
                PublishedSpread.all(summary, findings.spreads().get(index)));
    }

    private static List<String> names(CaseSummary summary, List<Integer> modes) {
        return modes.stream().map(it -> summary.modes().get(it).mode().name()).toList();
    }
}
