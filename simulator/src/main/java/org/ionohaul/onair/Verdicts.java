package org.ionohaul.onair;

import java.util.List;

/**
 * What one comparison of each design came to. Arrays are filled while it is made and then left alone.
 *
 * @param modes how many modes were compared
 * @param named by design and rule, the mode that was named, or {@link Rule#NOBODY}
 * @param selfNamed the same where one mode was compared with itself
 * @param roundsWon by design and pair of modes, the rounds that the first won
 * @param airNanos by design, how long all sessions were together
 * @param eveningNanos by design, how long the longest evening was
 * @param stopNamed by design on which stopping is tried and way of stopping, the mode that was named
 * @param stopSelfNamed the same where one mode was compared with itself
 * @param stopRounds the rounds made until then
 */
record Verdicts(
        int modes,
        byte[] named,
        byte[] selfNamed,
        byte[] roundsWon,
        long[] airNanos,
        long[] eveningNanos,
        byte[] stopNamed,
        byte[] stopSelfNamed,
        byte[] stopRounds) {
    private static final List<Rule> RULES = List.of(Rule.values());
    private static final List<Stop> STOPS = List.of(Stop.values());

    static Verdicts none(Comparisons of) {
        int designs = of.designs().size();
        int stops = of.stopped().size() * STOPS.size();
        return new Verdicts(
                of.modes(),
                new byte[designs * RULES.size()],
                new byte[designs * RULES.size()],
                new byte[designs * of.modes() * of.modes()],
                new long[designs],
                new long[designs],
                new byte[stops],
                new byte[stops],
                new byte[stops]);
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
