package org.ionohaul.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Radio;
import org.ionohaul.link.StationTimes;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.SkyDescription;
import org.ionohaul.scenario.StationDescription;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Cause;
import org.ionohaul.session.DataRateUse;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionRules;
import org.ionohaul.session.TimeBudget;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.ionohaul.waveform.Receiver;

/** Scenarios and sessions made up for tests: no radio, just instants. */
public final class InventedStudy {
    public static final long SECOND = 1_000_000_000L;
    public static final Transfer LETTER = new Transfer(
            "letter",
            List.of(new PayloadFile("letter", 2000)),
            List.of(Direction.UPLOAD, Direction.DOWNLOAD),
            List.of(60.0, 120.0));

    private InventedStudy() {}

    public static Scenario scenario(int trials, Transfer transfer, String... modes) {
        StationTimes times = new StationTimes(0, 0, 0, 0);
        return new Scenario(
                "invented",
                "Two invented posts",
                42,
                trials,
                3600,
                100_000,
                List.of(transfer),
                List.of(modes).stream().map(InventedStudy::mode).toList(),
                new StationDescription("near", Radio.of(times), Double.POSITIVE_INFINITY),
                new StationDescription("far", Radio.of(times), Double.POSITIVE_INFINITY),
                draws -> {
                    throw new IllegalStateException("no radio here");
                });
    }

    /** A scenario of which some inputs are not known. */
    public static Scenario unknown(long seed, int trials, List<String> uncertainKeys) {
        Scenario plain = scenario(trials, LETTER, "hare");
        return new Scenario(
                plain.name(),
                plain.title(),
                seed,
                plain.trials(),
                plain.horizonSeconds(),
                plain.distanceMetres(),
                plain.transfers(),
                plain.modes(),
                plain.near(),
                plain.far(),
                new SkyDescription() {
                    @Override
                    public SkyConditions conditions(Draws draws) {
                        throw new IllegalStateException("no radio here");
                    }

                    @Override
                    public List<String> uncertainKeys() {
                        return uncertainKeys;
                    }
                });
    }

    public static Mode mode(String name) {
        BurstShape burst = new BurstShape(
                1,
                0,
                ModelledFrame.ofBytes(
                        Coding.oneByOne(Modulation.BPSK, 100, 1), new Receiver(0, 0, 0, 100), 0, 10, 2, 0));
        return new Mode(
                name,
                name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1),
                "invented for a test",
                new Emission(500, 0),
                List.of(burst),
                burst,
                burst,
                burst,
                new ArqRules(
                        ArqScheme.STOP_AND_WAIT,
                        1,
                        1,
                        1,
                        SECOND,
                        Combining.NONE,
                        0,
                        ArqRules.AnswerToSilence.REPEAT,
                        3,
                        false,
                        0,
                        0),
                new RatePolicyRules.Fixed(1),
                new SessionRules(1, 0, 0, 1, true, 0, true, 0),
                0);
    }

    /** A session that delivers in so many seconds, 5 of them dialling. */
    public static SessionResult delivered(double seconds) {
        long nanos = Math.round(seconds * SECOND);
        return new SessionResult(
                Outcome.CLOSED,
                Ending.COMPLETED,
                nanos,
                OptionalLong.of(nanos),
                OptionalLong.of(nanos),
                OptionalLong.of(nanos),
                List.of(OptionalLong.of(nanos)),
                ProgressCurve.of(new long[] {nanos / 2, nanos}, new long[] {1000, 2000}),
                budget(Map.of(Cause.DIALLING, 5 * SECOND, Cause.NEW_PAYLOAD, nanos - 5 * SECOND)),
                List.of(new DataRateUse(nanos - 5 * SECOND, 20, 4)),
                0,
                10,
                1,
                0);
    }

    /** A session that gives up after so many seconds, all but the first spent redialling, with half of the bytes held. */
    public static SessionResult gaveUp(double seconds) {
        return unfinished(Outcome.GAVE_UP, Ending.LINK_LOST, seconds);
    }

    /** A session that had a link until its operator broke off, after so many seconds, with half of the bytes held. */
    public static SessionResult outOfPatience(double seconds) {
        return unfinished(Outcome.GAVE_UP, Ending.OUT_OF_PATIENCE, seconds);
    }

    /** A session with all bytes over there after so many seconds, of which those after the first half are wrong. */
    public static SessionResult deliveredWrong(Ending ending, double seconds) {
        return unfinished(Outcome.DELIVERED_WRONG, ending, seconds);
    }

    /** A session that never lost its link and still runs at the horizon, after so many seconds. */
    public static SessionResult running(double seconds) {
        return unfinished(Outcome.RUNNING, Ending.AT_HORIZON, seconds);
    }

    private static SessionResult unfinished(Outcome outcome, Ending ending, double seconds) {
        long nanos = Math.round(seconds * SECOND);
        return new SessionResult(
                outcome,
                ending,
                nanos,
                OptionalLong.empty(),
                OptionalLong.empty(),
                OptionalLong.empty(),
                List.of(OptionalLong.empty()),
                ProgressCurve.of(new long[] {nanos / 2}, new long[] {1000}),
                budget(Map.of(Cause.INTRODUCTIONS, SECOND, Cause.REDIALLING, nanos - SECOND)),
                List.of(new DataRateUse(0, 0, 0)),
                outcome == Outcome.GAVE_UP ? 2 : 0,
                0,
                0,
                0);
    }

    /** A session that dials for so many seconds in vain. */
    public static SessionResult neverLinked(Ending ending, double seconds) {
        long nanos = Math.round(seconds * SECOND);
        return new SessionResult(
                ending.isAtHorizon() ? Outcome.RUNNING : Outcome.GAVE_UP,
                ending,
                nanos,
                OptionalLong.empty(),
                OptionalLong.empty(),
                OptionalLong.empty(),
                List.of(OptionalLong.empty()),
                ProgressCurve.of(new long[0], new long[0]),
                budget(Map.of(Cause.DIALLING, nanos)),
                List.of(new DataRateUse(0, 0, 0)),
                0,
                0,
                0,
                0);
    }

    /**
     * A session whose receiver holds its first 100 bytes after so many seconds and then so many bytes a second, until
     * the file or the hour is over; of each second after the entry a quarter goes into repeats.
     */
    public static SessionResult steady(double entrySeconds, double bytesPerSecond, long bytes) {
        return inOvers(entrySeconds, bytesPerSecond, bytes, 100);
    }

    /** The same, in overs of so many bytes; the last one is as short as what is left. */
    public static SessionResult inOvers(double entrySeconds, double bytesPerSecond, long bytes, long overBytes) {
        List<Long> instants = new ArrayList<>();
        List<Long> held = new ArrayList<>();
        for (long end = overBytes; end < bytes + overBytes; end += overBytes) {
            long b = Math.min(end, bytes);
            double seconds = entrySeconds + (double) b / bytesPerSecond;
            if (seconds <= 3600) {
                instants.add(Math.round(seconds * SECOND));
                held.add(b);
            }
        }
        boolean isDelivered = held.contains(bytes);
        long ended = isDelivered ? instants.get(instants.size() - 1) : 3600 * SECOND;
        OptionalLong delivered = isDelivered ? OptionalLong.of(ended) : OptionalLong.empty();
        long entry = Math.round(entrySeconds * SECOND);
        long repeats = (ended - entry) / 4;
        return new SessionResult(
                isDelivered ? Outcome.CLOSED : Outcome.RUNNING,
                isDelivered ? Ending.COMPLETED : Ending.AT_HORIZON,
                ended,
                delivered,
                delivered,
                delivered,
                List.of(delivered),
                ProgressCurve.of(
                        instants.stream().mapToLong(it -> it).toArray(),
                        held.stream().mapToLong(it -> it).toArray()),
                budget(Map.of(
                        Cause.DIALLING,
                        entry,
                        Cause.REPEATED_PAYLOAD,
                        repeats,
                        Cause.NEW_PAYLOAD,
                        ended - entry - repeats)),
                List.of(new DataRateUse(ended - entry, 20, 4)),
                0,
                10,
                1,
                0);
    }

    private static TimeBudget budget(Map<Cause, Long> nanos) {
        return TimeBudget.of(new EnumMap<>(nanos));
    }

    /** Trials that depend on their number alone and take a while that differs. */
    public static TrialSource chance(Scenario scenario) {
        return trial -> {
            UniformRandomProvider random = new TrialStreams(scenario.seed(), trial).open(Purpose.FADING, 0);
            List<SessionResult> results = new ArrayList<>();
            int sessions = scenario.modes().size()
                    * scenario.transfers().stream()
                            .mapToInt(it -> it.directions().size())
                            .sum();
            for (int i = 0; i < sessions; i++) {
                double seconds = 30 + 60 * random.nextDouble() * (i + 1);
                results.add(random.nextDouble() < 0.1 ? gaveUp(seconds) : delivered(seconds));
            }
            return results;
        };
    }

    /** The result of trials of one transfer, one way, given as one list of sessions a mode. */
    public static CaseTrials oneCase(
            List<Double> deadlines, List<String> modes, List<List<SessionResult>> sessionsByMode) {
        Transfer transfer = new Transfer("letter", LETTER.files(), List.of(Direction.UPLOAD), deadlines);
        return oneTransfer(transfer, modes, sessionsByMode).cases().get(0);
    }

    /** The result of trials of one file of so many bytes, one way, given as one list of sessions a mode. */
    public static StudyResult oneFileStudy(long bytes, List<String> modes, List<List<SessionResult>> sessionsByMode) {
        Transfer transfer =
                new Transfer("file", List.of(new PayloadFile("file", bytes)), List.of(Direction.UPLOAD), List.of());
        return oneTransfer(transfer, modes, sessionsByMode);
    }

    private static StudyResult oneTransfer(
            Transfer transfer, List<String> modes, List<List<SessionResult>> sessionsByMode) {
        int trials = sessionsByMode.get(0).size();
        return new StudyRunner(
                        scenario(trials, transfer, modes.toArray(String[]::new)),
                        trial -> sessionsByMode.stream()
                                .map(sessions -> sessions.get((int) trial))
                                .toList(),
                        1,
                        (done, asked) -> {},
                        () -> false)
                .run();
    }
}
