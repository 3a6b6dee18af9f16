package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;

/** Turns what a scenario says of sky, noise and other stations into a description that is complete up to its draws. */
final class SkyReader {
    private final double sendClockSeconds;

    /**
     * Makes a reader.
     *
     * @param sendClockSeconds time of day when send is pressed, in seconds since midnight
     */
    SkyReader(double sendClockSeconds) {
        this.sendClockSeconds = sendClockSeconds;
    }

    /** Returns what lies between the ends; worthless if the document had a problem. */
    Described<SkyConditions> sky(Section sky, Section near, Section far) {
        List<Described<PropagationPath>> paths = paths(sky);
        SlowVariation slow = sky.findPart(ScenarioFormat.SLOW_VARIATION)
                .map(SkyReader::slowVariation)
                .orElse(SlowVariation.NONE);
        Described<Schedule> trend = schedule(sky.parts(ScenarioFormat.TREND_POINT));
        Described<EndConditions> nearEnd = end(near);
        Described<EndConditions> farEnd = end(far);
        return draws ->
                new SkyConditions(all(paths, draws), slow, trend.in(draws), nearEnd.in(draws), farEnd.in(draws));
    }

    private static List<Described<PropagationPath>> paths(Section sky) {
        return sky.someParts(ScenarioFormat.PATH).stream().map(SkyReader::path).toList();
    }

    private static Described<PropagationPath> path(Section path) {
        return path.build(() -> {
            Input delay = path.input(ScenarioFormat.DELAY);
            Input power = path.input(ScenarioFormat.POWER);
            Input shift = path.input(ScenarioFormat.DOPPLER_SHIFT);
            Input spread = path.input(ScenarioFormat.DOPPLER_SPREAD);
            Described<PropagationPath> described =
                    draws -> new PropagationPath(delay.in(draws), power.in(draws), shift.in(draws), spread.in(draws));
            return described.tried();
        });
    }

    private static SlowVariation slowVariation(Section slow) {
        return slow.build(() ->
                new SlowVariation(slow.get(ScenarioFormat.SLOW_DEVIATION), slow.get(ScenarioFormat.TIME_CONSTANT)));
    }

    private Described<EndConditions> end(Section end) {
        Described<Schedule> noiseRise = schedule(end.parts(ScenarioFormat.NOISE_POINT));
        ImpulsiveNoise impulses =
                end.findPart(ScenarioFormat.IMPULSES).map(SkyReader::impulses).orElse(ImpulsiveNoise.NONE);
        List<Described<Interference>> interference = end.parts(ScenarioFormat.INTERFERENCE).stream()
                .map(SkyReader::interference)
                .toList();
        return end.build(() -> {
            Input snr = end.input(ScenarioFormat.SNR);
            Described<EndConditions> described =
                    draws -> new EndConditions(snr.in(draws), noiseRise.in(draws), impulses, all(interference, draws));
            return described.tried();
        });
    }

    private static ImpulsiveNoise impulses(Section impulses) {
        return impulses.build(() -> new ImpulsiveNoise(
                impulses.get(ScenarioFormat.IMPULSE_SHARE),
                impulses.get(ScenarioFormat.IMPULSE_RISE),
                impulses.get(ScenarioFormat.IMPULSE_SLOT)));
    }

    private static Described<Interference> interference(Section visitor) {
        return visitor.build(() -> {
            Input visits = visitor.input(ScenarioFormat.VISITS);
            Input visit = visitor.input(ScenarioFormat.VISIT);
            double over = visitor.get(ScenarioFormat.OVER);
            double pause = visitor.get(ScenarioFormat.PAUSE);
            Input median = visitor.input(ScenarioFormat.MEDIAN);
            double deviation = visitor.get(ScenarioFormat.DEVIATION);
            double share = visitor.get(ScenarioFormat.BAND_SHARE);
            Described<Interference> described = draws -> new Interference(
                    visits.in(draws), visit.in(draws), over, pause, median.in(draws), deviation, share);
            return described.tried();
        });
    }

    private Described<Schedule> schedule(List<Section> points) {
        List<Double> times = new ArrayList<>();
        List<Input> rises = new ArrayList<>();
        Optional<Double> earlier = Optional.empty();
        for (Section point : points) {
            Input rise = rise(point);
            double at = point.get(ScenarioFormat.AT).afterSend(sendClockSeconds, earlier.orElse(0.0));
            if (earlier.isPresent() && !(at > earlier.get())) {
                point.problem(
                        ScenarioFormat.AT, "is not later than the point before", "put the points in order of time");
            } else {
                times.add(at);
                rises.add(rise);
                earlier = Optional.of(at);
            }
        }
        return draws -> schedule(times, rises, draws);
    }

    private static Input rise(Section point) {
        return point.build(() -> {
            Input rise = point.input(ScenarioFormat.RISE);
            Described<Schedule.Point> described = draws -> new Schedule.Point(0, rise.in(draws));
            described.tried();
            return rise;
        });
    }

    private static Schedule schedule(List<Double> times, List<Input> rises, Draws draws) {
        List<Schedule.Point> points = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            points.add(new Schedule.Point(times.get(i), rises.get(i).in(draws)));
        }
        return new Schedule(points);
    }

    private static <T> List<T> all(List<Described<T>> described, Draws draws) {
        return described.stream().map(each -> each.in(draws)).toList();
    }
}
