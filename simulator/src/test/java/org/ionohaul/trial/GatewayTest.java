package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.ionohaul.net.AirSpan;
import org.junit.jupiter.api.Test;

/** The gateway keeps to its rules on the air: two stations call it that don't hear each other. */
final class GatewayTest {
    private static final long SECOND = 1_000_000_000L;

    /** Station Two writes ten seconds after station One, into its session. */
    private static final QuietNet NET = new QuietNet(
            "patient-climber", Map.of("group.1.message.1.size", "12 kB", "group.2.message.1.at", "[\"10 s\"]"));

    private static NetTrial.Message message(NetTrial trial, int station) {
        return trial.messages().stream()
                .filter(it -> it.station() == station)
                .findFirst()
                .orElseThrow();
    }

    private static List<AirSpan> sent(NetTrial trial, int from, int to) {
        return trial.spans().stream()
                .filter(it -> it.from() == from && it.to() == to)
                .toList();
    }

    private static boolean areAtOnce(List<AirSpan> some, List<AirSpan> others) {
        return some.stream()
                .anyMatch(one -> others.stream()
                        .anyMatch(it -> it.fromNanos() < one.untilNanos() && one.fromNanos() < it.untilNanos()));
    }

    @Test
    void whoCallsABusyGatewayIsNotAnsweredUntilTheOtherHasGone() {
        NetTrial trial = NET.trial();
        NetTrial.Message first = message(trial, 1);
        NetTrial.Message second = message(trial, 2);
        assertTrue(first.isDelivered() && second.isDelivered());
        assertEquals(1, first.calls());
        assertTrue(second.calls() > 1 && second.begunNanos() > first.deliveredNanos(), second::toString);
        List<AirSpan> inVain =
                trial.spans().stream().filter(AirSpan::isToBusyGateway).toList();
        assertEquals(second.calls() - 1, inVain.size());
        assertTrue(trial.refusals() > 0 && trial.refusals() <= inVain.size(), "some were lost in the other's bursts");
        assertEquals(
                inVain.stream()
                        .mapToLong(it -> it.untilNanos() - it.fromNanos())
                        .sum(),
                trial.toBusyGatewayNanos());
        long lastWordToFirst =
                sent(trial, 0, 1).stream().mapToLong(AirSpan::untilNanos).max().orElseThrow();
        long firstWordToSecond = sent(trial, 0, 2).get(0).fromNanos();
        assertTrue(firstWordToSecond > lastWordToFirst);
    }

    @Test
    void whatIsOnTheAirAtOnceIsCountedOnce() {
        NetTrial trial = NET.with("horizon", "1 min").trial();
        double occupied = 0;
        double collided = 0;
        // A clock of milliseconds over all that was sent.
        for (long at = 500_000; at < 60 * SECOND; at += 1_000_000) {
            long now = at;
            long onAir = trial.spans().stream()
                    .filter(it -> it.fromNanos() <= now && now < it.untilNanos())
                    .count();
            occupied += onAir >= 1 ? 1 : 0;
            collided += onAir >= 2 ? 1 : 0;
        }
        assertTrue(collided > 0);
        double ends = 2.0 * trial.spans().size();
        assertEquals(occupied, trial.occupiedNanos() * 1e-6, ends, "each end may be a millisecond off");
        assertEquals(collided, trial.collidedNanos() * 1e-6, ends);
    }

    @Test
    void onlyWhatIsOnTheAirAfterTheWarmUpCounts() {
        NetTrial whole = NET.trial();
        NetTrial late = NET.with("warm-up", "30 s").trial();
        assertEquals(whole.spans(), late.spans(), "the same happens");
        long before = whole.spans().stream()
                .filter(it -> it.from() == 1)
                .mapToLong(it -> Math.max(0, Math.min(30 * SECOND, it.untilNanos()) - it.fromNanos()))
                .sum();
        assertTrue(before > 5 * SECOND && late.occupiedNanos() <= whole.occupiedNanos() - before);
    }

    /** What takes longer than two minutes goes in several calls of two: the next one goes on where the last was cut off. */
    @Test
    void aSessionEndsAtItsLimitAndTheNextOneGoesOn() {
        QuietNet large = NET.with("group.1.message.1.size", "60 kB").with("group.2.message.1.at", "[\"19 min\"]");
        NetTrial unlimited = large.trial();
        NetTrial limited = large.with("gateway.session-limit", "120 s").trial();
        double needed = message(unlimited, 1).seconds();
        assertTrue(unlimited.cutOff() == 0 && needed > 125 && needed < 240, "took " + needed);
        NetTrial.Message cut = message(limited, 1);
        assertTrue(limited.cutOff() > 0 && cut.isDelivered() && cut.calls() > 1, cut::toString);
        List<AirSpan> answers = sent(limited, 0, 1);
        long limitNanos = answers.get(0).fromNanos() + 120 * SECOND;
        AirSpan last = answers.stream()
                .filter(it -> it.fromNanos() <= limitNanos)
                .reduce((one, next) -> next)
                .orElseThrow();
        AirSpan next = answers.get(answers.indexOf(last) + 1);
        assertTrue(next.fromNanos() - last.untilNanos() > 20 * SECOND, "silent until called anew");
    }

    /** Station One hears nothing, so that the gateway answers it in vain; station Two calls half a minute later. */
    @Test
    void aCallerWhoIsNotHeardIsHeldForAsLongAsTheGatewaysRule() {
        QuietNet deaf = NET.with("group.1.snr", "-40 dB")
                .with("group.1.operators.redial", "15 min")
                .with("group.2.message.1.at", "[\"30 s\"]");
        NetTrial usual = deaf.trial();
        NetTrial brief = deaf.with("gateway.idle-limit", "20 s").trial();
        assertFalse(message(usual, 1).isDelivered());
        assertTrue(usual.refusals() > 0 && message(usual, 2).calls() > 1, "held for station One");
        assertEquals(0, brief.refusals());
        assertEquals(1, message(brief, 2).calls(), "free again");
    }

    /** Station One is on the first channel, on which the radio stays for a minute, then on the other. */
    @Test
    void aScanningGatewayHearsOnlyTheChannelItIsOn() {
        QuietNet scanned = NET.with("gateway.channels", "2").with("gateway.dwell", "60 s");
        assertTrue(message(scanned.trial(), 1).begunNanos() < 10 * SECOND);
        NetTrial missed = scanned.with("group.1.message.1.at", "[\"65 s\"]")
                .with("group.2.message.1.at", "[\"19 min\"]")
                .trial();
        NetTrial.Message late = message(missed, 1);
        assertTrue(late.begunNanos() >= 120 * SECOND && late.calls() > 1, late::toString);
        NetTrial changed = scanned.with("group.1.message.1.at", "[\"65 s\"]")
                .with("group.2.message.1.at", "[\"19 min\"]")
                .with("operators.changes-channel", "true")
                .trial();
        assertTrue(message(changed, 1).begunNanos() < 110 * SECOND, "finds it on the other channel");
        assertTrue(changed.spans().stream().anyMatch(it -> it.channel() == 1));
    }

    @Test
    void withARadioForEachChannelTwoAreServedAtOnce() {
        QuietNet two = NET.with("group.1.message.1.size", "60 kB")
                .with("gateway.channels", "2")
                .with("operators.changes-channel", "true");
        NetTrial each = two.with("gateway.radio-each", "true").trial();
        assertTrue(areAtOnce(sent(each, 1, 0), sent(each, 0, 2)) || areAtOnce(sent(each, 1, 0), sent(each, 2, 0)));
        assertTrue(message(each, 2).deliveredNanos() < message(each, 1).deliveredNanos());
        NetTrial one = two.trial();
        assertTrue(message(one, 2).begunNanos() > message(one, 1).deliveredNanos(), "one radio serves one");
    }

    @Test
    void mailForAStationGoesInItsCallOrTheGatewayCalls() {
        QuietNet mail = NET.with("group.2.message.1.direction", "download");
        assertFalse(message(mail.trial(), 2).isDelivered(), "it never calls");
        NetTrial called = mail.with("gateway.calls", "true").trial();
        assertTrue(message(called, 2).isDelivered());
        assertEquals(
                0,
                called.spans().stream()
                        .filter(it -> it.from() == 2 || it.to() == 2)
                        .findFirst()
                        .orElseThrow()
                        .from());
    }
}
