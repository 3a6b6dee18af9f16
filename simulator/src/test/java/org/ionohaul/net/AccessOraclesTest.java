package org.ionohaul.net;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * With packets of the textbooks the medium, the ether and the stations must come to the textbooks' throughputs, an unlimited
 * number of stations assumed. Each number is the mean of 24 independent replications of 4000 packet lengths; it may be four
 * standard errors off.
 *
 * <p>Sources: Abramson, "The Aloha system" (1970) and Roberts (1975) for ALOHA, pure and slotted; Kleinrock and Tobagi, "Packet
 * switching in radio channels: part I", IEEE Trans. Commun. 23 (1975), for CSMA with a propagation of 0.01 packets; Tobagi and
 * Kleinrock, part II of the same, for hidden terminals: independent groups, of which each hears only itself. Without propagation
 * every group is by itself a renewal process, idle for 1/g and busy for one packet, and a packet gets through if no other group
 * is busy when it begins nor begins before it ends: S = sum of g / (1 + g) times (exp(-g) / (1 + g)) for each other group.
 */
final class AccessOraclesTest {
    private static final int REPLICATIONS = 24;
    private static final double PACKETS = 4_000;
    private static final double PROPAGATION = 0.01;

    private final List<String> rows = new ArrayList<>();

    @Test
    void theMediumMeetsTheTextbooksOfPacketRadio() {
        for (double load : new double[] {0.2, 0.5, 1}) {
            row("ALOHA", load, "Abramson 1970", load * Math.exp(-2 * load), PacketChannel.Rule.AT_ONCE, 0, 1);
        }
        for (double load : new double[] {0.3, 1, 2}) {
            row("slotted ALOHA", load, "Roberts 1975", load * Math.exp(-load), PacketChannel.Rule.AT_SLOT, 0, 1);
        }
        for (double load : new double[] {1, 3, 10}) {
            row(
                    "CSMA non-persistent a=0.01",
                    load,
                    "Kleinrock and Tobagi 1975",
                    nonPersistent(load, PROPAGATION),
                    PacketChannel.Rule.IF_IDLE,
                    PROPAGATION,
                    1);
        }
        for (double load : new double[] {0.5, 1, 2}) {
            row(
                    "CSMA 1-persistent a=0.01",
                    load,
                    "Kleinrock and Tobagi 1975",
                    onePersistent(load, PROPAGATION),
                    PacketChannel.Rule.WHEN_IDLE,
                    PROPAGATION,
                    1);
        }
        for (int groups : new int[] {2, 5}) {
            for (double load : new double[] {0.5, 2}) {
                row(
                        "CSMA non-persistent a=0 hidden groups " + groups,
                        load,
                        "Tobagi and Kleinrock 1975",
                        hidden(load, groups),
                        PacketChannel.Rule.IF_IDLE,
                        0,
                        groups);
            }
        }
        assertEquals(4 * 3 + 4, rows.size());
        NetOracles.assertHold(rows);
    }

    @Test
    void theBestOfAlohaIsOneOverTwoEAndOfSlottedAlohaOneOverE() {
        assertEquals(1 / (2 * Math.E), 0.5 * Math.exp(-2 * 0.5), 1e-15);
        assertEquals(1 / Math.E, 1 * Math.exp(-1), 1e-15);
        assertEquals(
                0.815,
                nonPersistent(9.9, PROPAGATION),
                0.0005,
                "capacity in table I of Kleinrock and Tobagi, from memory");
    }

    private static double nonPersistent(double load, double a) {
        return load * Math.exp(-a * load) / (load * (1 + 2 * a) + Math.exp(-a * load));
    }

    private static double onePersistent(double load, double a) {
        double numerator = load * (1 + load + a * load * (1 + load + a * load / 2)) * Math.exp(-load * (1 + 2 * a));
        return numerator
                / (load * (1 + 2 * a) - (1 - Math.exp(-a * load)) + (1 + a * load) * Math.exp(-load * (1 + a)));
    }

    private static double hidden(double load, int groups) {
        double own = load / groups;
        return groups * own / (1 + own) * Math.pow(Math.exp(-own) / (1 + own), groups - 1);
    }

    private void row(
            String oracle,
            double load,
            String source,
            double expected,
            PacketChannel.Rule rule,
            double propagation,
            int groups) {
        rows.add(NetOracles.row(
                oracle,
                String.format(Locale.ROOT, "throughput at G = %.1f", load),
                source,
                expected,
                REPLICATIONS,
                replication -> new PacketChannel(
                                rule, Math.round(propagation * PacketChannel.PACKET_NANOS), groups, 100 + replication)
                        .throughput(load, PACKETS)));
    }
}
