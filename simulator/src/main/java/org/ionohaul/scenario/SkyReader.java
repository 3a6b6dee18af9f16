package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ionohaul.channel.AtmosphericNoise;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.FrequencyError;
import org.ionohaul.channel.GainControl;
import org.ionohaul.channel.GroundWave;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.MeasuredLevel;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.channel.Spells;

/** Turns what a scenario says of sky, noise and other stations into a description that is complete up to its draws. */
final class SkyReader {
    /** A schedule that begins or ends farther from what is watched is more likely a slip. */
    private static final double FAR_SECONDS = 3 * 3600;

    private static final Set<String> LEVELS_OF_SIGNALS =
            Set.of("near.snr", "far.snr", "near.signal", "far.signal", "sky.losses");

    private final double sendClockSeconds;
    private final double horizonSeconds;
    private final double distanceMetres;
    private boolean usesClock;

    /**
     * Makes a reader.
     *
     * @param sendClockSeconds time of day when send is pressed, in seconds since midnight
     * @param horizonSeconds how long after pressing send a trial is watched
     * @param distanceMetres length of the path
     */
    SkyReader(double sendClockSeconds, double horizonSeconds, double distanceMetres) {
        this.sendClockSeconds = sendClockSeconds;
        this.horizonSeconds = horizonSeconds;
        this.distanceMetres = distanceMetres;
    }

    /** Returns what lies between the ends; worthless if the document had a problem. */
    DescribedSky sky(Section sky, Section near, Section far, SeriesReader series, Document document) {
        List<Described<PropagationPath>> paths = paths(sky);
        SlowVariation slow = sky.findPart(ScenarioFormat.SLOW_VARIATION)
                .map(SkyReader::slowVariation)
                .orElse(SlowVariation.NONE);
        Described<Schedule> trend = schedule(sky.parts(ScenarioFormat.TREND_POINT));
        Map<End, ReadSeries> readings = readings(near, far, series);
        MeasuredSky measured = new MeasuredSky(sky, near, far, readings);
        measured.refuseCountedTwice();
        measured.warn(horizonSeconds, paths);
        LevelReader levels = new LevelReader(sky, distanceMetres, readings);
        Described<EndConditions> nearEnd = end(End.NEAR, near, far, levels, measured);
        Described<EndConditions> farEnd = end(End.FAR, far, near, levels, measured);
        Spells dropOuts = spells(sky, ScenarioFormat.DROP_OUTS, SkyReader::dropOuts);
        Spells sporadicE = spells(sky, ScenarioFormat.SPORADIC_E, SkyReader::sporadicE);
        Optional<Described<GroundWave>> groundWave =
                sky.findPart(ScenarioFormat.GROUND_WAVE).map(it -> groundWave(it, levels.dayToDayDb()));
        Described<FrequencyError> nearFrequency = tuning(near);
        Described<FrequencyError> farFrequency = tuning(far);
        warnOfDrawnTwice(sky, document.uncertainKeys());
        Described<SkyConditions> conditions = draws -> new SkyConditions(
                all(paths, draws),
                slow,
                trend.in(draws),
                nearEnd.in(draws),
                farEnd.in(draws),
                dropOuts,
                sporadicE,
                nearFrequency.in(draws),
                farFrequency.in(draws),
                groundWave.map(it -> it.in(draws)));
        return new DescribedSky(conditions, levels.levels(), readings, document.uncertainKeys());
    }

    private static Map<End, ReadSeries> readings(Section near, Section far, SeriesReader series) {
        Map<End, ReadSeries> readings = new EnumMap<>(End.class);
        near.findPart(ScenarioFormat.READINGS)
                .ifPresent(it -> readings.put(End.NEAR, series.read(it).orElse(ReadSeries.NONE)));
        far.findPart(ScenarioFormat.READINGS)
                .ifPresent(it -> readings.put(End.FAR, series.read(it).orElse(ReadSeries.NONE)));
        return readings;
    }

    private static Described<FrequencyError> tuning(Section end) {
        Optional<Section> stated = end.findPart(ScenarioFormat.TUNING);
        if (stated.isEmpty()) {
            return draws -> FrequencyError.NONE;
        }
        Section part = stated.get();
        return part.build(() -> {
            Input offset = part.input(ScenarioFormat.TUNING_OFFSET);
            Input drift = part.input(ScenarioFormat.TUNING_DRIFT);
            Described<FrequencyError> described = draws -> new FrequencyError(offset.in(draws), drift.in(draws));
            return described.tried();
        });
    }

    private static Spells spells(Section sky, Group group, Function<Section, Spells> reading) {
        return sky.findPart(group)
                .map(part -> part.build(() -> reading.apply(part)))
                .orElse(Spells.NONE);
    }

    private static Spells dropOuts(Section part) {
        return new Spells(
                part.get(ScenarioFormat.DROP_OUT_BETWEEN),
                part.get(ScenarioFormat.DROP_OUT_LENGTH),
                -part.get(ScenarioFormat.DROP_OUT_DEPTH));
    }

    private static Spells sporadicE(Section part) {
        return new Spells(
                part.get(ScenarioFormat.SPORADIC_BETWEEN),
                part.get(ScenarioFormat.SPORADIC_LENGTH),
                part.get(ScenarioFormat.SPORADIC_GAIN));
    }

    /** Returns the ground wave, whose level is told relative to that of the sky wave on a usual day. */
    private Described<GroundWave> groundWave(Section part, Described<Double> dayToDayDb) {
        double leadMetres = distanceMetres - part.get(ScenarioFormat.OVER_GROUND);
        if (leadMetres < 0) {
            part.problem(
                    ScenarioFormat.OVER_GROUND,
                    "is farther than the distance, which goes up to the ionosphere and down again",
                    "state how far apart the stations are over ground, or a longer distance");
        }
        double leadSeconds = Math.max(0, leadMetres) / Scenario.LIGHT_METRES_PER_SECOND;
        Described<Double> level =
                part.build(() -> part.input(ScenarioFormat.GROUND_LEVEL).sane(ScenarioFormat.GROUND_LEVEL.component()));
        return draws -> new GroundWave(leadSeconds, level.in(draws) - dayToDayDb.in(draws));
    }

    private static void warnOfDrawnTwice(Section sky, List<String> uncertainKeys) {
        if (sky.has(ScenarioFormat.DAY_TO_DAY)) {
            uncertainKeys.stream()
                    .filter(LEVELS_OF_SIGNALS::contains)
                    .findFirst()
                    .ifPresent(key -> sky.warn(
                            ScenarioFormat.DAY_TO_DAY,
                            "stands beside " + key + ", which is drawn as well: what both stand for counts twice"));
        }
    }

    private static List<Described<PropagationPath>> paths(Section sky) {
        Optional<FadingCondition> condition = sky.find(ScenarioFormat.CONDITION);
        if (condition.isEmpty()) {
            List<Section> sections = sky.someParts(ScenarioFormat.PATH);
            List<Described<PropagationPath>> paths =
                    sections.stream().map(SkyReader::path).toList();
            refuseFallingDelays(sections);
            return paths;
        }
        if (!sky.parts(ScenarioFormat.PATH).isEmpty()) {
            sky.problem(ScenarioFormat.CONDITION, "stands beside paths", "state either the condition or the paths");
        }
        return condition.get().paths().stream()
                .<Described<PropagationPath>>map(path -> draws -> path)
                .toList();
    }

    /** Equal delays are in order: two polarisations arrive together. */
    private static void refuseFallingDelays(List<Section> paths) {
        double earlier = 0;
        for (Section path : paths) {
            double middle = path.get(ScenarioFormat.DELAY).quantile(0.5);
            if (middle < earlier) {
                path.problem(
                        ScenarioFormat.DELAY,
                        "is shorter than that of the path before",
                        "put the paths in order of their delays (of the middles of uncertain ones)");
            }
            earlier = middle;
        }
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

    private Described<EndConditions> end(End at, Section end, Section other, LevelReader levels, MeasuredSky measured) {
        Described<Schedule> scheduled = schedule(end.parts(ScenarioFormat.NOISE_POINT));
        Described<Schedule> noiseRise = draws -> measured.noiseRise(at).orElseGet(() -> scheduled.in(draws));
        Optional<MeasuredLevel> level = measured.level(at);
        ImpulsiveNoise impulses =
                end.findPart(ScenarioFormat.IMPULSES).map(SkyReader::impulses).orElse(ImpulsiveNoise.NONE);
        AtmosphericNoise atmospherics = end.findPart(ScenarioFormat.ATMOSPHERICS)
                .map(SkyReader::atmospherics)
                .orElse(AtmosphericNoise.NONE);
        GainControl gainControl = end.findPart(ScenarioFormat.GAIN_CONTROL)
                .map(SkyReader::gainControl)
                .orElse(GainControl.NONE);
        end.build(() -> levels.snrDb(at, end, other));
        List<Described<Interference>> interference = interference(end, levels.noiseDbm(at));
        return end.build(() -> {
            Described<Double> snrDb = levels.snrDb(at, end, other);
            List<Described<Interference>> others = end.isGivenUp() ? List.of() : interference;
            Described<EndConditions> described = draws -> new EndConditions(
                    snrDb.in(draws),
                    noiseRise.in(draws),
                    impulses,
                    atmospherics,
                    all(others, draws),
                    gainControl,
                    level);
            return described.tried();
        });
    }

    /** Returns the other stations heard at an end, where the noise in dBm is known or not. */
    private static List<Described<Interference>> interference(Section end, Optional<Described<Double>> noiseDbm) {
        Described<Double> shiftDb = VisitorLevel.Reference.STATED_NOISE.shiftDb(noiseDbm);
        Stream<Described<Interference>> congestion = end.find(ScenarioFormat.CONGESTION).stream()
                .flatMap(words -> words.populations().stream())
                .map(population -> draws -> population.raised(shiftDb.in(draws)));
        Stream<Described<Interference>> own =
                end.parts(ScenarioFormat.INTERFERENCE).stream().map(it -> visitors(it, end, noiseDbm));
        return Stream.concat(congestion, own).toList();
    }

    private static ImpulsiveNoise impulses(Section impulses) {
        return impulses.build(() -> new ImpulsiveNoise(
                impulses.get(ScenarioFormat.IMPULSE_SHARE),
                impulses.get(ScenarioFormat.IMPULSE_RISE),
                impulses.get(ScenarioFormat.IMPULSE_SLOT)));
    }

    private static AtmosphericNoise atmospherics(Section noise) {
        return noise.build(() -> new AtmosphericNoise(
                noise.get(ScenarioFormat.VOLTAGE_DEVIATION),
                noise.get(ScenarioFormat.CRASHES_UNDER_WAY),
                noise.get(ScenarioFormat.CRASH)));
    }

    private static GainControl gainControl(Section gain) {
        return gain.build(() -> new GainControl(
                gain.get(ScenarioFormat.ATTACK),
                gain.get(ScenarioFormat.GAIN_RECOVERY),
                gain.get(ScenarioFormat.GAIN_RANGE)));
    }

    private static Described<Interference> visitors(
            Section visitor, Section end, Optional<Described<Double>> noiseDbm) {
        return visitor.build(() -> {
            Input visits = visitor.input(ScenarioFormat.VISITS);
            Input visit = visitor.input(ScenarioFormat.VISIT);
            double over = visitor.get(ScenarioFormat.OVER);
            double pause = visitor.get(ScenarioFormat.PAUSE);
            VisitorLevel level = visitor.get(ScenarioFormat.MEDIAN);
            Input median = visitor.input(ScenarioFormat.MEDIAN, level.level());
            Described<Double> shiftDb = level.reference().shiftDb(noiseDbm);
            double deviation = visitor.get(ScenarioFormat.DEVIATION);
            double share = visitor.get(ScenarioFormat.BAND_SHARE);
            questionOwnLevel(visitor, level, end, noiseDbm);
            Described<Interference> described = draws -> new Interference(
                            visits.in(draws), visit.in(draws), over, pause, median.in(draws), deviation, share)
                    .raised(shiftDb.in(draws));
            return described.tried();
        });
    }

    private static void questionOwnLevel(
            Section visitor, VisitorLevel level, Section end, Optional<Described<Double>> noiseDbm) {
        if (level.reference() != VisitorLevel.Reference.NONE) {
            return;
        }
        if (noiseDbm.isEmpty() && end.has(ScenarioFormat.SNR)) {
            visitor.problem(
                    ScenarioFormat.MEDIAN,
                    "is a level of its own, but how strong the noise is here is not stated",
                    "state signal and noise in place of snr, or how far visitors are over the noise, such as \"9 dB\"");
        }
        noiseDbm.map(it -> level.level().quantile(0.5) - it.in(key -> 0.5))
                .ifPresent(overNoiseDb -> ScenarioFormat.MEDIAN
                        .oddity(overNoiseDb)
                        .ifPresent(it -> visitor.warn(
                                ScenarioFormat.MEDIAN,
                                "is " + Math.round(overNoiseDb) + " dB over the noise, which " + it)));
    }

    private Described<Schedule> schedule(List<Section> sections) {
        List<DescribedPoint> points = new ArrayList<>();
        double earlier = 0;
        for (Section section : sections) {
            DescribedPoint point = point(section, earlier);
            if (!points.isEmpty() && !(point.middleSeconds() > earlier)) {
                section.problem(
                        ScenarioFormat.AT, "is not later than the point before", "put the points in order of time");
            } else {
                points.add(point);
                earlier = point.middleSeconds();
            }
        }
        return draws -> DescribedPoint.schedule(points, draws);
    }

    /** Returns whether a point of a schedule is a time of day. */
    boolean usesClock() {
        return usesClock;
    }

    private void warnOfFarPoint(Section section, Moment at, double atSeconds) {
        usesClock |= at.isClock();
        if (atSeconds < -FAR_SECONDS) {
            section.warn(ScenarioFormat.AT, "lies more than 3 hours before pressing send");
        } else if (atSeconds > horizonSeconds + FAR_SECONDS) {
            section.warn(ScenarioFormat.AT, "lies more than 3 hours after the horizon");
        }
    }

    private DescribedPoint point(Section section, double earlierSeconds) {
        return section.build(() -> {
            Moment at = section.get(ScenarioFormat.AT);
            DescribedPoint point = new DescribedPoint(
                    at,
                    at.middleAfterSend(sendClockSeconds, earlierSeconds),
                    section.input(ScenarioFormat.AT, at.seconds()),
                    section.input(ScenarioFormat.RISE));
            warnOfFarPoint(section, at, point.middleSeconds());
            Described<Schedule> alone = draws -> DescribedPoint.schedule(List.of(point), draws);
            alone.tried();
            return point;
        });
    }

    private static <T> List<T> all(List<Described<T>> described, Draws draws) {
        return described.stream().map(each -> each.in(draws)).toList();
    }
}
