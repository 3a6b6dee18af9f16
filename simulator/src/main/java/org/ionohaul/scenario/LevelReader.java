package org.ionohaul.scenario;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.LinkBudget;
import org.ionohaul.channel.NoiseEnvironment;

/**
 * Works out the SNR at each end from whichever way the scenario states it: the SNR itself; or signal and noise, where the
 * signal is stated or follows from the other station's power, and the noise is stated or follows from a category. The other
 * station's power comes with a link budget or, where both powers are stated and the signal at one end, with the loss that
 * these give.
 */
final class LevelReader {
    private final Section sky;
    private final double distanceMetres;
    private final Input losses;
    private final Described<Double> dayToDayDb;
    private final Map<End, ReadSeries> readings;
    private final Map<End, Described<Levels>> levels = new EnumMap<>(End.class);
    private final Map<End, Described<Double>> noises = new EnumMap<>(End.class);

    /**
     * Makes a reader.
     *
     * @param sky the section that says what the path takes
     * @param distanceMetres length of the path
     * @param readings what was read at the ends
     */
    LevelReader(Section sky, double distanceMetres, Map<End, ReadSeries> readings) {
        this.sky = sky;
        this.distanceMetres = distanceMetres;
        this.readings = Map.copyOf(readings);
        this.losses = sky.build(this::checkedLosses);
        this.dayToDayDb = sky.has(ScenarioFormat.DAY_TO_DAY)
                ? sky.build(() -> sky.input(ScenarioFormat.DAY_TO_DAY).sane(ScenarioFormat.DAY_TO_DAY.component()))
                : draws -> 0.0;
        if (sky.has(ScenarioFormat.FREQUENCY)) {
            sky.build(() -> NoiseEnvironment.CITY.medianFigureDb(sky.get(ScenarioFormat.FREQUENCY)));
        }
    }

    /** Returns the levels that were worked out so far, by end; none where the SNR is stated. */
    Map<End, Described<Levels>> levels() {
        return Map.copyOf(levels);
    }

    /** Returns the noise at an end in dBm, if its level was worked out and is not just a ratio. */
    Optional<Described<Double>> noiseDbm(End at) {
        return Optional.ofNullable(noises.get(at));
    }

    private Input checkedLosses() {
        Input stated = sky.input(ScenarioFormat.LOSSES);
        Described<LinkBudget> probe = draws -> new LinkBudget(0, 0, 0, 1e6, 1, stated.in(draws));
        probe.tried();
        return stated;
    }

    /** Returns by how much this day's level of the sky wave lies over the usual one, in dB, in both directions. */
    Described<Double> dayToDayDb() {
        return dayToDayDb;
    }

    /** Returns the SNR in 3 kHz at an end, in dB; worthless if the document had a problem. */
    Described<Double> snrDb(End at, Section end, Section other) {
        if (end.isGivenUp()) {
            return end.input(ScenarioFormat.SNR)::in;
        }
        Optional<ReadSeries> read = Optional.ofNullable(readings.get(at));
        if (read.filter(ReadSeries.NONE::equals).isPresent()) {
            return draws -> 0.0;
        }
        if (read.isPresent()) {
            return readSnrDb(at, end, other, read.get());
        }
        boolean isSplit = end.has(ScenarioFormat.SIGNAL)
                || end.has(ScenarioFormat.NOISE)
                || end.has(ScenarioFormat.NOISE_ENVIRONMENT);
        if (!end.has(ScenarioFormat.SNR) && (isSplit || other.has(ScenarioFormat.TRANSMITTER_POWER))) {
            Described<Double> usual = signalDbm(end, other);
            Described<Double> signal = draws -> usual.in(draws) + dayToDayDb.in(draws);
            Described<Double> noise = noiseDbm(end);
            noises.put(at, noise);
            levels.put(at, draws -> new Levels(signal.in(draws), noise.in(draws)));
            return draws -> signal.in(draws) - noise.in(draws);
        }
        if (isSplit) {
            end.problem(
                    ScenarioFormat.SNR,
                    "stands beside signal, noise or noise-environment",
                    "state either the snr or signal and noise");
        }
        Input snr = end.input(ScenarioFormat.SNR);
        return draws -> snr.in(draws) + dayToDayDb.in(draws);
    }

    /** The day's level is in what was read of the signal. */
    private Described<Double> readSnrDb(End at, Section end, Section other, ReadSeries read) {
        refuseBeside(end, ScenarioFormat.SNR);
        Described<Double> error = meterError(end);
        if (!read.snr().isEmpty()) {
            refuseBeside(end, ScenarioFormat.SIGNAL);
            refuseBeside(end, ScenarioFormat.NOISE);
            refuseBeside(end, ScenarioFormat.NOISE_ENVIRONMENT);
            double snrDb = ReadSeries.atSend(read.snr());
            return draws -> snrDb - error.in(draws);
        }
        Described<Double> signal = readSignalDbm(end, other, read, error);
        Described<Double> noise = readNoiseDbm(end, read);
        noises.put(at, noise);
        levels.put(at, draws -> new Levels(signal.in(draws), noise.in(draws)));
        return draws -> signal.in(draws) - noise.in(draws);
    }

    private Described<Double> readSignalDbm(Section end, Section other, ReadSeries read, Described<Double> error) {
        if (read.signal().isEmpty()) {
            Described<Double> usual = signalDbm(end, other);
            return draws -> usual.in(draws) + dayToDayDb.in(draws);
        }
        refuseBeside(end, ScenarioFormat.SIGNAL);
        double signalDbm = ReadSeries.atSend(read.signal());
        return draws -> signalDbm - error.in(draws);
    }

    private Described<Double> readNoiseDbm(Section end, ReadSeries read) {
        if (read.noise().isEmpty()) {
            return noiseDbm(end);
        }
        refuseBeside(end, ScenarioFormat.NOISE);
        refuseBeside(end, ScenarioFormat.NOISE_ENVIRONMENT);
        double noiseDbm = ReadSeries.atSend(read.noise());
        return draws -> noiseDbm;
    }

    private static Described<Double> meterError(Section end) {
        Section part = end.part(ScenarioFormat.READINGS);
        return part.build(
                () -> part.input(ScenarioFormat.READINGS_ERROR).sane(ScenarioFormat.READINGS_ERROR.component()));
    }

    private static void refuseBeside(Section end, Key<?> key) {
        if (end.has(key)) {
            end.problem(key, "stands beside readings that say it", "leave out either");
        }
    }

    private Described<Double> signalDbm(Section end, Section other) {
        if (end.has(ScenarioFormat.SIGNAL) || !other.has(ScenarioFormat.TRANSMITTER_POWER)) {
            return end.input(ScenarioFormat.SIGNAL)::in;
        }
        double powerDbm = other.get(ScenarioFormat.TRANSMITTER_POWER);
        if (other.has(ScenarioFormat.SIGNAL) && end.has(ScenarioFormat.TRANSMITTER_POWER)) {
            return reciprocalDbm(
                    other.input(ScenarioFormat.SIGNAL), end.get(ScenarioFormat.TRANSMITTER_POWER), powerDbm);
        }
        double frequencyHz = sky.get(ScenarioFormat.FREQUENCY);
        double slantMetres = distance(other);
        Input transmitGain = other.build(() -> checkedGain(other));
        Input receiveGain = end.build(() -> checkedGain(end));
        return draws -> new LinkBudget(
                        powerDbm,
                        transmitGain.in(draws),
                        receiveGain.in(draws),
                        frequencyHz,
                        slantMetres,
                        losses.in(draws))
                .receivedDbm();
    }

    /**
     * Returns what an end hears over the path that takes as much, antennas included, as the other end's signal says: a path
     * takes the same both ways.
     */
    private Described<Double> reciprocalDbm(Input heardByOther, double ownPowerDbm, double otherPowerDbm) {
        if (sky.has(ScenarioFormat.LOSSES)) {
            sky.warn(
                    ScenarioFormat.LOSSES,
                    "is not used: " + heardByOther.key() + " and both powers already say what the path takes");
        }
        return draws -> heardByOther.in(draws) + (otherPowerDbm - ownPowerDbm);
    }

    private double distance(Section sender) {
        if (distanceMetres > 0) {
            return distanceMetres;
        }
        sender.problem(
                ScenarioFormat.TRANSMITTER_POWER,
                "gives no signal over a distance of 0",
                "state the distance, or the signal at the other end");
        return 1;
    }

    private static Input checkedGain(Section station) {
        Input gain = station.input(ScenarioFormat.ANTENNA_GAIN);
        Described<LinkBudget> probe = draws -> new LinkBudget(0, 0, gain.in(draws), 1e6, 1, 0);
        probe.tried();
        return gain;
    }

    private Described<Double> noiseDbm(Section end) {
        Optional<NoiseEnvironment> environment = end.find(ScenarioFormat.NOISE_ENVIRONMENT);
        if (environment.isEmpty()) {
            return end.input(ScenarioFormat.NOISE)::in;
        }
        if (end.has(ScenarioFormat.NOISE)) {
            end.problem(
                    ScenarioFormat.NOISE, "stands beside noise-environment", "state either noise or noise-environment");
        }
        double medianDbm = environment.get().medianDbm(sky.get(ScenarioFormat.FREQUENCY));
        String key = end.noteUncertain(ScenarioFormat.NOISE_ENVIRONMENT);
        return draws -> medianDbm + environment.get().overMedianDb(draws.probability(key));
    }
}
