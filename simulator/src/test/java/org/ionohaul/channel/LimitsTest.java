package org.ionohaul.channel;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.limits.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a sky may be made of: every limit from both sides, and the name of what is refused. */
final class LimitsTest {
    private static final String LEVEL = "(-200, 200)";
    private static final String DECIBELS = "[0, 100)";

    @ParameterizedTest
    @MethodSource("all")
    void aLimitIsWhereItIsSaidToBe(Limits limits) {
        limits.hold();
    }

    private static Stream<Limits> all() {
        return Stream.of(ofNoise(), ofOthers(), ofPaths(), ofReceivers()).flatMap(List::stream);
    }

    private static List<Limits> ofNoise() {
        return List.of(
                new Limits("probability", "[0, 1]", it -> new ImpulsiveNoise(it, 10, 0.01)),
                new Limits("riseDb", DECIBELS, it -> new ImpulsiveNoise(0.1, it, 0.01)),
                new Limits("slotSeconds", "[1e-4, 1e4)", it -> new ImpulsiveNoise(0.1, 10, it)),
                new Limits("underWay", "[0.01, 1]", it -> new AtmosphericNoise(1.1, it, 0.01)),
                new Limits("crashSeconds", "[1e-4, 1e4)", it -> new AtmosphericNoise(4, 0.1, it)),
                new Limits("deviationDb", DECIBELS, it -> new SlowVariation(it, 60)),
                new Limits("timeConstantSeconds", "[1, 1e6)", it -> new SlowVariation(3, it)),
                new Limits("upperDb", DECIBELS, it -> new DecileDeviations(it, 8)),
                new Limits("lowerDb", DECIBELS, it -> new DecileDeviations(6, it)),
                new Limits("frequencyHz", "[0.3e6, 250e6]", NoiseEnvironment.RURAL::medianFigureDb));
    }

    private static List<Limits> ofOthers() {
        return List.of(
                new Limits("visitsPerHour", "[0, 1e4)", it -> new Interference(it, 60, 5, 5, 10, 3, 0.5)),
                new Limits("visitSeconds", "(0, 1e7)", it -> new Interference(2, it, 5, 5, 10, 3, 0.5)),
                new Limits("overSeconds", "(0, 1e7)", it -> new Interference(2, 60, it, 5, 10, 3, 0.5)),
                new Limits("pauseSeconds", "(0, 1e7)", it -> new Interference(2, 60, 5, it, 10, 3, 0.5)),
                new Limits("medianDb", LEVEL, it -> new Interference(2, 60, 5, 5, it, 3, 0.5)),
                new Limits("deviationDb", DECIBELS, it -> new Interference(2, 60, 5, 5, 10, it, 0.5)),
                new Limits("bandShare", "(0, 1]", it -> new Interference(2, 60, 5, 5, 10, 3, it)));
    }

    private static List<Limits> ofPaths() {
        return List.of(
                new Limits("delaySeconds", "[0, 1)", it -> new PropagationPath(it, 0, 0, 1)),
                new Limits("powerDb", "(-1000, 1000)", it -> new PropagationPath(0, it, 0, 1)),
                new Limits("dopplerShiftHz", "(-1000, 1000)", it -> new PropagationPath(0, 0, it, 1)),
                new Limits("dopplerSpreadHz", "[0, 1000)", it -> new PropagationPath(0, 0, 0, it)),
                new Limits("leadSeconds", "[0, 0.2)", it -> new GroundWave(it, 0)),
                new Limits("levelDb", "[-200, 200]", it -> new GroundWave(0.001, it)),
                new Limits("betweenSeconds", "[1, 1e7)", it -> new Spells(it, 5, -20)),
                new Limits("lengthSeconds", "[0.1, 1e7)", it -> new Spells(60, it, -20)),
                new Limits("changeDb", "[-100, 100]", it -> new Spells(60, 5, it)),
                new Limits("offsetHz", "[-10000, 10000]", it -> new FrequencyError(it, 0)),
                new Limits("driftHzPerMinute", "[-1000, 1000]", it -> new FrequencyError(0, it)),
                new Limits("atSeconds", "(-1e7, 1e7)", it -> new Schedule.Point(it, 0)),
                new Limits("levelDb", "(-1000, 1000)", it -> new Schedule.Point(0, it)),
                new Limits("snrDb", LEVEL, EndConditions::quiet));
    }

    private static List<Limits> ofReceivers() {
        return List.of(
                new Limits("attackSeconds", "[0, 10]", it -> new GainControl(it, 1, 50)),
                new Limits("recoverySeconds", "[0, 10]", it -> new GainControl(0, it, 50)),
                new Limits("rangeDb", "(0, 200)", it -> new GainControl(0, 1, it)),
                new Limits("averageSeconds", "[0, 86400]", it -> new MeasuredLevel(readings(), it)),
                new Limits("overDb", DECIBELS, it -> new MeterReading(9, it)),
                new Limits("unit", "[1, 9]", it -> new MeterReading(asUnit(it), 0)),
                new Limits("powerDbm", LEVEL, it -> new LinkBudget(it, 0, 0, 7e6, 3e5, 0)),
                new Limits("transmitGainDbi", LEVEL, it -> new LinkBudget(50, it, 0, 7e6, 3e5, 0)),
                new Limits("receiveGainDbi", LEVEL, it -> new LinkBudget(50, 0, it, 7e6, 3e5, 0)),
                new Limits("frequencyHz", "(0, 1e12)", it -> new LinkBudget(50, 0, 0, it, 3e5, 0)),
                new Limits("slantMetres", "(0, 1e9)", it -> new LinkBudget(50, 0, 0, 7e6, it, 0)),
                new Limits("lossesDb", "[0, 400)", it -> new LinkBudget(50, 0, 0, 7e6, 3e5, it)));
    }

    /** Whole units: what is just beyond a limit is the next one. */
    private static int asUnit(double value) {
        return value > 9 ? 10 : (int) value;
    }

    private static Schedule readings() {
        return new Schedule(List.of(new Schedule.Point(0, 0)));
    }
}
