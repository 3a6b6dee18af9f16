package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.net.Access;
import org.ionohaul.net.Arrivals;
import org.ionohaul.net.GatewayRules;
import org.ionohaul.net.MessageKind;
import org.ionohaul.net.OperatorRules;
import org.ionohaul.net.Wait;
import org.ionohaul.picture.Scale;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.StationGroup;
import org.ionohaul.trial.NetTrials;

/** What the program understood of a net, in plain units, so that its author sees whether that was meant. */
public record NetSheet(NetScenario net) {
    private static final int WIDTH = 80;
    private static final int PAIRS_LOOKED_AT = 1000;
    private static final double SECONDS = 1e-9;
    private static final long DAY_MINUTES = 24 * 60;

    /** Returns the lines, of at most 80 columns. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, "", net.title());
        add(
                lines,
                "",
                "A trial begins at " + clock(0) + " and is watched for " + TimeText.given(net.horizonSeconds())
                        + ", until " + clock(net.horizonSeconds()) + "."
                        + (net.warmUpSeconds() > 0
                                ? " Messages of the first " + TimeText.given(net.warmUpSeconds()) + " don't count."
                                : ""));
        lines.add("");
        lines.add(net.nameOf(0) + " (the gateway)");
        add(lines, "  ", gateway());
        if (net.gateway().calls()) {
            add(lines, "  ", operator(net.gatewayOperator()));
        }
        for (StationGroup group : net.groups()) {
            lines.add("");
            addGroup(lines, group);
        }
        lines.add("");
        add(lines, "", "Discipline: " + NetWords.discipline(net.discipline()) + ".");
        add(lines, "", "Mode: " + net.mode().title() + ".");
        if (net.stations() > 1) {
            add(lines, "", hearing());
        }
        return lines;
    }

    private String gateway() {
        GatewayRules rules = net.gateway();
        String channels = rules.channels() == 1
                ? "one channel"
                : rules.channels() + " channels, "
                        + (rules.hasRadioEach()
                                ? "a radio for each"
                                : "scanned, " + time(rules.dwellNanos()) + " on each");
        return channels + "; a caller may keep it "
                + (rules.sessionLimitNanos() == Long.MAX_VALUE
                        ? "as long as it takes"
                        : "for " + time(rules.sessionLimitNanos()))
                + "; it lets go of one from whom it hears nothing "
                + (rules.idleNanos() == Long.MAX_VALUE ? "when the mode does" : "for " + time(rules.idleNanos()))
                + "; what it has for a station "
                + (net.discipline().access() == Access.IN_TURN
                        ? "goes when that station has its turn"
                        : rules.calls() ? "it calls for" : "waits until that station calls");
    }

    private void addGroup(List<String> lines, StationGroup group) {
        lines.add(group.count() == 1 ? group.name() : group.name() + ", " + group.count() + " of them");
        add(
                lines,
                "  ",
                "SNR: " + net.nameOf(0) + " is heard at "
                        + level(group, it -> it.near().snrDb()) + ", hears them at "
                        + level(group, it -> it.far().snrDb()));
        add(lines, "  ", operator(group.operator()));
        for (MessageKind kind : group.kinds()) {
            add(lines, "  ", message(kind));
        }
    }

    private static String level(StationGroup group, ToDoubleFunction<SkyConditions> which) {
        DoubleFunction<String> at = probability -> String.format(
                Locale.ROOT, "%.0f", which.applyAsDouble(group.pair().sky().conditions(key -> probability)));
        String low = at.apply(0.1);
        String high = at.apply(0.9);
        return at.apply(0.5) + " dB in the middle" + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    private static String operator(OperatorRules rules) {
        return "operators: listen for " + time(rules.listensNanos()) + ", hold off for " + wait(rules.holdOff())
                + ", call again after " + wait(rules.redial())
                + (rules.redialGrowth() > 1
                        ? String.format(Locale.ROOT, ", %.1f times as long each time", rules.redialGrowth())
                        : "")
                + (rules.changesChannel() ? ", on the next channel" : "")
                + ", give up after " + rules.mostCalls() + " calls in vain"
                + (rules.patienceNanos() == Long.MAX_VALUE
                        ? ""
                        : " or when it is " + time(rules.patienceNanos()) + " old");
    }

    private String message(MessageKind kind) {
        return "\"" + kind.name() + "\" " + (kind.isForStation() ? "for each" : "from each") + ", "
                + SizeText.about(kind.sizes().bytes(0.5)) + " in the middle ("
                + SizeText.about(kind.sizes().bytes(0.1))
                + " to " + SizeText.about(kind.sizes().bytes(0.9)) + "), " + arrivals(kind.arrivals()) + "; priority "
                + kind.priority()
                + (kind.deadlinesSeconds().isEmpty()
                        ? ""
                        : "; due in "
                                + kind.deadlinesSeconds().stream()
                                        .map(TimeText::given)
                                        .collect(Collectors.joining(" or ")));
    }

    private String arrivals(Arrivals arrivals) {
        if (arrivals instanceof Arrivals.Schedule schedule) {
            return "at " + schedule.atSeconds().stream().map(this::clock).collect(Collectors.joining(", "));
        } else if (arrivals instanceof Arrivals.AfterEvent event) {
            return "once within " + TimeText.given(event.withinSeconds()) + " after " + clock(event.atSeconds());
        } else if (arrivals instanceof Arrivals.WhenThrough pause) {
            return TimeText.given(pause.pauseSeconds()) + " after the last one was through, in the mean";
        }
        return Scale.number(((Arrivals.Poisson) arrivals).perHour()) + " an hour, by chance";
    }

    /** Levels between stations are drawn; a grid of their quantiles tells how many lie below what a listener hears. */
    private String hearing() {
        long pairs = 0;
        double hidden = 0;
        for (int one = 0; one < net.groups().size(); one++) {
            for (int other = one; other < net.groups().size(); other++) {
                long count = pairs(one, other);
                pairs += count;
                hidden += count * hiddenShare(one, other);
            }
        }
        return "Of all pairs of stations " + OddsText.percent(hidden / pairs)
                + " are hidden from each other, on average: below " + Math.round(NetTrials.AUDIBLE_DB)
                + " dB neither hears that the other is on the air.";
    }

    private long pairs(int one, int other) {
        long count = net.groups().get(one).count();
        return one == other
                ? count * (count - 1) / 2
                : count * net.groups().get(other).count();
    }

    private double hiddenShare(int one, int other) {
        return IntStream.range(0, PAIRS_LOOKED_AT)
                        .filter(it -> net.audibility().snrDb(one, other, (it + 0.5) / PAIRS_LOOKED_AT)
                                <= NetTrials.AUDIBLE_DB)
                        .count()
                / (double) PAIRS_LOOKED_AT;
    }

    private static String wait(Wait wait) {
        return wait.shortestNanos() == wait.longestNanos()
                ? time(wait.shortestNanos())
                : time(wait.shortestNanos()) + " to " + time(wait.longestNanos());
    }

    private static String time(long nanos) {
        return TimeText.given(nanos * SECONDS);
    }

    private String clock(double afterSeconds) {
        long minutes = Math.floorMod((long) Math.floor((net.clockSeconds() + afterSeconds) / 60), DAY_MINUTES);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    private static void add(List<String> lines, String indent, String text) {
        lines.addAll(TextWrap.lines(text, indent, WIDTH));
    }
}
