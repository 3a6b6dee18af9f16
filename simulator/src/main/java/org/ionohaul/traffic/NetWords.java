package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ionohaul.net.Access;
import org.ionohaul.net.Discipline;
import org.ionohaul.net.Order;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.statistics.Estimate;

/** What is found of a net, in sentences. */
record NetWords(NetFindings findings) {
    static final String RANGES =
            "Written: messages a trial. In ...: the share through within that time, of those written early enough to be watched"
                    + " for it. Ranges hold the true number in 95 of 100 studies, if the model and its inputs hold; they count"
                    + " trials, not messages, since those of a trial share its luck.";

    static final String BOUND = "In turn, the gateway is taken to know at no cost who has what: a bound, not a plan.";

    /** Returns what was simulated. */
    String basis() {
        NetScenario scenario = findings.scenario();
        int channels = scenario.gateway().channels();
        return String.format(
                Locale.ROOT,
                "%s, 1 gateway, %s, mode %s; %s. %,d trials of %s, seed %d.%s",
                counted(scenario.stations(), "station"),
                counted(channels, "channel")
                        + (channels > 1 ? scenario.gateway().hasRadioEach() ? " with a radio each" : " scanned" : ""),
                scenario.mode().title(),
                discipline(scenario.discipline()),
                findings.trialsDone(),
                TimeText.given(scenario.horizonSeconds()),
                scenario.seed(),
                scenario.warmUpSeconds() > 0
                        ? " Messages of the first " + TimeText.given(scenario.warmUpSeconds()) + " don't count."
                        : "");
    }

    static String discipline(Discipline discipline) {
        String order = switch (discipline.order()) {
            case FIRST_COME -> "first come, first served";
            case PRIORITY -> "the most urgent first";
            case SHORT_FIRST -> "short messages first";
        };
        return switch (discipline.access()) {
            case FREE ->
                "anybody calls who finds it clear" + (discipline.order() == Order.FIRST_COME ? "" : ", " + order);
            case ROSTER ->
                "a roster of " + TimeText.given(discipline.slotNanos() * 1e-9) + " each"
                        + (discipline.order() == Order.FIRST_COME ? "" : ", " + order);
            case IN_TURN -> "the gateway names who is next, " + order;
        };
    }

    /** Returns the answer. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        findings.through()
                .ifPresent(it -> sentences.add("Of all messages " + odds(it) + " are through when the "
                        + TimeText.given(findings.scenario().horizonSeconds()) + " end. "
                        + backlog()));
        sentences.add("Somebody is on the air " + share(findings.occupied()) + " of the time"
                + (findings.scenario().gateway().channels() > 1 ? " on a channel" : "") + ", two or more at once "
                + share(findings.collided()) + ". Calls to a gateway that works another station take "
                + share(findings.toBusyGateway()) + "; it hears and can't answer "
                + number(findings.refusedPerTrial()) + " of them a trial. Calls begun a trial: "
                + number(findings.callsPerTrial()) + "."
                + (findings.cutOffPerTrial().value() > 0
                        ? " Sessions broken off at the limit: " + number(findings.cutOffPerTrial()) + " a trial."
                        : ""));
        sentences.add(String.format(
                Locale.ROOT,
                "Fairness over the stations (Jain's index of their shares of messages through; 1 if all fare alike): %.2f"
                        + " (%.2f to %.2f).",
                findings.fairness().value(),
                findings.fairness().low(),
                findings.fairness().high()));
        if (findings.scenario().discipline().access() == Access.IN_TURN) {
            sentences.add(BOUND);
        }
        return sentences;
    }

    private String backlog() {
        Backlog backlog = findings.backlog();
        String verdict = switch (backlog.verdict()) {
            case PILES_UP -> "Messages pile up";
            case KEEPS_UP -> "The net keeps up";
            case OPEN -> "Whether the net keeps up is open";
        };
        return verdict + ": half-way " + number(backlog.atMiddle()) + " wait, at the end " + number(backlog.atEnd())
                + "."
                + " Of what is called for, "
                + (backlog.leftBehind().value() > 0
                        ? percent(backlog.leftBehind()) + " of the second half is left behind"
                        : "nothing of the second half is left behind")
                + "; a net at its limit would leave "
                + percent(backlog.leftBehind().value() - backlog.beyondLimit().value()) + ".";
    }

    /** A share that may be below nothing. */
    private static String percent(Estimate share) {
        return percent(share.value())
                + (Double.isFinite(share.high() - share.low())
                        ? String.format(Locale.ROOT, " (%.0f to %.0f %%)", 100 * share.low(), 100 * share.high())
                        : "");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    static String number(Estimate estimate) {
        return Double.isInfinite(estimate.high())
                ? String.format(Locale.ROOT, "%.1f", estimate.value())
                : String.format(Locale.ROOT, "%.1f (%.1f to %.1f)", estimate.value(), estimate.low(), estimate.high());
    }

    private static String odds(Estimate share) {
        return OddsText.odds(share.value()) + " (" + OddsText.percentRange(share.low(), share.high()) + ")";
    }

    static String share(Estimate share) {
        return OddsText.percent(share.value()) + " (" + OddsText.percentRange(share.low(), share.high()) + ")";
    }

    private static String counted(int count, String what) {
        return count == 1 ? "1 " + what : count + " " + what + "s";
    }
}
