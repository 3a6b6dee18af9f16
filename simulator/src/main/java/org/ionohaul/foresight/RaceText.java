package org.ionohaul.foresight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.ionohaul.foresight.Guess.Span;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;

/**
 * A race for a terminal: step by step, then what came of it.
 *
 * @param race the race
 * @param width characters a line, 60 or more
 */
public record RaceText(Race race, int width) {
    private static final int STEPS = 8;
    private static final int MOST_CELLS = 50;

    /** Characters of a line beside its bar. */
    private static final int BESIDE_BAR = 39;

    private static final double[] ROUND_SECONDS = {5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200};

    /** Returns the race step by step: each step the lines of all modes. */
    public List<List<String>> steps() {
        double end = race.endSeconds();
        double step = stepSeconds(end);
        List<List<String>> steps = new ArrayList<>();
        for (int i = 1; (i - 1) * step < end; i++) {
            steps.add(step(Math.min(i * step, end), (i - 1) * step));
        }
        return steps;
    }

    private static double stepSeconds(double endSeconds) {
        for (double step : ROUND_SECONDS) {
            if (step * STEPS >= endSeconds) {
                return step;
            }
        }
        return 14_400;
    }

    /** Modes go by their numbers here, so that a line fits a narrow terminal. */
    private List<String> step(double seconds, double before) {
        return IntStream.range(0, race.runs().size())
                .mapToObj(it -> String.format(Locale.ROOT, "%11s  %d ", it == 0 ? TimeText.length(seconds) : "", it + 1)
                        + bar(it, seconds)
                        + news(it, before, seconds))
                .toList();
    }

    private String bar(int mode, double seconds) {
        double share =
                (double) race.held(mode, seconds) / race.situation().transfer().totalBytes();
        int cells = Math.min(MOST_CELLS, width - BESIDE_BAR);
        int full = (int) Math.floor(share * cells);
        return String.format(
                Locale.ROOT, "[%s%s] %3.0f %%", "#".repeat(full), ".".repeat(cells - full), Math.floor(100 * share));
    }

    private String news(int mode, double before, double seconds) {
        double through = race.seconds(mode);
        if (through > before && through <= seconds) {
            return "  in " + TimeText.length(through);
        }
        double ended = race.runs().get(mode).endedNanos() * 1e-9;
        return Double.isInfinite(through) && ended > before && ended <= seconds ? "  stopped" : "";
    }

    private String name(int mode) {
        return race.situation().modes().get(mode).title();
    }

    /** Returns what came of what was foretold, and what further trials say. */
    public List<String> verdict(Played played) {
        return verdict(race, played).stream()
                .flatMap(it -> TextWrap.lines(it, "  ", width).stream())
                .toList();
    }

    /** Returns the same, a sentence or two each. */
    public static List<String> verdict(Race race, Played played) {
        return new RaceText(race, Integer.MAX_VALUE).sentences(played);
    }

    private List<String> sentences(Played played) {
        List<String> told = new ArrayList<>();
        String named = title(played.named());
        told.add(
                switch (played.verdict()) {
                    case RIGHT -> named + " is first, as you said (" + OddsText.percent(played.sureness()) + " sure).";
                    case WRONG ->
                        name(race.winner().orElseThrow()) + " is first; you said " + named + " ("
                                + OddsText.percent(played.sureness()) + " sure).";
                    case UNDECIDED -> "Nobody is first, so that your choice does not count.";
                });
        for (int mode = 0; mode < race.runs().size(); mode++) {
            Played.Run run = played.runs().get(mode);
            told.add(name(mode) + ": " + time(run.deliveredSeconds()) + "; you said " + span(run.guess()) + ", which "
                    + (played.isHeld(run) ? "holds" : "does not hold") + ".");
        }
        told.add(others());
        return told;
    }

    private String title(String mode) {
        return race.situation().modes().stream()
                .filter(it -> it.name().equals(mode))
                .findFirst()
                .orElseThrow()
                .title();
    }

    /** One race is one draw: what it might have come to. */
    private String others() {
        List<String> told = new ArrayList<>();
        for (int mode = 0; mode < race.runs().size(); mode++) {
            told.add(name(mode) + " is first in "
                    + race.firsts().get(mode).hits() + ", and "
                    + eight(new Span(
                            race.others().get(mode).quantile(0.1),
                            race.others().get(mode).quantile(0.9))));
        }
        return "Under " + race.others().get(0).size() + " other skies of this kind " + String.join("; ", told) + ".";
    }

    private static String eight(Span span) {
        return span.lowSeconds() == Double.POSITIVE_INFINITY
                ? "hardly ever through"
                : "8 of 10 times lie within " + span(span);
    }

    static String span(Span span) {
        return span.lowSeconds() == Double.POSITIVE_INFINITY
                ? "never"
                : time(span.lowSeconds()) + " to " + time(span.highSeconds());
    }

    static String time(double seconds) {
        return Double.isInfinite(seconds) ? "never" : TimeText.length(seconds);
    }
}
