package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.net.Discipline;
import org.ionohaul.net.GatewayRules;
import org.ionohaul.net.NetRules;
import org.ionohaul.net.OperatorRules;

/**
 * A net of stations and one gateway, as read and checked from a file.
 *
 * @param name the file's name without its ending
 * @param title one line that says what it is about
 * @param seed seed of all chance
 * @param trials how many trials to run
 * @param horizonSeconds how long a trial is watched, positive
 * @param clockSeconds time of day when it begins, in seconds since midnight
 * @param warmUpSeconds from when on messages count, zero or more, below the horizon
 * @param groups its stations, numbered from 1 through all groups
 * @param gateway how the gateway works its channels
 * @param gatewayOperator how it goes about calls of its own
 * @param discipline what all have agreed on
 * @param audibility how well stations hear each other, by the numbers of two groups
 */
public record NetScenario(
        String name,
        String title,
        long seed,
        int trials,
        double horizonSeconds,
        double clockSeconds,
        double warmUpSeconds,
        List<StationGroup> groups,
        GatewayRules gateway,
        OperatorRules gatewayOperator,
        Discipline discipline,
        Audibilities audibility) {
    /**
     * How well stations hear each other.
     *
     * @param snrDb SNR in 3 kHz at which two stations hear each other
     * @param between the same for pairs of some groups, by their numbers, the lower one first
     */
    public record Audibilities(Uncertain snrDb, Map<List<Integer>, Uncertain> between) {
        /** Copies the map. */
        public Audibilities {
            between = Map.copyOf(between);
        }

        /** Returns the SNR, in dB, at which stations of two groups hear each other, at a probability. */
        public double snrDb(int one, int other, double probability) {
            return between.getOrDefault(List.of(Math.min(one, other), Math.max(one, other)), snrDb)
                    .quantile(probability);
        }
    }

    /** Copies the list and checks the times. */
    public NetScenario {
        groups = List.copyOf(groups);
        OutOfRange.unless(
                warmUpSeconds >= 0 && warmUpSeconds < horizonSeconds,
                "warmUpSeconds",
                "must be shorter than the horizon",
                warmUpSeconds);
    }

    /** Returns how many stations there are besides the gateway. */
    public int stations() {
        return groups.stream().mapToInt(StationGroup::count).sum();
    }

    /** Returns the number of the group of each station, the gateway's being that of the first one. */
    public List<Integer> groupOfStations() {
        List<Integer> group = new ArrayList<>(List.of(0));
        for (int number = 0; number < groups.size(); number++) {
            group.addAll(Collections.nCopies(groups.get(number).count(), number));
        }
        return List.copyOf(group);
    }

    /** Returns what people call a station: its group's name, numbered if it is one of several; the gateway is number 0. */
    public String nameOf(int station) {
        if (station == 0) {
            return groups.get(0).pair().far().name();
        }
        int left = station;
        int number = 0;
        while (left > groups.get(number).count()) {
            left -= groups.get(number++).count();
        }
        StationGroup group = groups.get(number);
        return group.count() == 1 ? group.name() : group.name() + " " + left;
    }

    /** Returns everything by which it runs, but for sky and mode. */
    public NetRules rules() {
        List<NetRules.Member> members = new ArrayList<>();
        for (StationGroup group : groups) {
            members.addAll(Collections.nCopies(group.count(), new NetRules.Member(group.operator(), group.kinds())));
        }
        return new NetRules(members, gateway, gatewayOperator, discipline);
    }

    /** Returns the mode that all work. */
    public Mode mode() {
        return groups.get(0).pair().modes().get(0);
    }
}
