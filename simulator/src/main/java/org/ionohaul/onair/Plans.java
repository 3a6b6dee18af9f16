package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedOdds;
import org.ionohaul.statistics.SignTestStops;

/**
 * Looks for ways to find the better of two modes with a chance asked for, by procedures that seldom cry wolf. What was
 * simulated as a whole counts as it came out; where rounds meet skies of their own, larger numbers of runs are worked out from
 * the chances of a round. A plan errs on the safe side: the lower end of what it may achieve is the chance asked for.
 */
public final class Plans {
    /** Most runs of each mode that anyone is taken to make. */
    public static final int FEASIBLE_RUNS_EACH = 200;

    private final RunFindings findings;
    private final double power;
    private final double longestEveningSeconds;
    private final int better;

    private Plans(RunFindings findings, int better, double power, double longestEveningSeconds) {
        this.findings = findings;
        this.better = better;
        this.power = power;
        this.longestEveningSeconds = longestEveningSeconds;
    }

    /**
     * Returns plans, that with the least time on the air first; none if no better mode can be told, or none of two is found with
     * any feasible number of runs.
     *
     * @param power chance asked for that the better mode is named, above 0, below 1
     * @param longestEveningSeconds how long an evening may be
     */
    public static List<Plan> of(RunFindings findings, double power, double longestEveningSeconds) {
        OptionalInt better = findings.truth().better();
        return better.isEmpty()
                ? List.of()
                : new Plans(findings, better.getAsInt(), power, longestEveningSeconds).ranked();
    }

    private List<Plan> ranked() {
        List<Plan> plans = new ArrayList<>();
        for (int size : sizes()) {
            for (RunOrder order : RunOrder.values()) {
                plans.addAll(simulated(size, order));
                if (order.isOverEvenings() && findings.question().modes().size() == 2) {
                    plans.addAll(workedOut(size, order));
                }
            }
        }
        return plans.stream()
                .filter(it -> it.eveningSeconds() <= longestEveningSeconds)
                .sorted(Comparator.comparingDouble(Plan::airSeconds))
                .toList();
    }

    /** Files of other sizes for which another mode is better, or none, would be another question. */
    private List<Integer> sizes() {
        return IntStream.range(0, findings.sizes().size())
                .filter(it -> findings.truths()
                        .get(it)
                        .better()
                        .equals(findings.truth().better()))
                .boxed()
                .toList();
    }

    private List<Plan> simulated(int size, RunOrder order) {
        // Over evenings, paired rounds are worked out for any number.
        Stream<Rule> rules = order.isOverEvenings() ? Stream.of(Rule.UNPAIRED) : Stream.of(Rule.PAIRED, Rule.UNPAIRED);
        return rules.flatMap(rule -> RunQuestion.RUNS_EACH.stream()
                        .flatMap(runs -> findings.find(new Design(size, order, runs)).stream())
                        .filter(it -> isGood(it.by(rule)))
                        .findFirst()
                        .map(it -> plan(it, rule))
                        .stream())
                .toList();
    }

    private boolean isGood(RuleResult result) {
        return result.naming(better).low() >= power
                && result.falseAlarm().value() <= findings.question().errorRate();
    }

    private Plan plan(DesignResult result, Rule rule) {
        int runs = result.design().runsEach();
        return new Plan(
                result.design().size(),
                result.design().order(),
                rule == Rule.PAIRED ? Plan.Way.PAIRED : Plan.Way.UNPAIRED,
                runs,
                runs,
                result.by(rule).naming(better),
                result.by(rule).falseAlarm(),
                result.airSeconds(),
                result.eveningSeconds(),
                result.evenings(),
                false);
    }

    private List<Plan> workedOut(int size, RunOrder order) {
        return findings.find(new Design(size, order, RunQuestion.MOST_RUNS_EACH)).stream()
                .filter(it -> share(it).low() > 0.5)
                .flatMap(it -> Stream.concat(afterAll(it).stream(), stopping(it).stream()))
                .toList();
    }

    private Optional<Plan> afterAll(DesignResult round) {
        double errorRate = findings.question().errorRate();
        double decided = round.odds(better, 1 - better).decided();
        OptionalInt needed = odds(decided, share(round).low()).pairsNeeded(errorRate, power, FEASIBLE_RUNS_EACH);
        if (needed.isEmpty()) {
            return Optional.empty();
        }
        int runs = needed.getAsInt();
        return Optional.of(plan(
                round,
                Plan.Way.PAIRED,
                runs,
                runs,
                right(round, it -> odds(decided, it).named(runs, errorRate)),
                2 * odds(decided, 0.5).named(runs, errorRate)));
    }

    /** Looks for the smallest number of rounds, by halving: power rises with it but for small steps. */
    private Optional<Plan> stopping(DesignResult round) {
        double safe = share(round).low();
        int low = 0;
        int high = FEASIBLE_RUNS_EACH;
        if (named(high, safe) < power) {
            return Optional.empty();
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (named(middle, safe) < power) {
                low = middle;
            } else {
                high = middle;
            }
        }
        SignTestStops stops = SignTestStops.atSafeLead(high, findings.question().errorRate());
        double decided = round.odds(better, 1 - better).decided();
        return Optional.of(plan(
                round,
                Plan.Way.STOPPING,
                (int) Math.ceil(high / decided),
                stops.chances(share(round).value()).meanPairs() / decided,
                right(round, it -> stops.chances(it).first()),
                stops.chances(0.5).named()));
    }

    private double named(int rounds, double firstWins) {
        return SignTestStops.atSafeLead(rounds, findings.question().errorRate())
                .chances(firstWins)
                .first();
    }

    private static PairedOdds odds(double decided, double firstOfDecided) {
        return new PairedOdds(decided * firstOfDecided, decided * (1 - firstOfDecided));
    }

    /** Returns how often the better mode wins a round that either wins. */
    private Estimate share(DesignResult round) {
        return RoundsNeeded.of(round, better, 1 - better, findings.question().errorRate())
                .share();
    }

    /** Carries the uncertainty of a round's odds on to a chance that rises with them. */
    private Estimate right(DesignResult round, DoubleUnaryOperator chance) {
        Estimate share = share(round);
        return new Estimate(
                chance.applyAsDouble(share.value()),
                chance.applyAsDouble(share.low()),
                chance.applyAsDouble(share.high()));
    }

    private static Plan plan(
            DesignResult round, Plan.Way way, int runs, double meanRuns, Estimate right, double falseAlarm) {
        double tried = round.design().runsEach();
        return new Plan(
                round.design().size(),
                round.design().order(),
                way,
                runs,
                meanRuns,
                right,
                new Estimate(falseAlarm, falseAlarm, falseAlarm),
                meanRuns / tried * round.airSeconds(),
                // Of one round, or of one run: nearly that of the longest of some.
                round.eveningSeconds(),
                (int) Math.round(runs / tried * round.evenings()),
                true);
    }
}
