package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.NetRates;
import org.ionohaul.analysis.Rerun;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SkyAnswers;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Radio;
import org.ionohaul.link.StationTimes;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
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
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.TrialRow;
import org.ionohaul.trial.EndSky;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.TrialSky;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.ionohaul.waveform.Receiver;

/**
 * A study made up without simulating: round numbers whose quantiles can be reckoned on paper.
 *
 * <p>Of 100 trials, trial {@code i} of mode "quick" is through after {@code 10 (i + 1)} seconds up to trial 94; the last
 * five give up. Mode "tough" takes {@code 200 + 5 i} seconds and always gets through. The first of two files is through in
 * half the time.
 */
public final class FabricatedStudy {
    public static final int TRIALS = 100;
    public static final String AWKWARD_NAME = "roster <v2> & \"list\", final.txt";

    private static final long SECOND = 1_000_000_000L;
    private static final int LEVELS = 3;

    private static final SkyConditions SKY = new SkyConditions(
            List.of(new PropagationPath(0, 0, 0, 0)),
            SlowVariation.NONE,
            Schedule.NONE,
            EndConditions.quiet(17),
            EndConditions.quiet(11));

    private FabricatedStudy() {}

    public static StudyResult result() {
        return result(TRIALS);
    }

    /** Returns the study as it stands when it is interrupted after so many trials. */
    public static StudyResult result(int trialsDone) {
        return result(trialsDone, 95);
    }

    /** Returns a study in which "quick" gives up from so many trials on. */
    public static StudyResult result(int trialsDone, int quickDelivers) {
        return result(trialsDone, quickDelivers, 0);
    }

    /** Returns the study with mode "quick" so many seconds later. */
    public static StudyResult later(int seconds) {
        return result(TRIALS, 95, seconds);
    }

    /** Returns the study with an operator at the near end who breaks off after so many seconds. */
    public static StudyResult impatient(double patienceSeconds) {
        StudyResult result = result();
        Scenario patient = result.scenario();
        Scenario scenario = new Scenario(
                patient.name(),
                patient.title(),
                patient.seed(),
                patient.trials(),
                patient.horizonSeconds(),
                patient.distanceMetres(),
                patient.transfers(),
                patient.modes(),
                new StationDescription(patient.near().name(), patient.near().radio(), patienceSeconds),
                patient.far(),
                patient.sky());
        return new StudyResult(scenario, result.cases(), result.trialsAsked(), result.trialsDone());
    }

    private static StudyResult result(int trialsDone, int quickDelivers, int secondsLater) {
        Scenario scenario = scenario();
        List<CaseTrials> cases = new ArrayList<>();
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                cases.add(new CaseTrials(
                        transfer, direction, modes(scenario, transfer, trialsDone, quickDelivers, secondsLater)));
            }
        }
        return new StudyResult(scenario, cases, TRIALS, trialsDone);
    }

    public static Findings findings(int trialsDone) {
        return findings(result(trialsDone));
    }

    public static Findings findings(StudyResult result) {
        StudySummary summary = StudySummary.of(result);
        SkyAnswers skies = SkyAnswers.of(result, summary, FabricatedStudy::trial);
        return new Findings(
                result,
                summary,
                Findings.spreads(result),
                SizeAnswers.of(result),
                Optional.of(rates(result.scenario())),
                false,
                skies,
                sky(result.scenario()),
                Findings.races(result, summary, 600, new FabricatedRerun(result.scenario())),
                provenance());
    }

    /** "quick" gains 50 bit/s a decibel from 0 dB on, "tough" 20 bit/s from -15 dB on; of two trials each a tenth apart. */
    private static NetRates rates(Scenario scenario) {
        return new NetRates(
                2,
                600,
                scenario.modes().stream()
                        .map(mode -> new NetRates.OfMode(mode, rates(mode.name().equals("quick"))))
                        .toList());
    }

    private static List<NetRates.Point> rates(boolean isQuick) {
        return NetRates.SNR_DB.stream()
                .map(snrDb -> Math.max(0, isQuick ? 50 * snrDb : 20 * (snrDb + 15)))
                .map(rate -> new NetRates.Point(List.of(0.9 * rate, 1.1 * rate)))
                .toList();
    }

    /** The later the trial, the less the far end hears: 20 dB on trial 0, a tenth of a decibel less a trial. */
    private static TrialSky trial(long trial, double seconds) {
        return new TrialSky(new EndSky(17, 12, 0.25), new EndSky(20 - trial / 10.0, 11, 0.5));
    }

    /** Returns ten minutes of a sky that does not change: 17 dB at the near end, 11 dB at the far one. */
    public static SkyView sky() {
        return sky(scenario());
    }

    /** Its trials, which are as made up when they run again. */
    private record FabricatedRerun(Scenario scenario) implements Rerun {
        @Override
        public SessionResult session(Transfer transfer, Direction direction, Mode mode, long trial) {
            return FabricatedStudy.session(scenario.modes().indexOf(mode), transfer, (int) trial, 95, 0);
        }

        @Override
        public SkyView sky(long trial, double seconds) {
            return SkyView.of(scenario, trial, new Sky(SKY, new TrialStreams(scenario.seed(), trial)), seconds);
        }
    }

    private static SkyView sky(Scenario scenario) {
        return SkyView.of(scenario, 3, new Sky(SKY, new TrialStreams(scenario.seed(), 3)), 600);
    }

    public static Provenance provenance() {
        return new Provenance(
                "1.2.3-test",
                List.of(
                        new InputFile("weir.toml", "title = \"<Weir> & dam\"\n"),
                        new InputFile("modes/quick.toml", "")),
                Map.of("near.snr", "17 dB"));
    }

    private static Scenario scenario() {
        Transfer photo = new Transfer(
                "photo",
                List.of(new PayloadFile("gauge.jpg", 48_000), new PayloadFile(AWKWARD_NAME, 2_000)),
                List.of(Direction.UPLOAD, Direction.DOWNLOAD),
                List.of(300.0, 900.0));
        return new Scenario(
                "weir",
                "A photo from <Weir> & dam (invented)",
                4711,
                TRIALS,
                3600,
                90_000,
                List.of(photo),
                List.of(mode("quick", "Quick"), mode("tough", "Tough")),
                station("Weir Cottage"),
                station("Flood Desk"),
                draws -> SKY);
    }

    private static StationDescription station(String name) {
        return new StationDescription(name, Radio.of(new StationTimes(0, 0, 0, 0)), Double.POSITIVE_INFINITY);
    }

    private static Mode mode(String name, String title) {
        BurstShape burst = new BurstShape(
                0.1,
                -3,
                ModelledFrame.ofBytes(
                        Coding.oneByOne(Modulation.QPSK, 100, 0.5), new Receiver(0.002, 0, 1, 30), 0, 50, 4, 0));
        return new Mode(
                name,
                title,
                "Made up for a test.",
                new Emission(500, 3),
                List.of(burst, burst, burst),
                burst,
                burst,
                burst,
                new ArqRules(
                        ArqScheme.SELECTIVE_REPEAT,
                        8,
                        4,
                        8,
                        SECOND,
                        Combining.NONE,
                        0,
                        ArqRules.AnswerToSilence.REPEAT,
                        5,
                        true,
                        0,
                        0),
                new RatePolicyRules.Fixed(1),
                new SessionRules(3, SECOND, 2, 3, true, 2, true, SECOND),
                0.1);
    }

    private static List<ModeTrials> modes(
            Scenario scenario, Transfer transfer, int trials, int quickDelivers, int secondsLater) {
        return IntStream.range(0, scenario.modes().size())
                .mapToObj(mode -> new ModeTrials(
                        scenario.modes().get(mode),
                        LongStream.range(0, trials)
                                .mapToObj(trial -> TrialRow.of(
                                        trial, session(mode, transfer, (int) trial, quickDelivers, secondsLater)))
                                .toList()))
                .toList();
    }

    private static SessionResult session(int mode, Transfer transfer, int trial, int quickDelivers, int secondsLater) {
        boolean delivers = mode == 1 || trial < quickDelivers;
        long delivered = (mode == 0 ? secondsLater + 10L * (trial + 1) : 200L + 5L * trial) * SECOND;
        return session(transfer, delivered, delivers, budget(delivered + 4 * SECOND, mode));
    }

    /** Returns a session that ends four seconds after everything is through, or would be; its first file needs half the time. */
    static SessionResult session(Transfer transfer, long delivered, boolean delivers, TimeBudget budget) {
        long ended = delivered + 4 * SECOND;
        OptionalLong at = delivers ? OptionalLong.of(delivered) : OptionalLong.empty();
        long[] atNanos = {delivered / 2, delivered};
        long[] held = {transfer.totalBytes() / 2, transfer.totalBytes()};
        OptionalLong firstAt = delivers ? OptionalLong.of(delivered / 2) : at;
        return new SessionResult(
                delivers ? Outcome.CLOSED : Outcome.GAVE_UP,
                delivers ? Ending.COMPLETED : Ending.LINK_LOST,
                ended,
                at,
                delivers ? OptionalLong.of(delivered + SECOND) : OptionalLong.empty(),
                delivers ? OptionalLong.of(ended) : OptionalLong.empty(),
                transfer.files().size() == 1 ? List.of(at) : List.of(firstAt, at),
                delivers
                        ? ProgressCurve.of(atNanos, held)
                        : ProgressCurve.of(Arrays.copyOf(atNanos, 1), Arrays.copyOf(held, 1)),
                budget,
                IntStream.range(0, LEVELS)
                        .mapToObj(dataRate ->
                                new DataRateUse(delivered / (dataRate + 2), 100 * (dataRate + 1), 10 * dataRate))
                        .toList(),
                delivers ? 0 : 1,
                12,
                3,
                0);
    }

    private static TimeBudget budget(long ended, int mode) {
        Map<Cause, Long> nanos = new EnumMap<>(Cause.class);
        long left = ended;
        for (Cause cause : Cause.values()) {
            long share = cause == Cause.NEW_PAYLOAD ? ended / (3 + mode) : ended / (12 + mode);
            nanos.put(cause, share);
            left -= share;
        }
        nanos.merge(Cause.REPEATED_PAYLOAD, left, Long::sum);
        return TimeBudget.of(nanos);
    }
}
