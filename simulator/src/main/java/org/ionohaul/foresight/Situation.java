package org.ionohaul.foresight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.MeterReading;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Levels;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.trial.UncertainDraws;

/**
 * What a learner is shown: a sky and a file. The race in it is the trial with the round's number.
 *
 * @param scenario one transfer, one way, and the modes that race
 * @param sendClockSeconds time of day of pressing send, in seconds since midnight
 * @param round number of the round, from 1
 */
public record Situation(Scenario scenario, double sendClockSeconds, int round) {
    /** Checks that there is one question. */
    public Situation {
        if (scenario.transfers().size() != 1
                || scenario.transfers().get(0).directions().size() != 1
                || scenario.modes().size() < 2) {
            throw new IllegalArgumentException("a situation has one transfer, one way, two modes or more");
        }
    }

    /** Returns what is sent. */
    public Transfer transfer() {
        return scenario.transfers().get(0);
    }

    /** Returns the modes that race. */
    public List<Mode> modes() {
        return scenario.modes();
    }

    /** Returns the end that wants the file. */
    End receiver() {
        return transfer().directions().get(0).receiver();
    }

    private String station(End end) {
        return scenario.station(end).name();
    }

    /** Returns what an operator would say of it, a sentence each. */
    public List<String> sentences() {
        Draws draws = UncertainDraws.of(scenario.seed(), round);
        SkyConditions sky = scenario.sky().conditions(draws);
        List<String> told = new ArrayList<>();
        told.add(String.format(
                Locale.ROOT,
                "%s is to go from %s to %s, %s dialling at %s.",
                SizeText.size(transfer().totalBytes()),
                station(receiver().other()),
                station(receiver()),
                station(End.NEAR),
                clock()));
        for (End end : List.of(receiver(), receiver().other())) {
            told.add("At " + station(end) + " " + level(end, sky, scenario.sky().levels(end, draws)) + ".");
        }
        told.add(path(sky.paths()));
        if (sky.trendDb().levelDb(0) != sky.trendDb().levelDb(1800)) {
            told.add(String.format(
                    Locale.ROOT,
                    "In half an hour the signal will be %.0f dB %s.",
                    Math.abs(sky.trendDb().levelDb(1800) - sky.trendDb().levelDb(0)),
                    sky.trendDb().levelDb(1800) < sky.trendDb().levelDb(0) ? "weaker" : "stronger"));
        }
        return told;
    }

    private String clock() {
        long minutes = Math.round(sendClockSeconds / 60) % (24 * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    private static String level(End end, SkyConditions sky, Optional<Levels> levels) {
        String ratio = String.format(Locale.ROOT, "%.0f dB over the noise", sky.snrAtStartDb(end));
        String meter = levels.map(it -> "the meter shows " + MeterReading.nearest(it.signalDbm()) + " and "
                        + MeterReading.nearest(it.noiseDbm()) + " when nobody sends: " + ratio)
                .orElse("the signal is " + ratio);
        return meter + others(end, sky);
    }

    private static String others(End end, SkyConditions sky) {
        return sky.at(end).interference().isEmpty() ? "" : ", and other stations come and go";
    }

    private static String path(List<PropagationPath> paths) {
        double spreadHz = paths.stream()
                .mapToDouble(PropagationPath::dopplerSpreadHz)
                .max()
                .orElse(0);
        double delayMillis = 1000
                * paths.stream()
                        .map(PropagationPath::delaySeconds)
                        .max(Comparator.naturalOrder())
                        .orElse(0.0);
        String fading = spreadHz == 0
                ? "It does not fade"
                : String.format(Locale.ROOT, "It fades %s (Doppler spread %s Hz)", fading(spreadHz), figure(spreadHz));
        return fading + (delayMillis == 0 ? "." : ", with echoes up to " + figure(delayMillis) + " ms apart.");
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
    }

    /** Words for how fast it fades: the bounds lie between the conditions of ITU-R F.1487 and F.520. */
    private static String fading(double spreadHz) {
        if (spreadHz < 0.3) {
            return "slowly";
        }
        return spreadHz < 3 ? "at an ordinary pace" : "in a flutter";
    }
}
