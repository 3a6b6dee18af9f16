package org.ionohaul.trial;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.net.Net;
import org.ionohaul.net.NetEther;
import org.ionohaul.net.NetRules;
import org.ionohaul.net.RadioConversations;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.waveform.Emission;

/**
 * All trials of a net, each built afresh from its number: they may run in any order and on any thread.
 *
 * <p>The first station has the sky and the chance that it would have in a pair alone; every other one has its own. What
 * disturbs the gateway is the same for all.
 */
public final class NetTrials {
    /** SNR in 3 kHz from which a station that listens hears another, in dB. */
    public static final double AUDIBLE_DB = ModeWiring.OCCUPIED_OVER_FLOOR_DB;

    private final NetScenario scenario;
    private final NetRules rules;
    private final List<ModeWiring> wirings;
    private final List<Integer> groups;

    /** Prepares what the trials of a net have in common. */
    public NetTrials(NetScenario scenario) {
        this.scenario = scenario;
        rules = scenario.rules();
        groups = scenario.groupOfStations();
        wirings = scenario.groups().stream()
                .map(group -> new ModeWiring(group.pair(), scenario.mode()))
                .toList();
    }

    /** Runs a trial, zero or more. */
    public NetTrial run(long trial) {
        return run(trial, false);
    }

    /**
     * Runs a trial, zero or more.
     *
     * @param keepsAir whether every burst is kept, for a picture
     */
    public NetTrial run(long trial, boolean keepsAir) {
        return run(trial, keepsAir, new NetSkies(scenario, new TrialStreams(scenario.seed(), trial), passband()));
    }

    /** Runs a trial under its skies. */
    NetTrial run(long trial, boolean keepsAir, NetSkies skies) {
        TrialStreams streams = new TrialStreams(scenario.seed(), trial);
        Engine engine = new Engine();
        List<ModeSpec> specs = wirings.stream().map(ModeWiring::spec).toList();
        int[] sessions = new int[groups.size()];
        RadioConversations conversations = new RadioConversations(
                engine,
                rules.gateway(),
                (call, cargo, ether, trace) -> {
                    int station = Math.max(call.caller(), call.called());
                    int group = groups.get(station);
                    return wirings.get(group)
                            .parts(
                                    specs.get(group),
                                    call.caller() == Net.GATEWAY ? End.FAR : End.NEAR,
                                    skies.of(station),
                                    wirings.get(group).chances(skies.streams(station), sessions[station]++),
                                    rules.operator(call.caller()).callsInARow(),
                                    cargo,
                                    ether,
                                    trace);
                },
                new NetEther(skies, Decibels.toRatio(AUDIBLE_DB), densityRatio()),
                Nanos.of(scenario.warmUpSeconds()),
                Nanos.of(scenario.horizonSeconds()),
                keepsAir);
        Net net = new Net(rules, engine, conversations, streams);
        long horizonNanos = Nanos.of(scenario.horizonSeconds());
        List<NetTrial.Message> messages = new ArrayList<>();
        net.run(horizonNanos).forEach(letter -> messages.add(NetTrial.Message.of(letter, horizonNanos)));
        return new NetTrial(
                messages,
                conversations.occupiedNanos(),
                conversations.collidedNanos(),
                conversations.toBusyGatewayNanos(),
                conversations.calls(),
                conversations.refusals(),
                conversations.cutOff(),
                conversations.spans());
    }

    private Passband passband() {
        return scenario.mode().emission().passband();
    }

    /** A burst puts its mean power into its own band. */
    private double densityRatio() {
        Emission emission = scenario.mode().emission();
        return Decibels.toRatio(-emission.crestFactorDb()) * Reception.NOISE_BANDWIDTH_HZ / emission.bandwidthHz();
    }
}
