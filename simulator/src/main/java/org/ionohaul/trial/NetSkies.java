package org.ionohaul.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Sky;
import org.ionohaul.net.Audibility;
import org.ionohaul.net.Net;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.NetScenario;
import org.jspecify.annotations.Nullable;

/**
 * The skies of one trial of a net: one between each station and the gateway, made when somebody listens to it first, and the
 * levels at which stations hear each other, drawn when one first asks for the other and then kept for the trial. Belongs to one
 * thread.
 */
final class NetSkies implements Audibility {
    private static final long ODD = 0x9E3779B97F4A7C15L;
    private static final String OF_A_STATION = "group.";

    private final NetScenario scenario;
    private final TrialStreams streams;
    private final Passband passband;
    private final List<Integer> groups;
    private final long propagationNanos;
    private final @Nullable Path[] paths;
    private final double[][] between;

    /** What lies between a station and the gateway. */
    private record Path(Sky sky, Reception atStation, Reception atGateway) {}

    NetSkies(NetScenario scenario, TrialStreams streams, Passband passband) {
        this.scenario = scenario;
        this.streams = streams;
        this.passband = passband;
        groups = scenario.groupOfStations();
        propagationNanos = scenario.groups().get(0).pair().propagationNanos();
        paths = new @Nullable Path[groups.size()];
        between = new double[groups.size()][groups.size()];
        for (double[] row : between) {
            Arrays.fill(row, Double.NaN);
        }
    }

    /** Returns the sky between a station and the gateway. */
    Sky of(int station) {
        return path(station).sky();
    }

    /** Returns how many skies somebody has listened to. */
    int made() {
        return (int) Arrays.stream(paths).filter(Objects::nonNull).count();
    }

    /** Returns a station's own chance. */
    TrialStreams streams(int station) {
        return new TrialStreams(streams.seed() + ODD * (station - 1), streams.trial());
    }

    private Path path(int station) {
        Path path = paths[station];
        if (path == null) {
            Sky sky = new Sky(
                    scenario.groups().get(groups.get(station)).pair().sky().conditions(draws(station)),
                    streams(station),
                    streams);
            path = new Path(sky, sky.reception(End.NEAR, passband), sky.reception(End.FAR, passband));
            paths[station] = path;
        }
        return path;
    }

    /** What belongs to a group is drawn for each of its stations, all else once for all. */
    private Draws draws(int station) {
        Draws common = new UncertainDraws(streams);
        Draws own = new UncertainDraws(streams(station));
        return key -> (key.startsWith(OF_A_STATION) ? own : common).probability(key);
    }

    @Override
    public int stations() {
        return groups.size();
    }

    @Override
    public Reception reception(int from, int at) {
        return at == Net.GATEWAY ? path(from).atGateway() : path(at).atStation();
    }

    @Override
    public double meanSignal(int from, int at, long atNanos) {
        boolean isWithGateway = from == Net.GATEWAY || at == Net.GATEWAY;
        return isWithGateway
                ? reception(from, at).meanSignal(atNanos)
                : between(Math.min(from, at), Math.max(from, at));
    }

    private double between(int one, int other) {
        if (Double.isNaN(between[one][other])) {
            double probability = streams.open(Purpose.AUDIBILITY, one, other).nextDouble() + 0x1.0p-54;
            between[one][other] =
                    Decibels.toRatio(scenario.audibility().snrDb(groups.get(one), groups.get(other), probability));
        }
        return between[one][other];
    }

    @Override
    public long propagationNanos(int from, int at) {
        return propagationNanos;
    }

    @Override
    public boolean isOccupiedByOthers(int at, long fromNanos, long untilNanos) {
        int station = at == Net.GATEWAY ? 1 : at;
        return path(station)
                .sky()
                .isOccupied(
                        at == Net.GATEWAY ? End.FAR : End.NEAR,
                        fromNanos,
                        untilNanos,
                        ModeWiring.OCCUPIED_OVER_FLOOR_DB);
    }
}
