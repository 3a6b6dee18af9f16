package org.ionohaul.scenario;

import java.util.List;
import org.ionohaul.channel.Congestion;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.LinkBudget;
import org.ionohaul.channel.NoiseEnvironment;

/** The keys of a scenario file: what the reader accepts and the manual lists. */
final class ScenarioFormat {
    static final Key<String> TITLE = Key.of(
            "title", "title", Kind.text(), "A roster by evening", "One line that says what the scenario is about.");
    static final Key<Long> SEED = Key.of(
                    "seed", "seed", Kind.wholeNumber(), 7L, "Seed of all chance: the same seed gives the same results.")
            .otherwise(1L);
    static final Key<Integer> TRIALS = Key.of("trials", "trials", Kind.count(), 1000L, "How many trials, 1 or more.")
            .otherwise(1000L);
    static final Key<Double> HORIZON = Key.of(
                    "horizon",
                    "horizonSeconds",
                    Kind.quantity(Dimension.TIME),
                    "2 h",
                    "How long after pressing send a trial is watched, above 0.")
            .usually("1 min", "24 h");
    static final Key<Double> CLOCK = Key.of(
                    "clock", "clock", Moment.clock(), "18:05", "Time of day when the operator presses send.")
            .otherwise("12:00");
    static final Key<Double> DISTANCE = Key.of(
                    "distance",
                    "distanceMetres",
                    Kind.quantity(Dimension.DISTANCE),
                    "90 km",
                    "Length of the radio path, up to the ionosphere and down again; gives the propagation time.")
            .usually("0 km", "22000 km");
    static final Key<List<String>> MODES = Key.of(
            "modes",
            "modes",
            Kind.list(Kind.fileName()),
            List.of("fieldpost"),
            "The modes to compare: files in the folder modes beside the scenario, without .toml; a path from there if"
                    + " elsewhere.");

    static final Key<String> TRANSFER_NAME =
            Key.of("name", "name", Kind.name(), "photo", "Short name of the transfer, unlike the others'.");
    static final Key<List<Direction>> DIRECTIONS = Key.of(
            "directions",
            "directions",
            Kind.list(Kind.choice(Direction.class)),
            List.of("upload", "download"),
            "Which ways to simulate: upload is from near to far. The near end dials in either case.");
    static final Key<List<Deadline>> DEADLINES = Key.of(
            "deadlines",
            "deadlinesSeconds",
            Kind.list(Deadline.kind()),
            List.of("20 min", "45 min"),
            "Times after pressing send to judge by, or times of day (\"18:30\") that come after the clock; rising. No"
                    + " deadlines if left out.");

    static final Key<Boolean> ACCEPT_ERRORS = Key.of(
                    "accept-errors",
                    "acceptsErrors",
                    Kind.flag(),
                    true,
                    "Whether files are of use even with bytes that are wrong because no check noticed, as plain text may"
                            + " be; else such a file counts as not delivered.")
            .otherwise(false);

    static final Key<String> FILE_NAME = Key.of("name", "name", Kind.name(), "photo.jpg", "What people call the file.");
    static final Key<Integer> SIZE = Key.of(
                    "size", "size", Kind.bytes(), "48 kB", "Size before compression, 1 B or more.")
            .usually("1 B", "20 MB");
    static final Key<Double> COMPRESSION = Key.of(
                    "compression",
                    "compression",
                    Kind.compression(),
                    "60 %",
                    "What compression leaves of it on the air, above 0; a photo stays at 1.")
            .otherwise(1.0)
            .usually("1 %", "100 %");
    static final Group FILE = Group.of("files", "A file, in the order sent.", FILE_NAME, SIZE, COMPRESSION);
    static final Group TRANSFER = Group.of(
                    "transfer",
                    "What is sent in one session, and by when; repeated.",
                    TRANSFER_NAME,
                    DIRECTIONS,
                    DEADLINES,
                    ACCEPT_ERRORS)
            .with(FILE);

    static final Key<Moment> AT = Key.of(
            "at",
            "atSeconds",
            Moment.kind(),
            "18:20",
            "When: a time of day, or a time after pressing send (\"20 min\").");
    static final Key<Uncertain> RISE = Key.of(
                    "rise",
                    "levelDb",
                    Kind.uncertain(Dimension.RATIO),
                    "6 dB",
                    "By how much the level lies above the stated one then; points are joined by straight lines.")
            .usually("-40 dB", "40 dB");
    static final Group NOISE_POINT =
            Group.of("noise-schedule", "A point of the noise over the clock, above what snr or noise state.", AT, RISE);
    static final Group TREND_POINT =
            Group.of("trend", "A point of the path's median level over the clock, for both directions.", AT, RISE);

    static final Key<Uncertain> SNR = Key.of(
                    "snr",
                    "snrDb",
                    Kind.snr(),
                    "14 dB",
                    "Median SNR in 3 kHz at this end when the other sends a steady carrier at full power, when send is pressed.")
            .usually("-30 dB", "60 dB");
    static final Key<Uncertain> SIGNAL = Key.of(
                    "signal",
                    "signal",
                    Kind.meterOrDbm(-180, 0, "no receiver is told of less than -180 dBm or stands more than 0 dBm"),
                    "S7",
                    "In place of snr: how strong the other station's steady carrier is here, as a meter reading or in dBm.")
            .usually("-140 dBm", "S9+40");
    static final Key<Uncertain> NOISE = Key.of(
                    "noise",
                    "noise",
                    Kind.meterOrDbm(
                            -140,
                            -33,
                            "noise in 3 kHz lies between -140 dBm, that of a resistor, and S9+40, above any city's (ITU-R P.372)"),
                    "-103 dBm",
                    "In place of snr: the noise in a receiver 3 kHz wide, as a meter reading or in dBm.")
            .usually("-140 dBm", "S9+10");
    static final Key<NoiseEnvironment> NOISE_ENVIRONMENT = Key.of(
            "noise-environment",
            "noise-environment",
            Kind.choice(NoiseEnvironment.class),
            "rural",
            "In place of noise: the category of ITU-R P.372, whose spread over time is drawn once a trial; needs the"
                    + " sky's frequency.");
    static final Key<Double> TRANSMITTER_POWER = Key.of(
                    "power",
                    "powerDbm",
                    Kind.quantity(Dimension.POWER).map("a power", watts -> {
                        if (watts > 0 && watts <= 1e5) {
                            return LinkBudget.dbmOfWatts(watts);
                        }
                        throw new WrongValue("must be above 0 and at most 100 kW", Dimension.POWER.remedy());
                    }),
                    "100 W",
                    "Peak envelope power of this station; gives the other end its signal where that states neither snr nor"
                            + " signal.")
            .usually("10 mW", "2 kW");
    static final Key<Uncertain> ANTENNA_GAIN = Key.of(
                    "antenna-gain",
                    "receiveGainDbi",
                    Kind.uncertain(Dimension.GAIN),
                    "-3 dBi",
                    "Gain of this station's antenna towards the path, for sending and receiving.")
            .otherwise("0 dBi")
            .usually("-40 dBi", "20 dBi");
    static final Key<Congestion> CONGESTION = Key.of(
            "congestion",
            "congestion",
            Kind.choice(Congestion.class),
            "busy-evening",
            "How crowded the frequency is at this end, in plain words; more can be added under interference.");

    static final Key<Double> IMPULSE_SHARE = Key.of(
                    "share", "probability", Kind.share(), "2 %", "Share of slots with an impulse, from 0 to 1.")
            .usually("0 %", "50 %");
    static final Key<Double> IMPULSE_RISE = Key.of(
            "rise",
            "riseDb",
            Kind.quantity(Dimension.RATIO),
            "15 dB",
            "By how much an impulse raises the noise of its slot, 0 or more.");
    static final Key<Double> IMPULSE_SLOT = Key.of(
                    "slot", "slotSeconds", Kind.quantity(Dimension.TIME), "10 ms", "Length of a slot, 0.1 ms or more.")
            .usually("0.1 ms", "1 s");
    static final Group IMPULSES =
            Group.of("impulses", "Impulsive noise over the steady floor.", IMPULSE_SHARE, IMPULSE_RISE, IMPULSE_SLOT);

    static final Key<Double> VOLTAGE_DEVIATION = Key.of(
                    "vd",
                    "voltageDeviationDb",
                    Kind.quantity(Dimension.RATIO),
                    "6 dB",
                    "How much it crackles: root mean square over mean of the envelope in 3 kHz (Vd of ITU-R P.372); 1.05 dB is"
                            + " even hiss, 4 dB distant static, 8 dB a thunderstorm near by (from memory).")
            .usually("1.05 dB", "12 dB");
    static final Key<Double> CRASHES_UNDER_WAY = Key.of(
                    "under-way",
                    "underWay",
                    Kind.share(),
                    "10 %",
                    "Mean number of crashes under way at once, from 1 % to 100 % (Middleton's impulsive index): small for few"
                            + " and loud ones.")
            .otherwise(0.1);
    static final Key<Double> CRASH = Key.of(
                    "crash",
                    "crashSeconds",
                    Kind.quantity(Dimension.TIME),
                    "20 ms",
                    "For how long a crash keeps its level, 0.1 ms or more.")
            .otherwise("20 ms")
            .usually("0.1 ms", "1 s");
    static final Group ATMOSPHERICS = Group.of(
            "atmospherics",
            "Static of thunderstorms: the noise stated, but louder in crashes and lower between them. Even noise if left out.",
            VOLTAGE_DEVIATION,
            CRASHES_UNDER_WAY,
            CRASH);

    static final Key<Double> GAIN_RANGE = Key.of(
                    "range",
                    "rangeDb",
                    Kind.quantity(Dimension.RATIO),
                    "50 dB",
                    "How far below the strongest signal in its 3 kHz the receiver still hears: weaker ones drown in its own"
                            + " noise and distortion; above 0.")
            .usually("30 dB", "100 dB");
    static final Key<Double> ATTACK = Key.of(
                    "attack",
                    "attackSeconds",
                    Kind.quantity(Dimension.TIME),
                    "5 ms",
                    "How long it is overrun when somebody louder begins, until the gain has followed, 0 or more.")
            .usually("0 s", "100 ms");
    static final Key<Double> GAIN_RECOVERY = Key.of(
                    "recovery",
                    "recoverySeconds",
                    Kind.quantity(Dimension.TIME),
                    "300 ms",
                    "In what time the gain comes back by 20 dB after a strong signal ended, 0 or more.")
            .usually("0 s", "5 s");
    static final Group GAIN_CONTROL = Group.of(
            "gain-control",
            "The receiver's automatic gain control, by which a strong neighbour blocks a weak signal. Without it the receiver"
                    + " hears the weakest beside the strongest. Deafness after its own overs is station.recovery.",
            GAIN_RANGE,
            ATTACK,
            GAIN_RECOVERY);

    static final Key<Uncertain> VISITS = Key.of(
                    "visits",
                    "visitsPerHour",
                    Kind.uncertain(Dimension.RATE),
                    "6 /h",
                    "How often another station turns up on the frequency, on average.")
            .usually("0 /h", "120 /h");
    static final Key<Uncertain> VISIT = Key.of(
            "visit", "visitSeconds", Kind.uncertain(Dimension.TIME), "3 min", "Mean length of such a visit, above 0.");
    static final Key<Double> OVER = Key.of(
            "over",
            "overSeconds",
            Kind.quantity(Dimension.TIME),
            "15 s",
            "Mean length of the visitor's overs, above 0.");
    static final Key<Double> PAUSE = Key.of(
            "pause", "pauseSeconds", Kind.quantity(Dimension.TIME), "10 s", "Mean pause between its overs, above 0.");
    static final Key<VisitorLevel> MEDIAN = Key.of(
                    "median",
                    "medianDb",
                    VisitorLevel.kind(),
                    "3 dB",
                    "Median level of visitors: their own, \"S6\" or \"-97 dBm\"; or \"3 dB\" over the middle of the noise stated"
                            + " here, which stays as it is when the noise is drawn; or \"3 dB over noise\", which goes up and"
                            + " down with the noise drawn. In 3 kHz.")
            .usually("-30 dB", "60 dB");
    static final Key<Double> DEVIATION = Key.of(
                    "deviation",
                    "deviationDb",
                    Kind.quantity(Dimension.RATIO),
                    "8 dB",
                    "Standard deviation of their level from one to the next, 0 or more.")
            .usually("0 dB", "20 dB");
    static final Key<Double> BAND_SHARE = Key.of(
            "band-share",
            "bandShare",
            Kind.share(),
            "40 %",
            "Share of the 3 kHz that a visitor covers, above 0, at most 1.");
    static final Group INTERFERENCE = Group.of(
            "interference",
            "Other stations heard at this end; repeated for several kinds of them.",
            VISITS,
            VISIT,
            OVER,
            PAUSE,
            MEDIAN,
            DEVIATION,
            BAND_SHARE);

    static final Key<Long> HANG = Key.of(
                    "hang",
                    "hangNanos",
                    Kind.nanos(),
                    "30 ms",
                    "How long the transmitter stays up after the last symbol.")
            .usually("0 s", "1 s");
    static final Key<Long> RELAY = Key.of(
                    "relay",
                    "relayNanos",
                    Kind.nanos(),
                    "15 ms",
                    "How long the relays take to change over, either way.")
            .usually("0 s", "1 s");
    static final Key<Long> RECOVERY = Key.of(
                    "recovery", "recoveryNanos", Kind.nanos(), "25 ms", "How long the receiver is deaf after that.")
            .usually("0 s", "1 s");
    static final Key<Long> BUSY_DETECTION = Key.of(
                    "busy-detection",
                    "busyDetectionNanos",
                    Kind.nanos(),
                    "1 s",
                    "How long a station that listens before it sends must hear others without a break before it takes the"
                            + " frequency for occupied; \"0 s\" for one look. An ear or a squelch takes 0.5 to 2 s (common"
                            + " practice, no source).")
            .otherwise("0 s")
            .usually("0 s", "10 s");
    static final Group STATION = Group.of(
            "station",
            "How fast the station changes between sending and receiving, and notices others.",
            HANG,
            RELAY,
            RECOVERY,
            BUSY_DETECTION);

    static final Key<Long> FOLD_BACK_AFTER = Key.of(
                    "after",
                    "afterNanos",
                    Kind.nanos(),
                    "20 s",
                    "How long a cool transmitter may be keyed at full power, above 0. Sets made for speech give 10 to 60 s"
                            + " (common practice, no source).")
            .otherwise("30 s")
            .usually("2 s", "30 min");
    static final Key<Double> FOLD_BACK_DROP = Key.of(
                    "drop",
                    "dropDb",
                    Kind.quantity(Dimension.RATIO),
                    "3 dB",
                    "By how much its power is lower from then on, from 0 to 40 dB. Half power is what handbooks ask for in"
                            + " digital modes (common practice, no source).")
            .otherwise("3 dB")
            .usually("0 dB", "10 dB");
    static final Key<Long> FOLD_BACK_COOLING = Key.of(
                    "cooling",
                    "coolingNanos",
                    Kind.nanos(),
                    "45 s",
                    "How long it must receive to be as cool as at first, in proportion after less; 0 or more. About as long"
                            + " as it took to warm (common practice, no source).")
            .otherwise("30 s")
            .usually("0 s", "30 min");
    static final Group FOLD_BACK = Group.of(
            "fold-back",
            "A small set lowers its power in long overs to save its output stage, and cools while it receives; its power"
                    + " stays up if left out.",
            FOLD_BACK_AFTER,
            FOLD_BACK_DROP,
            FOLD_BACK_COOLING);

    static final Key<Uncertain> TUNING_OFFSET = Key.of(
                    "offset",
                    "offsetHz",
                    Kind.uncertain(Dimension.FREQUENCY),
                    "20 Hz",
                    "By how much it lies above the frequency agreed on when send is pressed. A set without a warmed reference"
                            + " errs by 2 or 3 parts in a million, some 20 Hz at 7 MHz (common practice, no source).")
            .otherwise("0 Hz ± 20 Hz")
            .usually("-200 Hz", "200 Hz");
    static final Key<Uncertain> TUNING_DRIFT = Key.of(
                    "drift",
                    "driftHzPerMinute",
                    Kind.uncertain(Dimension.DRIFT),
                    "1 Hz/min",
                    "By how much more each minute, as a set does that warms up.")
            .otherwise("0 Hz/min")
            .usually("-20 Hz/min", "20 Hz/min");
    static final Group TUNING = Group.of(
            "tuning",
            "How far this station is off the frequency, for sending and receiving alike; what counts is by how much the two"
                    + " stations differ, against the frequency-tolerance of each mode. Right on it if left out.",
            TUNING_OFFSET,
            TUNING_DRIFT);

    static final Key<String> READINGS_FILE = Key.of(
            "file",
            "file",
            Kind.fileName(),
            "evening.csv",
            "The table of readings, beside the scenario, or a path from its folder.");
    static final Key<Double> READINGS_AVERAGE = Key.of(
                    "average",
                    "averageSeconds",
                    Kind.quantity(Dimension.TIME),
                    "1 min",
                    "Over how long a level is an average, 0 or more: readings nearer together are averaged by it, of others it"
                            + " says how they were taken. It must hold many fades, or what is left of them counts twice.")
            .otherwise("1 min")
            .usually("5 s", "20 min");
    static final Key<Uncertain> READINGS_ERROR = Key.of(
                    "meter-error",
                    "errorDb",
                    Kind.uncertain(Dimension.RATIO),
                    "0 dB ± 2 dB",
                    "By how much all its readings of signal or SNR are too high.")
            .otherwise("0 dB")
            .usually("-20 dB", "20 dB");
    static final Group READINGS = Group.of(
            "readings",
            "What was measured here over a while, in place of this end's snr, or of signal and noise. Readings take the place of"
                    + " the trend and of what slow-variation is slower than they are; what is faster, and all fading, is"
                    + " simulated. How the table is written stands below, under A measured sky.",
            READINGS_FILE,
            READINGS_AVERAGE,
            READINGS_ERROR);

    static final Key<String> END_NAME =
            Key.of("name", "name", Kind.name(), "Weir Cottage", "What people call the station.");
    static final Key<Double> PATIENCE = Key.of(
                    "patience",
                    "patienceSeconds",
                    Kind.quantity(Dimension.TIME),
                    "45 min",
                    "How long its operator waits before breaking off; for ever if left out.")
            .usually("1 min", "24 h");
    static final Group NEAR = end("near", "The station that dials.");
    static final Group FAR = end("far", "The station that is called.");

    static final Key<Double> SLOW_DEVIATION = Key.of(
                    "deviation",
                    "deviationDb",
                    Kind.quantity(Dimension.RATIO),
                    "2.5 dB",
                    "Standard deviation of the median level around its mean, 0 or more.")
            .usually("0 dB", "10 dB");
    static final Key<Double> TIME_CONSTANT = Key.of(
                    "time-constant",
                    "timeConstantSeconds",
                    Kind.quantity(Dimension.TIME),
                    "45 s",
                    "After how long its correlation has fallen to 1/e, 1 s or more.")
            .usually("2 s", "30 min");
    static final Group SLOW_VARIATION = Group.of(
            "slow-variation",
            "Slow variation of the path's median level, apart from the fast fading; none if left out.",
            SLOW_DEVIATION,
            TIME_CONSTANT);

    static final Key<Uncertain> DELAY = Key.of(
                    "delay", "delaySeconds", Kind.uncertain(Dimension.TIME), "2 ms", "Delay after the earliest path.")
            .usually("0 s", "20 ms");
    static final Key<Uncertain> POWER = Key.of(
                    "power",
                    "powerDb",
                    Kind.uncertain(Dimension.RATIO),
                    "-3 dB",
                    "Mean power relative to the other paths.")
            .otherwise("0 dB")
            .usually("-40 dB", "20 dB");
    static final Key<Uncertain> DOPPLER_SHIFT = Key.of(
                    "doppler-shift",
                    "dopplerShiftHz",
                    Kind.uncertain(Dimension.FREQUENCY),
                    "0.5 Hz",
                    "Shift of its frequency.")
            .otherwise("0 Hz")
            .usually("-50 Hz", "50 Hz");
    static final Key<Uncertain> DOPPLER_SPREAD = Key.of(
                    "doppler-spread",
                    "dopplerSpreadHz",
                    Kind.uncertain(Dimension.FREQUENCY),
                    "1 Hz",
                    "Width of its Doppler spectrum, twice the standard deviation; 0 for a path that doesn't fade.")
            .usually("0 Hz", "50 Hz");
    static final Group PATH = Group.of(
            "path",
            "One way the signal takes; repeated, by rising delay.",
            DELAY,
            POWER,
            DOPPLER_SHIFT,
            DOPPLER_SPREAD);
    static final Key<FadingCondition> CONDITION = Key.of(
            "condition",
            "condition",
            Kind.choice(FadingCondition.class),
            "mid-latitude-disturbed-nvis",
            "The paths by the name of a standard condition (ITU-R F.1487, F.520); in place of path.");
    static final Key<Double> FREQUENCY = Key.of(
                    "frequency",
                    "frequencyHz",
                    Kind.quantity(Dimension.FREQUENCY),
                    "3.6 MHz",
                    "Carrier frequency; needed by power and noise-environment.")
            .usually("1.6 MHz", "30 MHz");
    static final Key<Uncertain> LOSSES = Key.of(
                    "losses",
                    "lossesDb",
                    Kind.uncertain(Dimension.RATIO),
                    "12 dB",
                    "What the path takes beyond spreading: absorption, polarisation, ground, feeders; used with power.")
            .otherwise("0 dB")
            .usually("0 dB", "80 dB");
    static final Key<Uncertain> DAY_TO_DAY = Key.of(
                    "day-to-day",
                    "dayToDayDb",
                    Kind.dayToDay(),
                    "mid-latitude",
                    "How far this day's level may lie from the usual one, where what is stated is the usual one: a forecast, a"
                            + " budget, the middle of a log; not for what the meter shows now. Drawn once a trial, for both"
                            + " directions. A number; or by how much a tenth of the days lie above and below, such as \"6 dB"
                            + " above / 8 dB below\"; or one of mid-latitude, mid-latitude-near-muf, high-latitude,"
                            + " high-latitude-near-muf: the decile deviations from day to day of ITU-R P.842 (from memory),"
                            + " by geomagnetic latitude below 60 degrees or not, and for frequencies well below or near the"
                            + " highest that the path carries.")
            .usually("-20 dB", "20 dB");

    static final Key<Double> DROP_OUT_BETWEEN = spellsBetween("5 min");
    static final Key<Double> DROP_OUT_LENGTH = spellsLength("2 s");
    static final Key<Double> DROP_OUT_DEPTH = Key.of(
                    "depth",
                    "changeDb",
                    Kind.step(),
                    "20 dB",
                    "By how much the sky wave is weaker meanwhile, above 0. As good as gone on most links: common practice, no"
                            + " source.")
            .otherwise("30 dB")
            .usually("3 dB", "60 dB");
    static final Group DROP_OUTS = Group.of(
            "drop-outs",
            "The path fails for a moment now and then, and comes back: chance decides when; both directions fail together, a"
                    + " ground wave does not. None if left out. Usual values: common practice, no source; they are what"
                    + " operators tell of nights that are not calm.",
            DROP_OUT_BETWEEN,
            DROP_OUT_LENGTH,
            DROP_OUT_DEPTH);
    static final Key<Double> SPORADIC_BETWEEN = spellsBetween("2 h");
    static final Key<Double> SPORADIC_LENGTH = spellsLength("20 min");
    static final Key<Double> SPORADIC_GAIN = Key.of(
                    "gain",
                    "changeDb",
                    Kind.step(),
                    "10 dB",
                    "By how much the sky wave is stronger meanwhile, above 0. A mirror that reflects nearly all: common"
                            + " practice, no source.")
            .otherwise("10 dB")
            .usually("3 dB", "40 dB");
    static final Group SPORADIC_E = Group.of(
            "sporadic-e",
            "A dense thin layer comes and goes and carries the sky wave better while it is there, in both directions; its"
                    + " echoes and fading are left as they are. None if left out. Usual values: common practice, no source"
                    + " (clouds of sporadic E last from minutes to hours, by day in summer).",
            SPORADIC_BETWEEN,
            SPORADIC_LENGTH,
            SPORADIC_GAIN);

    static final Key<Double> OVER_GROUND = Key.of(
                    "over-ground",
                    "overGroundMetres",
                    Kind.quantity(Dimension.DISTANCE),
                    "40 km",
                    "How far apart the stations are over ground, no more than the distance at the top: says by how much the"
                            + " ground wave arrives first.")
            .usually("0 km", "300 km");
    static final Key<Uncertain> GROUND_LEVEL = Key.of(
                    "level",
                    "levelDb",
                    Kind.uncertain(Dimension.RATIO),
                    "-6 dB",
                    "Its power over that of the sky wave as stated, at both ends. Equal at some 40 km on the lower bands over"
                            + " average ground, 10 to 12 dB less at twice the distance (common practice, no source).")
            .otherwise("-10 dB")
            .usually("-40 dB", "40 dB");
    static final Group GROUND_WAVE = Group.of(
            "ground-wave",
            "At short range both stations hear each other along the ground as well: a steady wave that arrives first, comes on"
                    + " top of the level stated, and neither fades nor follows trend, slow-variation, day-to-day, drop-outs"
                    + " and sporadic-e. None if left out.",
            OVER_GROUND,
            GROUND_LEVEL);

    static final Group SKY = Group.of("sky", "What lies between the ends.", CONDITION, FREQUENCY, LOSSES, DAY_TO_DAY)
            .with(PATH, GROUND_WAVE, SLOW_VARIATION, DROP_OUTS, SPORADIC_E, TREND_POINT);

    static final Group TOP = Group.of("", "The top of the file.", TITLE, SEED, TRIALS, HORIZON, CLOCK, DISTANCE, MODES)
            .with(TRANSFER, NEAR, FAR, SKY);

    private ScenarioFormat() {}

    private static Key<Double> spellsBetween(String usual) {
        return Key.of(
                        "between",
                        "betweenSeconds",
                        Kind.quantity(Dimension.TIME),
                        "10 min",
                        "Mean time from the end of one to the beginning of the next, 1 s or more.")
                .otherwise(usual)
                .usually("10 s", "24 h");
    }

    private static Key<Double> spellsLength(String usual) {
        return Key.of(
                        "length",
                        "lengthSeconds",
                        Kind.quantity(Dimension.TIME),
                        "4 s",
                        "Mean length of one, 0.1 s or more.")
                .otherwise(usual)
                .usually("0.5 s", "6 h");
    }

    private static Group end(String name, String meaning) {
        return Group.of(
                        name,
                        meaning,
                        END_NAME,
                        SNR,
                        SIGNAL,
                        NOISE,
                        NOISE_ENVIRONMENT,
                        TRANSMITTER_POWER,
                        ANTENNA_GAIN,
                        CONGESTION,
                        PATIENCE)
                .with(
                        READINGS,
                        NOISE_POINT,
                        IMPULSES,
                        ATMOSPHERICS,
                        INTERFERENCE,
                        GAIN_CONTROL,
                        STATION,
                        FOLD_BACK,
                        TUNING);
    }
}
