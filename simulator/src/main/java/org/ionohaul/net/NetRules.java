package org.ionohaul.net;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/**
 * Everything by which a net runs, but for the sky and the mode.
 *
 * @param members the stations, the first being number 1
 * @param gateway how the gateway works its channels
 * @param gatewayOperator how the gateway goes about calls of its own
 * @param discipline what they have agreed on
 */
public record NetRules(
        List<Member> members, GatewayRules gateway, OperatorRules gatewayOperator, Discipline discipline) {
    /** More than any frequency has ever carried. */
    public static final int MOST_STATIONS = 500;

    /**
     * A station.
     *
     * @param operator how it goes about calls
     * @param kinds the messages that are written at it and for it
     */
    public record Member(OperatorRules operator, List<MessageKind> kinds) {
        /** Copies the list. */
        public Member {
            kinds = List.copyOf(kinds);
        }
    }

    /** Copies the list and checks that it is not too long. */
    public NetRules {
        members = List.copyOf(members);
        OutOfRange.unless(
                !members.isEmpty() && members.size() <= MOST_STATIONS,
                "members",
                "must be from 1 to 500 stations",
                members.size());
    }

    /** Returns a station from 1 on. */
    Member member(int station) {
        return members.get(station - 1);
    }

    /** Returns the rules of whoever calls, the gateway being number 0. */
    public OperatorRules operator(int place) {
        return place == Net.GATEWAY ? gatewayOperator : member(place).operator();
    }

    /** Returns how many callers can be served at once. */
    int radios() {
        return gateway.hasRadioEach() ? gateway.channels() : 1;
    }
}
