package org.ionohaul.scenario;

import java.util.List;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.net.MessageKind;
import org.ionohaul.net.NetRules;
import org.ionohaul.net.OperatorRules;

/**
 * Stations alike in a net.
 *
 * @param count how many, 1 or more
 * @param pair one of them and the gateway as they would be alone: sky, stations, mode
 * @param operator how its operators go about calls
 * @param kinds the messages written at each of them and for it
 */
public record StationGroup(int count, Scenario pair, OperatorRules operator, List<MessageKind> kinds) {
    /** Copies the list and checks the count. */
    public StationGroup {
        kinds = List.copyOf(kinds);
        OutOfRange.unless(
                count >= 1 && count <= NetRules.MOST_STATIONS, "count", "must be from 1 to 500 stations", count);
    }

    /** Returns what people call them. */
    public String name() {
        return pair.near().name();
    }
}
