package org.ionohaul.report;

import java.util.Collection;
import java.util.List;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;

/**
 * What a case is called when some keys of its scenario are varied.
 *
 * @param what what is sent; without its files where they are varied
 * @param transfer its short name
 * @param direction which way it goes
 * @param route the same in words
 * @param deadlinesSeconds its deadlines at the first point
 */
public record CaseName(String what, String transfer, Direction direction, String route, List<Double> deadlinesSeconds) {
    private static final String OF_TRANSFERS = "transfer.";

    /** Copies the list. */
    public CaseName {
        deadlinesSeconds = List.copyOf(deadlinesSeconds);
    }

    /** Returns the cases of a scenario in its order. */
    public static List<CaseName> all(Scenario scenario, Collection<String> keysVaried) {
        boolean areFilesKnown = keysVaried.stream().noneMatch(it -> it.startsWith(OF_TRANSFERS));
        return scenario.transfers().stream()
                .flatMap(transfer -> transfer.directions().stream()
                        .map(direction -> of(scenario, transfer, direction, areFilesKnown)))
                .toList();
    }

    private static CaseName of(Scenario scenario, Transfer transfer, Direction direction, boolean areFilesKnown) {
        return new CaseName(
                areFilesKnown ? CaseWords.heading(transfer) : CaseWords.capital(transfer.name()),
                transfer.name(),
                direction,
                CaseWords.route(scenario, direction),
                transfer.deadlinesSeconds());
    }

    /** Returns all of it in one line. */
    public String heading() {
        return what + ", " + route;
    }
}
