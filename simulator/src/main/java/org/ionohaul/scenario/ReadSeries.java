package org.ionohaul.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ionohaul.channel.MeasuredLevel;
import org.ionohaul.channel.Schedule;

/**
 * What was read at an end over a while: levels that were averaged as far as the scenario asks, in seconds after pressing send.
 *
 * @param file its file as the scenario names it
 * @param snr SNR in 3 kHz, in dB
 * @param signal the other station's level, in dBm
 * @param noise the noise in 3 kHz, in dBm
 * @param averageSeconds over how long each is an average
 */
public record ReadSeries(
        String file,
        List<Schedule.Point> snr,
        List<Schedule.Point> signal,
        List<Schedule.Point> noise,
        double averageSeconds) {
    /** Stands in for one that can't be read. */
    static final ReadSeries NONE = new ReadSeries("", List.of(), List.of(), List.of(), 0);

    /** Copies the lists. */
    public ReadSeries {
        snr = List.copyOf(snr);
        signal = List.copyOf(signal);
        noise = List.copyOf(noise);
    }

    /** Returns whether it says how strong the other station is, by itself or over the noise. */
    public boolean isOfSignal() {
        return !snr.isEmpty() || !signal.isEmpty();
    }

    /** Returns the levels that are told most of: of the signal or SNR, else of the noise. */
    public List<Schedule.Point> levels() {
        return snr.isEmpty() ? signal.isEmpty() ? noise : signal : snr;
    }

    /** Returns when the first level was read, in seconds after pressing send; negative if before. */
    public double firstSeconds() {
        return levels().get(0).atSeconds();
    }

    /** Returns when the last level was read, in seconds after pressing send. */
    public double lastSeconds() {
        return levels().get(levels().size() - 1).atSeconds();
    }

    /** Returns the longest time without a level between two of them. */
    public Optional<Gap> longestGap() {
        Optional<Gap> longest = Optional.empty();
        for (int i = 1; i < levels().size(); i++) {
            Gap gap = new Gap(levels().get(i - 1).atSeconds(), levels().get(i).atSeconds());
            longest = longest.filter(it -> it.seconds() >= gap.seconds()).or(() -> Optional.of(gap));
        }
        return longest;
    }

    /** Returns the time that half of the levels are no farther apart than; 0 for a single one. */
    public double usualSeconds() {
        double[] apart = new double[levels().size() - 1];
        for (int i = 0; i < apart.length; i++) {
            apart[i] = levels().get(i + 1).atSeconds() - levels().get(i).atSeconds();
        }
        Arrays.sort(apart);
        return apart.length == 0 ? 0 : apart[(apart.length - 1) / 2];
    }

    /**
     * A time without a level.
     *
     * @param fromSeconds when it begins, in seconds after pressing send
     * @param toSeconds when it ends
     */
    public record Gap(double fromSeconds, double toSeconds) {
        /** Returns how long it is. */
        public double seconds() {
            return toSeconds - fromSeconds;
        }
    }

    /** Returns a level when send is pressed. */
    static double atSend(List<Schedule.Point> points) {
        return new Schedule(points).levelDb(0);
    }

    /** Returns how levels lie above the one when send is pressed. */
    static Schedule change(List<Schedule.Point> points) {
        double atSend = atSend(points);
        return new Schedule(points.stream()
                .map(it -> new Schedule.Point(it.atSeconds(), it.levelDb() - atSend))
                .toList());
    }

    /** Returns by how much the signal at the end lies above that when send is pressed; empty if just noise was read. */
    Optional<MeasuredLevel> measured() {
        return isOfSignal() ? Optional.of(new MeasuredLevel(change(levels()), averageSeconds)) : Optional.empty();
    }
}
