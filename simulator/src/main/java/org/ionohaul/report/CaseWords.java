package org.ionohaul.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Comparison;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.CaseTrials;

/** What is said about a case in plain words. */
final class CaseWords {
    /** From so many trials on, the largest bounds the 95 % quantile with 95 % confidence (Wilks). */
    private static final int FEWEST_TO_PLAN = 59;

    /** The trial to plan for: of twenty, the slowest but one. */
    private static final double PLANNED = 0.95;

    private CaseWords() {}

    /** Returns what is sent, such as {@code Photo: flood.jpg, 64 kB; roster.txt, 2 kB}. */
    static String heading(Transfer transfer) {
        return capital(transfer.name()) + ": "
                + transfer.files().stream().map(CaseWords::file).collect(Collectors.joining("; "));
    }

    /** Returns a file and its size, such as {@code flood.jpg, 64 kB}. */
    static String file(PayloadFile file) {
        return file.name() + ", " + SizeText.size(file.bytes());
    }

    /** Returns which way it goes, such as {@code from Watch post to Desk}. */
    static String route(Scenario scenario, CaseSummary summary) {
        return route(scenario, summary.direction());
    }

    static String route(Scenario scenario, Direction direction) {
        return "from " + station(scenario, direction.sender()) + " to " + station(scenario, direction.receiver());
    }

    private static String station(Scenario scenario, End end) {
        return scenario.station(end).name();
    }

    /**
     * Returns the sentence that answers the question: how soon, how surely, with which mode, and what to plan for.
     *
     * @param summary what the case comes to
     * @param trials its trials
     */
    static String answer(CaseSummary summary, CaseTrials trials) {
        ModeSummary best = summary.best();
        String mode = best.mode().title();
        double ninth = best.ninthSeconds().value();
        String what = "the " + summary.transfer().name();
        if (Double.isFinite(ninth)) {
            return "About 9 of 10 trials " + what + " is through within " + TimeText.plan(ninth) + " with " + mode
                    + (best.trials() < FEWEST_TO_PLAN
                            ? ". Too few trials were simulated to plan by."
                            : plan(
                                    TimeText.plan(ninth),
                                    completion(summary, trials).quantile(PLANNED)));
        }
        if (best.delivered().value() == 0) {
            return "On none of " + SizeText.grouped(best.trials()) + " simulated trials was " + what
                    + " through, with any mode.";
        }
        return "Even with " + mode + ", the best, " + what + " is through on only about "
                + OddsText.odds(best.delivered().value()) + " trials; have another way ready.";
    }

    private static String plan(String ninth, double seconds) {
        if (!Double.isFinite(seconds)) {
            return "; on the others it may not get through at all, so have another way ready.";
        }
        String plan = TimeText.plan(seconds);
        return plan.equals(ninth)
                ? ", and so it is on 19 of 20."
                : "; plan for " + plan + ", which 19 of 20 trials keep.";
    }

    private static OrderedSample completion(CaseSummary summary, CaseTrials trials) {
        return OrderedSample.of(trials.modes().get(summary.ranking().get(0)).completionSeconds());
    }

    /** Returns what each deadline comes to with the best mode for it; deadlines that come to the same are one sentence. */
    static List<String> deadlines(CaseSummary summary) {
        Map<String, List<String>> deadlinesByChance = new LinkedHashMap<>();
        for (int i = 0; i < summary.transfer().deadlinesSeconds().size(); i++) {
            String deadline = "within "
                    + TimeText.given(summary.transfer().deadlinesSeconds().get(i));
            deadlinesByChance
                    .computeIfAbsent(chance(summary, i), it -> new ArrayList<>())
                    .add(deadline);
        }
        return deadlinesByChance.entrySet().stream()
                .map(it -> capital(String.join(" and ", it.getValue())) + ": " + it.getKey())
                .toList();
    }

    private static String chance(CaseSummary summary, int deadline) {
        ModeSummary best = summary.best();
        for (ModeSummary mode : summary.modes()) {
            if (share(mode, deadline) > share(best, deadline)) {
                best = mode;
            }
        }
        return OddsText.simulated(best.deadlines().get(deadline).chance()) + " trials, with "
                + best.mode().title() + ".";
    }

    static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String uncapital(String text) {
        return Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    private static double share(ModeSummary mode, int deadline) {
        return mode.deadlines().get(deadline).chance().value();
    }

    /** Returns how the best mode fares against the next under the same sky; empty if there is no next. */
    static Optional<String> pair(CaseSummary summary) {
        return summary.comparisons().stream().findFirst().map(pair -> {
            String share = OddsText.simulated(pair.firstBeforeShare());
            String next = summary.modes().get(summary.ranking().get(1)).mode().title();
            return "Under the same sky " + summary.best().mode().title() + " is through before " + next + " on " + share
                    + " trials ("
                    + OddsText.percentRange(
                            pair.firstBeforeShare().low(),
                            pair.firstBeforeShare().high())
                    + " with 95 % confidence)" + lead(pair.medianLeadSeconds().value()) + "."
                    + worth(pair.varianceRatio());
        });
    }

    /**
     * Returns when each pair of modes differs most, a sentence a pair; nothing of a mode that never gets through.
     *
     * @param pairs how many of {@link CaseSummary#pairs()}, from the first
     */
    static List<String> differences(
            Scenario scenario, CaseSummary summary, List<Optional<Difference>> differences, int pairs) {
        Map<String, String> titles = summary.modes().stream()
                .filter(it -> it.delivered().value() > 0)
                .collect(
                        Collectors.toMap(it -> it.mode().name(), it -> it.mode().title()));
        List<String> sentences = new ArrayList<>();
        for (int i = 0; i < Math.min(pairs, differences.size()); i++) {
            Comparison pair = summary.pairs().get(i);
            if (!titles.keySet().containsAll(List.of(pair.first(), pair.second()))) {
                continue;
            }
            String first = titles.getOrDefault(pair.first(), "");
            String second = titles.getOrDefault(pair.second(), "");
            String when = differences
                    .get(i)
                    .map(it -> new DifferenceWords(scenario, summary.direction(), it, first, second).sentence())
                    .orElse("No measure of the sky tells on which trials they differ most.");
            sentences.add(pairs == 1 ? when : first + " and " + second + ": " + uncapital(when));
        }
        return sentences;
    }

    /** What common random numbers are worth; nothing if it can't be told. */
    private static String worth(double varianceRatio) {
        return varianceRatio > 0
                ? String.format(
                        Locale.ROOT,
                        " Where both get through, one trial under a common sky tells as much of their difference as"
                                + " %.1f under skies of their own (variance ratio %.2f).",
                        1 / varianceRatio,
                        varianceRatio)
                : "";
    }

    private static String lead(double seconds) {
        if (!Double.isFinite(seconds)) {
            return "";
        }
        String time = TimeText.clock(Math.abs(seconds));
        return ", on the median one " + (seconds < 0 ? time + " later" : "by " + time);
    }

    static String outcome(Outcome outcome) {
        return switch (outcome) {
            case CLOSED -> "delivered, closed";
            case CONFIRMED_NOT_CLOSED -> "delivered, hang-up not heard";
            case DELIVERED_UNCONFIRMED -> "delivered, sender not told";
            case GAVE_UP -> "gave up";
            case RUNNING -> "still running at the end";
        };
    }
}
