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
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SafeTime;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Estimate;

/** What is said about a case in plain words. */
final class CaseWords {
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
     * Returns the sentences that answer the question: what to plan for, with which mode, and how surely that holds. They
     * lead with the safe end, see {@link SafeTime}.
     *
     * @param summary what the case comes to
     */
    static String answer(CaseSummary summary) {
        ModeSummary best = summary.best();
        String what = "the " + summary.transfer().name();
        if (summary.modes().stream().allMatch(it -> it.delivered().value() == 0)) {
            return "On none of " + SizeText.grouped(best.trials()) + " simulated trials was " + what
                    + " through, with any mode.";
        }
        if (isReached(best.plan())) {
            return plan(what, best, with(summary));
        }
        if (isReached(best.ninthPlan())) {
            return "On at least 9 of 10 trials " + what + " is through within " + time(best.ninthPlan()) + " with "
                    + with(summary) + "; " + noPlan(best.plan());
        }
        return Double.isFinite(best.ninthSeconds().value())
                ? "On about 9 of 10 simulated trials " + what + " is through within "
                        + TimeText.plan(best.ninthSeconds().value()) + " with "
                        + with(summary) + "; " + noPlan(best.plan())
                : "Even with " + with(summary) + ", " + what + " is through on only about "
                        + OddsText.odds(best.delivered().value()) + " trials; have another way ready.";
    }

    /** The mode planned with; it is not named as if it stood alone where it does not. */
    private static String with(CaseSummary summary) {
        List<String> others = summary.leaders().modes().stream()
                .skip(1)
                .map(it -> summary.modes().get(it).mode().title())
                .toList();
        String best = summary.best().mode().title();
        if (others.isEmpty()) {
            return best;
        }
        return summary.verdict().standing() == Verdict.Standing.MIXED
                ? best + " (or " + LeaderWords.or(others) + ": see below)"
                : best + " (" + LeaderWords.and(others) + " can't be told apart from it)";
    }

    private static String plan(String what, ModeSummary best, String with) {
        String plan = time(best.plan());
        String ninth = time(best.ninthPlan());
        return "Plan for " + plan + " with " + with + ": on at least 19 of 20 trials " + what
                + " is through by then"
                + (ninth.equals(plan) ? "." : ", and on at least 9 of 10 within " + ninth + ".");
    }

    private static String noPlan(SafeTime plan) {
        return plan.seconds().isEmpty()
                ? "too few trials were simulated to plan by: " + plan.fewestTrials() + " are needed."
                : "on the others it may not get through at all, so have another way ready.";
    }

    private static boolean isReached(SafeTime time) {
        return Double.isFinite(time.seconds().orElse(Double.POSITIVE_INFINITY));
    }

    private static String time(SafeTime time) {
        return TimeText.plan(time.seconds().orElseThrow());
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
        if (summary.modes().stream().allMatch(it -> share(it, deadline).value() == 0)) {
            return "none of the simulated trials, with any mode.";
        }
        Leaders leaders = summary.deadlineLeaders().get(deadline);
        ModeSummary first = summary.modes().get(leaders.first());
        Estimate share = share(first, deadline);
        List<String> others = leaders.modes().stream()
                .skip(1)
                .map(it -> summary.modes().get(it).mode().title())
                .toList();
        return OddsText.simulated(share) + " trials (" + OddsText.percentRange(share.low(), share.high()) + "), with "
                + first.mode().title()
                + leaders.alike()
                        .map(it -> "; " + LeaderWords.others(others, it))
                        .orElse("")
                + ".";
    }

    static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String uncapital(String text) {
        return Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    private static Estimate share(ModeSummary mode, int deadline) {
        return mode.deadlines().get(deadline).chance();
    }

    /**
     * Returns how the best mode fares against the next under the same sky, wins, losses and ties together; empty if there
     * is no next.
     */
    static Optional<String> pair(CaseSummary summary) {
        return summary.comparisons().stream()
                .findFirst()
                .filter(it -> it.firstBefore().hits() + it.secondBefore().hits() > 0)
                .map(pair -> {
                    String next = summary.next().mode().title();
                    return "Under the same sky " + summary.best().mode().title() + " is first on "
                            + OddsText.percent(pair.firstBefore().share()) + " of trials ("
                            + OddsText.percentRange(
                                    pair.firstBeforeShare().low(),
                                    pair.firstBeforeShare().high())
                            + "), " + next + " on "
                            + OddsText.percent(pair.secondBefore().share())
                            + at("both at once", pair.atOnce().share())
                            + at("neither at all", pair.neither().share()) + "." + lead(pair)
                            + worth(pair.varianceRatio());
                });
    }

    private static String at(String what, double share) {
        return share == 0 ? "" : ", " + what + " on " + OddsText.percent(share);
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
                                + " %.1f under skies of their own.",
                        1 / varianceRatio)
                : "";
    }

    /** Trials on which neither gets through have no lead. */
    private static String lead(Comparison pair) {
        Estimate lead = pair.medianLeadSeconds();
        if (!Double.isFinite(lead.value())) {
            return "";
        }
        int neither = pair.neither().hits();
        return " Its median lead is " + TimeText.signed(lead.value()) + TimeText.inBrackets(lead.low(), lead.high())
                + (neither == 0
                        ? "."
                        : "; left out " + (neither == 1 ? "is" : "are") + " the " + SizeText.grouped(neither)
                                + (neither == 1 ? " trial" : " trials") + " without both.");
    }

    static String outcome(Outcome outcome) {
        return switch (outcome) {
            case CLOSED -> "delivered, closed";
            case CONFIRMED_NOT_CLOSED -> "delivered, hang-up not heard";
            case DELIVERED_UNCONFIRMED -> "delivered, sender not told";
            case DELIVERED_WRONG -> "delivered wrong, unnoticed";
            case GAVE_UP -> "gave up";
            case RUNNING -> "still running at the end";
        };
    }
}
