package org.ionohaul.traffic;

import java.util.List;
import java.util.Optional;
import org.ionohaul.net.MessageKind;
import org.ionohaul.scenario.StationGroup;
import org.ionohaul.statistics.Estimate;

/**
 * How the messages of one kind fare.
 *
 * @param group whose they are
 * @param kind which kind
 * @param writtenPerTrial how many are written a trial, of those that count
 * @param half the time from written to delivered that 5 of 10 keep, in seconds; infinite if not reached
 * @param nineOfTen the time that 9 of 10 keep
 * @param deadlines the chance to keep each deadline; empty where none could be watched
 * @param through the share that is through when the trial ends, of all that count
 * @param givenUp the share that was given up
 * @param waitSeconds mean time until the call that handed it over was answered, of those that are through
 * @param handOverSeconds mean time from then until it was delivered
 * @param calls mean number of calls in which it was to be handed over
 */
public record KindFindings(
        StationGroup group,
        MessageKind kind,
        double writtenPerTrial,
        Estimate half,
        Estimate nineOfTen,
        List<Optional<Estimate>> deadlines,
        Optional<Estimate> through,
        Optional<Estimate> givenUp,
        Optional<Estimate> waitSeconds,
        Optional<Estimate> handOverSeconds,
        Optional<Estimate> calls) {
    /** Copies the list. */
    public KindFindings {
        deadlines = List.copyOf(deadlines);
    }

    /** Returns what people call it; the group's name comes first where there are several. */
    public String name(boolean hasGroups) {
        return hasGroups ? group.name() + ": " + kind.name() : kind.name();
    }
}
