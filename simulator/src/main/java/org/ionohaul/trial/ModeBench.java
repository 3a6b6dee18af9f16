package org.ionohaul.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.link.Message;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.Radio;
import org.ionohaul.link.Signals;
import org.ionohaul.link.StationTimes;
import org.ionohaul.link.Timing;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.StationDescription;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.waveform.Waveform;

/**
 * Measures a mode for its data sheet: two stations alike, a strong and steady path for times, fading paths for needs.
 *
 * <p>The stations are an assumption, an ordinary transceiver with relays: 10 ms of hang, 15 ms for the relays, 20 ms until
 * the receiver has recovered; 1000 km apart.
 */
public final class ModeBench {
    /** The paths of the data sheet. */
    public static final List<FadingCondition> PATHS =
            List.of(FadingCondition.FLAT, FadingCondition.MODERATE, FadingCondition.POOR);

    private static final StationTimes STATION = new StationTimes(10_000_000, 15_000_000, 20_000_000, 0);
    private static final double DISTANCE_METRES = 1e6;
    private static final double STRONG_DB = 90;
    private static final double DAY_SECONDS = 86_400;
    private static final List<Long> SIZES_BYTES = List.of(1_000L, 10_000L, 100_000L);
    private static final int BURSTS = 1_000;
    private static final long SEED = 1;
    private static final double CURVE_MARGIN_DB = 4;

    private final Mode mode;
    private final Scenario undisturbed;
    private final Timing timing;
    private final Signals signals;
    private final List<FadingSkies> skies;
    private final List<SteadyNeed> needs;

    /** Prepares the bench for a mode. */
    public ModeBench(Mode mode) {
        this.mode = mode;
        this.undisturbed = undisturbed(mode);
        LinkPlan plan = new LinkPlan(undisturbed, mode);
        ModeSpec spec = plan.spec();
        this.timing = plan.timing(spec);
        this.signals = spec.signals();
        this.skies = PATHS.stream()
                .map(path -> new FadingSkies(
                        path.paths(), mode.emission().passband(), path == FadingCondition.FLAT ? 1 : BURSTS, SEED))
                .toList();
        this.needs = SteadyNeed.of(mode);
    }

    /** Returns the data sheet; takes some seconds. */
    public ModeCard card() {
        List<ModeCard.DataRate> dataRates = new ArrayList<>();
        for (int number = 1; number <= signals.dataRateCount(); number++) {
            dataRates.add(dataRate(number, signals.dataRate(number)));
        }
        return new ModeCard(
                mode,
                timing.answerNanos(Direction.UPLOAD.receiver()) * 1e-9,
                signals.singleNanos(Message.ACKNOWLEDGEMENT) * 1e-9,
                signals.singleNanos(Message.CALL) * 1e-9,
                mode.arq().scheme().answersEach() ? mistakenReplies() : 0,
                dataRates,
                errorFree());
    }

    private ModeCard.DataRate dataRate(int number, Waveform waveform) {
        int frames = timing.mostFrames(number);
        return new ModeCard.DataRate(
                number,
                waveform.payloadBytes(),
                waveform.burstNanos(1) * 1e-9,
                frames,
                waveform.burstNanos(frames) * 1e-9,
                8e9 * frames * waveform.payloadBytes() / timing.cycleNanos(number, frames),
                needs.get(number - 1).carrierSnrDb(),
                unnoticedErrors(new LossOnPath(waveform, skies.get(0))),
                IntStream.range(0, PATHS.size())
                        .mapToObj(i -> onPath(PATHS.get(i), new LossOnPath(waveform, skies.get(i))))
                        .toList());
    }

    private static double unnoticedErrors(LossOnPath steady) {
        double needDb = steady.needDb(SteadyNeed.LOSS);
        return Double.isFinite(needDb) ? steady.unnoticedErrors(needDb) : 0;
    }

    private double mistakenReplies() {
        FadingSkies last = skies.get(skies.size() - 1);
        double needDb = new LossOnPath(signals.dataRate(1), last).needDb(SteadyNeed.LOSS);
        return Double.isFinite(needDb) ? new LossOnPath(signals.acknowledgement(), last).unnoticedErrors(needDb) : 0;
    }

    private ModeCard.OnPath onPath(FadingCondition path, LossOnPath bench) {
        double crestDb = mode.emission().crestFactorDb();
        double half = bench.needDb(0.5);
        double hundredth = bench.needDb(0.01);
        return new ModeCard.OnPath(
                path,
                half - crestDb,
                bench.needDb(SteadyNeed.LOSS) - crestDb,
                hundredth - crestDb,
                Double.isInfinite(half) ? List.of() : curve(bench, half, Math.min(hundredth, half + 30)));
    }

    private List<ModeCard.LossPoint> curve(LossOnPath bench, double halfDb, double hundredthDb) {
        double crestDb = mode.emission().crestFactorDb();
        List<ModeCard.LossPoint> points = new ArrayList<>();
        double first = Math.floor(halfDb - crestDb - CURVE_MARGIN_DB);
        for (double snrDb = first; snrDb <= hundredthDb - crestDb + CURVE_MARGIN_DB; snrDb++) {
            points.add(new ModeCard.LossPoint(snrDb, bench.loss(snrDb + crestDb)));
        }
        return points;
    }

    private List<ModeCard.ErrorFree> errorFree() {
        List<SessionResult> results = new Trials(undisturbed).run(0);
        List<ModeCard.ErrorFree> rows = new ArrayList<>();
        for (int i = 0; i < SIZES_BYTES.size(); i++) {
            SessionResult result = results.get(i);
            rows.add(new ModeCard.ErrorFree(
                    SIZES_BYTES.get(i), seconds(result.deliveredNanos()), seconds(result.closedNanos())));
        }
        return rows;
    }

    private static double seconds(OptionalLong nanos) {
        return nanos.isPresent() ? nanos.getAsLong() * 1e-9 : Double.POSITIVE_INFINITY;
    }

    private static Scenario undisturbed(Mode mode) {
        StationDescription station = new StationDescription("either", Radio.of(STATION), Double.POSITIVE_INFINITY);
        SkyConditions strong = new SkyConditions(
                FadingCondition.FLAT.paths(),
                SlowVariation.NONE,
                Schedule.NONE,
                EndConditions.quiet(STRONG_DB),
                EndConditions.quiet(STRONG_DB));
        List<Transfer> transfers = SIZES_BYTES.stream()
                .map(bytes -> new Transfer(
                        bytes + " bytes",
                        List.of(new PayloadFile("file", bytes)),
                        List.of(Direction.UPLOAD),
                        List.of()))
                .toList();
        return new Scenario(
                "bench",
                "Undisturbed transfers",
                SEED,
                1,
                DAY_SECONDS,
                DISTANCE_METRES,
                transfers,
                List.of(mode),
                station,
                station,
                draws -> strong);
    }
}
