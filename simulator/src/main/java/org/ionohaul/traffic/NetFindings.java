package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ionohaul.net.Access;
import org.ionohaul.net.MessageKind;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.StationGroup;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.trial.NetTrial;

/**
 * What many trials of a net come to. Every interval is of independent replications (trials), at 95 %.
 *
 * @param scenario the net
 * @param trialsDone how many trials it rests on
 * @param kinds how each kind of message fares, in the order of the file
 * @param through the share of all messages that is through at the end; empty if none was written
 * @param occupied share of the time that somebody is on the air, a channel
 * @param collided share of the time that two or more are at once
 * @param toBusyGateway share of the time that somebody calls a gateway that works another station
 * @param callsPerTrial calls begun a trial
 * @param refusedPerTrial calls that a busy gateway heard and did not answer, a trial
 * @param cutOffPerTrial sessions it broke off at its limit, a trial
 * @param fairness Jain's index of the stations' shares of messages through (R. Jain, D. Chiu and W. Hawe, "A quantitative measure of
 *     fairness and discrimination", DEC TR-301, 1984): 1 if all fare alike, 1 / stations if one has it all
 * @param backlog how many messages wait, and whether they pile up
 */
public record NetFindings(
        NetScenario scenario,
        int trialsDone,
        List<KindFindings> kinds,
        Optional<Estimate> through,
        Estimate occupied,
        Estimate collided,
        Estimate toBusyGateway,
        Estimate callsPerTrial,
        Estimate refusedPerTrial,
        Estimate cutOffPerTrial,
        Estimate fairness,
        Backlog backlog) {
    private static final double MANY = Double.POSITIVE_INFINITY;

    /** Copies the list. */
    public NetFindings {
        kinds = List.copyOf(kinds);
    }

    /** Works out what trials come to, at least one. */
    public static NetFindings of(NetScenario scenario, List<NetTrial> trials) {
        double channelNanos = 1e9
                * (scenario.horizonSeconds() - scenario.warmUpSeconds())
                * scenario.gateway().channels();
        Tally tally = new Tally(scenario, trials);
        return new NetFindings(
                scenario,
                trials.size(),
                kinds(tally),
                tally.share(it -> true, it -> it.isDelivered() ? 1 : 0, 0, 1),
                tally.mean(it -> it.occupiedNanos() / channelNanos, 1),
                tally.mean(it -> it.collidedNanos() / channelNanos, 1),
                tally.mean(it -> Math.min(channelNanos, (double) it.toBusyGatewayNanos()) / channelNanos, 1),
                tally.mean(NetTrial::calls, MANY),
                tally.mean(NetTrial::refusals, MANY),
                tally.mean(NetTrial::cutOff, MANY),
                tally.mean(it -> fairness(scenario, it), 1),
                Backlog.of(
                        trials,
                        it -> isCalledFor(scenario, it.kind()),
                        scenario.warmUpSeconds(),
                        scenario.horizonSeconds()));
    }

    private static boolean isCalledFor(NetScenario scenario, MessageKind kind) {
        return !kind.isForStation()
                || scenario.gateway().calls()
                || scenario.discipline().access() == Access.IN_TURN;
    }

    private static List<KindFindings> kinds(Tally tally) {
        List<KindFindings> kinds = new ArrayList<>();
        for (StationGroup group : tally.scenario().groups()) {
            for (MessageKind kind : group.kinds()) {
                kinds.add(tally.kind(group, kind));
            }
        }
        return kinds;
    }

    /** A station for which nothing was written is left out. */
    private static double fairness(NetScenario scenario, NetTrial trial) {
        double[] written = new double[scenario.stations() + 1];
        double[] through = new double[scenario.stations() + 1];
        for (NetTrial.Message message : trial.messages()) {
            written[message.station()]++;
            through[message.station()] += message.isDelivered() ? 1 : 0;
        }
        double[] shares = IntStream.range(0, written.length)
                .filter(it -> written[it] > 0)
                .mapToDouble(it -> through[it] / written[it])
                .toArray();
        double sum = 0;
        double squares = 0;
        for (double share : shares) {
            sum += share;
            squares += share * share;
        }
        return squares > 0 ? sum * sum / (shares.length * squares) : 1;
    }

    /** The trials, and sums over them. */
    private record Tally(NetScenario scenario, List<NetTrial> trials) {
        double[] each(ToDoubleFunction<NetTrial> of) {
            return trials.stream().mapToDouble(of).toArray();
        }

        Estimate mean(ToDoubleFunction<NetTrial> of, double most) {
            return RatioOfSums.mean(each(of)).within(0, most);
        }

        /** Returns the mean over all messages that count and are of a sort. */
        Optional<Estimate> share(
                Predicate<NetTrial.Message> which, ToDoubleFunction<NetTrial.Message> of, double least, double most) {
            RatioOfSums ratio = new RatioOfSums(
                    each(trial -> counted(trial, which).stream().mapToDouble(of).sum()),
                    each(trial -> counted(trial, which).size()));
            return ratio.exists() ? Optional.of(ratio.within(least, most)) : Optional.empty();
        }

        private List<NetTrial.Message> counted(NetTrial trial, Predicate<NetTrial.Message> which) {
            long fromNanos = Math.round(1e9 * scenario.warmUpSeconds());
            return trial.messages().stream()
                    .filter(it -> it.writtenNanos() >= fromNanos && which.test(it))
                    .toList();
        }

        KindFindings kind(StationGroup group, MessageKind kind) {
            Predicate<NetTrial.Message> isOfKind = it -> it.kind().equals(kind);
            Predicate<NetTrial.Message> isThrough = it -> isOfKind.test(it) && it.isDelivered();
            MessageTimes times = new MessageTimes(
                    trials.stream()
                            .map(trial ->
                                    trial.messages().stream().filter(isOfKind).toList())
                            .toList(),
                    scenario.warmUpSeconds(),
                    scenario.horizonSeconds());
            return new KindFindings(
                    group,
                    kind,
                    times.writtenPerTrial(),
                    times.quantile(0.5),
                    times.quantile(0.9),
                    kind.deadlinesSeconds().stream()
                            .map(times::within)
                            .map(it -> it.exists() ? Optional.of(it.within(0, 1)) : Optional.<Estimate>empty())
                            .toList(),
                    share(isOfKind, it -> it.isDelivered() ? 1 : 0, 0, 1),
                    share(isOfKind, it -> it.givenUpNanos() < NetTrial.NEVER ? 1 : 0, 0, 1),
                    share(isThrough, NetTrial.Message::waitSeconds, 0, MANY),
                    share(isThrough, it -> it.seconds() - it.waitSeconds(), 0, MANY),
                    share(isOfKind, NetTrial.Message::calls, 0, MANY));
        }
    }
}
