package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/** What is said of runs on the air in plain words. */
final class RunsWords {
    /** What the numbers mean. */
    static final String READING =
            "Right: the truly better mode is named. Wrong: another is. False alarms: a mode is named that was compared with"
                    + " itself under two names, each mode in its turn; by chance alone a test may do so on 5 of 100."
                    + " A run that never gets through counts as longer than any other. A round is one run of each mode. Runs later"
                    + " in a sitting meet a later sky and answer for that: where the sky changes, they may be right about the"
                    + " start by accident.";

    /** What the ranges mean, and what they do not know. */
    static final String RANGES =
            "Ranges are made to hold the true value in about 95 of 100 such computations (Wilson's for chances, order"
                    + " statistics for medians), as far as chance in the simulation goes; of a wrong guess in the scenario they"
                    + " know nothing. Days differ as its trials do: what the scenario states as uncertain is drawn anew for"
                    + " each.";

    private static final double MINUTE = 60;

    private final RunAnswer answer;
    private final RunFindings findings;
    private final RunQuestion question;
    private final Truth truth;

    RunsWords(RunAnswer answer) {
        this.answer = answer;
        this.findings = answer.findings();
        this.question = findings.question();
        this.truth = findings.truth();
    }

    String heading() {
        return CaseName.all(question.scenario(), Set.of()).stream()
                .filter(it ->
                        it.transfer().equals(question.transfer().name()) && it.direction() == question.direction())
                .findFirst()
                .orElseThrow()
                .heading();
    }

    String basis() {
        return partial()
                + SizeText.grouped(findings.trialsDone()) + " comparisons of each kind, seed "
                + question.scenario().seed() + "; the truth from " + SizeText.grouped(truth.trials())
                + " trials. First run at " + clock() + ", then " + TimeText.given(question.gapSeconds())
                + " between runs. "
                + IntStream.range(0, question.modes().size())
                        .mapToObj(it -> letter(it) + ": " + name(it))
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** Returns how exact the chances of brief tables are. */
    String exactness() {
        Estimate widest = new Proportion(findings.trialsDone() / 2, findings.trialsDone()).wilson(Estimate.CONFIDENCE);
        return String.format(
                Locale.ROOT,
                "Chances are within %.0f points of the true ones on 95 of 100 such occasions; runs.html has the range of"
                        + " each.",
                Math.ceil(50 * (widest.high() - widest.low())));
    }

    private String partial() {
        return findings.isPartial()
                ? "PARTIAL: interrupted after " + SizeText.grouped(findings.trialsDone()) + " of "
                        + SizeText.grouped(question.comparisons()) + " comparisons. "
                : "";
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(truthSentence());
        sentences.add(oneRunEach());
        sentences.add(goingFirst());
        sentences.add(planSentence());
        sentences.addAll(otherQuestions());
        return sentences;
    }

    private String truthSentence() {
        String figures = IntStream.range(0, question.modes().size())
                .mapToObj(it -> figure(it) + " with " + name(it))
                .collect(Collectors.joining(", "));
        if (!truth.isBetter()) {
            return "Which mode is truly better at " + clock() + " can't be told: " + criterion() + " " + figures
                    + truth.lead()
                            .map(it -> "; they differ by " + amount(furthest(it)) + " at most")
                            .orElse("")
                    + ". More --trials tell more than any number of runs on the air; until then, a name that comes out of runs is"
                    + " luck.";
        }
        return "Truly better at " + clock() + ": " + name(truth.leader()) + "; " + criterion() + " " + figures
                + ". It is ahead by "
                + truth.lead().map(this::range).orElseThrow() + ".";
    }

    private static double furthest(Estimate lead) {
        return Math.max(Math.abs(lead.low()), Math.abs(lead.high()));
    }

    private String criterion() {
        return question.criterion().deadlineSeconds().isPresent()
                ? "within "
                        + TimeText.given(question.criterion().deadlineSeconds().getAsDouble()) + " are through"
                : "5 of 10 runs are through within";
    }

    private String figure(int mode) {
        return range(truth.figures().get(mode));
    }

    private String range(Estimate figure) {
        if (Double.isInfinite(figure.value())) {
            return "never";
        }
        return amount(figure.value()) + " ("
                + (Double.isInfinite(figure.low()) ? "no limit" : amount(figure.low())) + " to "
                + (Double.isInfinite(figure.high()) ? "never" : amount(figure.high())) + ")";
    }

    private String amount(double figure) {
        if (Double.isInfinite(figure)) {
            return "any time";
        }
        return question.criterion().deadlineSeconds().isPresent()
                ? String.format(Locale.ROOT, "%.0f %%", 100 * figure)
                : TimeText.signed(figure);
    }

    private String oneRunEach() {
        RuleResult inOrder = findings.result(RunOrder.TAKING_TURNS, 1).by(Rule.BARE);
        RuleResult reversed = findings.result(RunOrder.TURNS_REVERSED, 1).by(Rule.BARE);
        int last = question.modes().size() - 1;
        return "One run each, " + name(0) + " first: " + outcome(inOrder) + ". With " + name(last) + " first: "
                + outcome(reversed) + ". Each at " + clock() + " on a day of its own: "
                + outcome(findings.result(RunOrder.RUN_AN_EVENING, 1).by(Rule.BARE)) + ".";
    }

    private String outcome(RuleResult result) {
        int mode = truth.leader();
        return name(mode) + " comes out ahead on " + occasions(result.naming(mode)) + ", "
                + (question.modes().size() == 2 ? name(1 - mode) : "another") + " on "
                + OddsText.odds(result.namingOther(mode).value());
    }

    private static String occasions(Estimate chance) {
        return OddsText.odds(chance.value()) + " occasions (" + OddsText.percentRange(chance.low(), chance.high())
                + ")";
    }

    /** One mode under all names: what is above a fair share is the order's doing. */
    private String goingFirst() {
        Estimate first = findings.result(RunOrder.TAKING_TURNS, 1).by(Rule.BARE).selfNaming(0);
        double fair = 1.0 / question.modes().size();
        String told = "A mode that runs first is ahead of its own later run on " + occasions(first) + ": ";
        if (first.low() > fair) {
            return told + "going first helps, and one run each mixes that with merit.";
        }
        return first.high() < fair
                ? told + "going first harms, and one run each mixes that with merit."
                : told + "who goes first makes no difference that can be told.";
    }

    /** Says of which smaller files the same mode is not better: they are over sooner, but settle something else. */
    private List<String> otherQuestions() {
        List<String> others = IntStream.range(1, findings.sizes().size())
                .filter(it ->
                        truth.isBetter() && !findings.truths().get(it).better().equals(truth.better()))
                .mapToObj(it -> sent(findings.sizes().get(it))
                        + (findings.truths().get(it).isBetter()
                                ? " (" + name(findings.truths().get(it).leader()) + " is better)"
                                : " (it can't be told which is better)"))
                .toList();
        return others.isEmpty()
                ? List.of()
                : List.of(
                        "Smaller files are over sooner, but are another question: " + String.join(", ", others) + ".");
    }

    private String planSentence() {
        if (!truth.isBetter()) {
            return "No plan: as far as these trials tell, there is no better mode to find.";
        }
        return IntStream.range(0, RunAnswer.POWERS.size())
                .mapToObj(it ->
                        planSentence(RunAnswer.POWERS.get(it), answer.plans().get(it)))
                .collect(Collectors.joining(" "));
    }

    private String planSentence(double power, List<Plan> plans) {
        String aim = "To name it with a chance of at least " + OddsText.odds(power);
        if (plans.isEmpty()) {
            return aim + ", no plan will do that has at most " + Plans.FEASIBLE_RUNS_EACH
                    + " runs of each mode, sittings of at most " + TimeText.given(answer.longestEveningSeconds())
                    + " and few false alarms: that is an answer, too. The difference is too small, or too much mixed with"
                    + " the sitting's own course, to be settled on the air; decide by something else.";
        }
        Plan plan = plans.get(0);
        return aim + ": " + runs(plan) + " of " + sent(plan) + " with each mode (" + order(plan.order()) + "), told by "
                + way(plan.way()) + ": " + TimeText.given(MINUTE * Math.ceil(plan.airSeconds() / MINUTE))
                + " on the air on "
                + (plan.evenings() == 1 ? "one day, whose later runs meet a later sky." : plan.evenings() + " days.");
    }

    static String runs(Plan plan) {
        return plan.way() == Plan.Way.STOPPING
                ? "at most " + plan.runsEach() + " runs (" + Math.round(plan.meanRunsEach()) + " in the mean)"
                : plan.runsEach() == 1 ? "1 run" : plan.runsEach() + " runs";
    }

    String sent(Plan plan) {
        return sent(findings.sizes().get(plan.size()));
    }

    static String sent(Transfer transfer) {
        return SizeText.size(transfer.totalBytes());
    }

    /** Returns how better is told. */
    String way(Plan.Way way) {
        return switch (way) {
            case PAIRED -> "the paired test";
            case UNPAIRED -> "the unpaired test";
            case STOPPING -> "stopping at a safe lead";
        };
    }

    /** Returns what a rule looks at. */
    String rule(Rule rule) {
        boolean isDeadline = question.criterion().deadlineSeconds().isPresent();
        return switch (rule) {
            case BARE -> isDeadline ? "more runs in time" : "the sooner median";
            case PAIRED -> isDeadline ? "McNemar's test" : "the sign test over rounds";
            case UNPAIRED -> isDeadline ? "Fisher's test" : "the rank test";
        };
    }

    static String stop(Stop stop) {
        return switch (stop) {
            case FOUR_OF_FOUR -> "after 4 of 4";
            case ANY_ROUND -> "test every round";
            case SAFE_LEAD -> "at a safe lead";
        };
    }

    /** Returns an order in words or, on one evening, letters. */
    String order(RunOrder order) {
        return switch (order) {
            case IN_A_ROW, TAKING_TURNS, TURNS_REVERSED, MIRRORED -> letters(order);
            case BY_LOT -> "rounds by lot";
            case ROUND_AN_EVENING -> "round a day";
            case RUN_AN_EVENING -> "run a day";
        };
    }

    private String letters(RunOrder order) {
        return order.evenings(question.modes().size(), 3, Comparisons.lot(0, 0)).get(0).stream()
                .map(RunsWords::letter)
                .collect(Collectors.joining(" "));
    }

    static String letter(int mode) {
        return String.valueOf((char) ('A' + mode));
    }

    String name(int mode) {
        return question.modes().get(mode).title();
    }

    String clock() {
        long minutes = Math.round(answer.startClockSeconds() / 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60 % 24, minutes % 60);
    }
}
