package org.ionohaul.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.MeasuredLevel;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;

/**
 * What readings at the ends mean for the rest of a scenario.
 *
 * @param sky the section of the path
 * @param near that of the station that dials
 * @param far that of the station that is called
 * @param readings what was read
 */
record MeasuredSky(Section sky, Section near, Section far, Map<End, ReadSeries> readings) {
    /** Of fading, readings should hold no more than that, in dB. */
    private static final double MOST_LEFT_DB = 1;

    private static final double LONG_GAP_FACTOR = 4;

    /** Returns the noise of an end over the clock where it was read, relative to that when send is pressed. */
    Optional<Schedule> noiseRise(End end) {
        return Optional.ofNullable(readings.get(end))
                .filter(it -> !it.noise().isEmpty())
                .map(it -> ReadSeries.change(it.noise()));
    }

    /**
     * Returns the level of the signal at an end as it was read there; where it was read just at the other end, how it changes there:
     * a path takes the same both ways. An SNR says nothing of the other end, and a trend that is stated comes first.
     */
    Optional<MeasuredLevel> level(End end) {
        Optional<MeasuredLevel> own = Optional.ofNullable(readings.get(end)).flatMap(ReadSeries::measured);
        return own.or(() -> Optional.ofNullable(readings.get(end.other()))
                .filter(it -> !it.signal().isEmpty()
                        && sky.parts(ScenarioFormat.TREND_POINT).isEmpty())
                .flatMap(ReadSeries::measured));
    }

    private boolean isMeasured(End end) {
        return Optional.ofNullable(readings.get(end))
                .filter(ReadSeries::isOfSignal)
                .isPresent();
    }

    private Section section(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Refuses what readings hold already. */
    void refuseCountedTwice() {
        for (End end : End.values()) {
            boolean isNoiseRead = Optional.ofNullable(readings.get(end))
                    .filter(it -> !it.noise().isEmpty() || !it.snr().isEmpty())
                    .isPresent();
            section(end).parts(ScenarioFormat.NOISE_POINT).stream()
                    .filter(it -> isNoiseRead)
                    .forEach(it ->
                            it.problem("stands beside readings that hold the noise over time", "leave out either"));
        }
        if (Stream.of(End.values()).noneMatch(this::isMeasured)) {
            return;
        }
        boolean areBoth = isMeasured(End.NEAR) && isMeasured(End.FAR);
        if (areBoth) {
            sky.parts(ScenarioFormat.TREND_POINT)
                    .forEach(it ->
                            it.problem("stands beside readings at both ends, which hold the trend", "leave it out"));
        }
        if (areBoth && sky.has(ScenarioFormat.DAY_TO_DAY)) {
            sky.problem(
                    ScenarioFormat.DAY_TO_DAY,
                    "stands beside readings at both ends, which are those of one day",
                    "leave it out");
        }
        sky.findPart(ScenarioFormat.GROUND_WAVE)
                .ifPresent(it -> it.problem(
                        "stands beside readings, which hold both waves and don't tell them apart", "leave out either"));
        refuseSlowSpells(ScenarioFormat.DROP_OUTS, ScenarioFormat.DROP_OUT_LENGTH);
        refuseSlowSpells(ScenarioFormat.SPORADIC_E, ScenarioFormat.SPORADIC_LENGTH);
    }

    private void refuseSlowSpells(Group spells, Key<Double> length) {
        double shortestSeconds = readings.values().stream()
                .filter(ReadSeries::isOfSignal)
                .mapToDouble(it -> Math.max(it.averageSeconds(), it.usualSeconds()))
                .min()
                .orElseThrow();
        sky.findPart(spells)
                .filter(it -> it.get(length) > shortestSeconds)
                .ifPresent(it -> it.problem(
                        length,
                        "stands beside readings, which hold spells that last longer than they",
                        "leave it out"));
    }

    /** Warns of readings that don't cover what is watched, have a hole, or hold fading. */
    void warn(double horizonSeconds, List<Described<PropagationPath>> paths) {
        readings.forEach((end, read) -> {
            if (read.equals(ReadSeries.NONE)) {
                return;
            }
            Section part = section(end).part(ScenarioFormat.READINGS);
            if (read.lastSeconds() < 0 || read.firstSeconds() > horizonSeconds) {
                part.problem(
                        ScenarioFormat.READINGS_FILE,
                        "holds no reading between pressing send and the horizon",
                        "set the clock to the evening that was measured; its first reading is "
                                + minutes(read.firstSeconds()) + " after pressing send");
                return;
            }
            warnOfEnds(part, read, horizonSeconds);
            read.longestGap()
                    .filter(it -> it.seconds() > LONG_GAP_FACTOR * Math.max(read.usualSeconds(), read.averageSeconds()))
                    .ifPresent(it -> part.warn(
                            ScenarioFormat.READINGS_FILE,
                            "has no reading for " + minutes(it.seconds()) + ", from " + minutes(it.fromSeconds())
                                    + " after pressing send on: a straight line and slow-variation stand for it"));
            warnOfFading(part, read, paths);
        });
    }

    private static void warnOfEnds(Section part, ReadSeries read, double horizonSeconds) {
        double marginSeconds = Math.max(read.averageSeconds(), read.usualSeconds());
        if (read.firstSeconds() > marginSeconds) {
            part.warn(
                    ScenarioFormat.READINGS_FILE,
                    "begins " + minutes(read.firstSeconds())
                            + " after pressing send: before that the first level and slow-variation stand for it");
        }
        if (read.lastSeconds() < horizonSeconds - marginSeconds) {
            part.warn(
                    ScenarioFormat.READINGS_FILE,
                    "ends " + minutes(horizonSeconds - read.lastSeconds())
                            + " before the horizon: after that the last level and slow-variation stand for it");
        }
    }

    /**
     * Power that fades with a Gaussian Doppler spectrum of width B (2 sigma) has the autocorrelation exp(-(pi B t)^2), whose integral is
     * 1 / (B sqrt(pi)): an average over T holds about 1 + B T sqrt(pi) independent looks, and a mean of n exponential variables
     * scatters by 4.34 dB / sqrt(n).
     */
    private static void warnOfFading(Section part, ReadSeries read, List<Described<PropagationPath>> paths) {
        double spreadHz = paths.stream()
                .mapToDouble(it -> it.in(key -> 0.5).dopplerSpreadHz())
                .max()
                .orElse(0);
        double looks = 1 + spreadHz * read.averageSeconds() * Math.sqrt(Math.PI);
        double leftDb = 10 / Math.log(10) / Math.sqrt(looks);
        if (read.isOfSignal() && spreadHz > 0 && leftDb > MOST_LEFT_DB) {
            part.warn(
                    ScenarioFormat.READINGS_AVERAGE,
                    "holds too few fades: " + Math.round(10 * leftDb) / 10.0
                            + " dB of the fading is left in each level, and is simulated once more");
        }
    }

    private static String minutes(double seconds) {
        return Math.round(seconds / 60) + " min";
    }
}
