package org.ionohaul.onair;

import java.util.List;

/** What one comparison of each design came to. Its arrays are filled while it is made and then left alone. */
final class Verdicts {
    private static final List<Rule> RULES = List.of(Rule.values());
    private static final List<Stop> STOPS = List.of(Stop.values());

    private final int modes;
    private final byte[] named;
    private final byte[] selfNamed;
    private final byte[] roundsWon;
    private final long[] airNanos;
    private final long[] eveningNanos;
    private final byte[] stopNamed;
    private final byte[] stopSelfNamed;
    private final byte[] stopRounds;

    private Verdicts(int modes, int designs, int stops) {
        this.modes = modes;
        named = new byte[designs * RULES.size()];
        selfNamed = new byte[designs * RULES.size()];
        roundsWon = new byte[designs * modes * modes];
        airNanos = new long[designs];
        eveningNanos = new long[designs];
        stopNamed = new byte[stops];
        stopSelfNamed = new byte[stops];
        stopRounds = new byte[stops];
    }

    static Verdicts none(Comparisons of) {
        return new Verdicts(of.modes(), of.designs().size(), of.stopped().size() * STOPS.size());
    }

    /** Returns by design and rule, the mode that was named, or {@link Rule#NOBODY}. */
    byte[] named() {
        return named;
    }

    /** Returns the same where one mode was compared with itself. */
    byte[] selfNamed() {
        return selfNamed;
    }

    /** Returns by design and pair of modes, the rounds that the first won. */
    byte[] roundsWon() {
        return roundsWon;
    }

    /** Returns by design, how long all sessions were together. */
    long[] airNanos() {
        return airNanos;
    }

    /** Returns by design, how long the longest evening was. */
    long[] eveningNanos() {
        return eveningNanos;
    }

    /** Returns by design on which stopping is tried and way of stopping, the mode that was named. */
    byte[] stopNamed() {
        return stopNamed;
    }

    /** Returns the same where one mode was compared with itself. */
    byte[] stopSelfNamed() {
        return stopSelfNamed;
    }

    /** Returns the rounds made until then. */
    byte[] stopRounds() {
        return stopRounds;
    }

    int at(int design, Rule rule) {
        return design * RULES.size() + RULES.indexOf(rule);
    }

    int at(int stopped, Stop stop) {
        return stopped * STOPS.size() + STOPS.indexOf(stop);
    }

    int at(int design, int first, int second) {
        return (design * modes + first) * modes + second;
    }
}
