package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Sky;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.LossCurves;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.session.Session;
import org.ionohaul.session.SessionParts;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * All rate policies with one and the same waveforms and rules, under the same skies of three kinds.
 *
 * <p>The table is kept in {@code results/reference/rate-policies.csv}; renew it with {@code mvn test
 * -Dtest=PolicyComparisonTest -Dgolden.renew=true} and review the difference.
 */
final class PolicyComparisonTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "rate-policies.csv");
    private static final int TRIALS = 100;
    private static final double SECOND = 1e9;

    /** Seven data rates of one carrier, frames of about a second, no combining: the policy alone makes the difference. */
    private static final String MODE = """
            title = "Ladder bench"
            about = "Invented to compare rate policies."

            [emission]
            bandwidth = "2700 Hz"
            crest-factor = "3 dB"

            [waveform]
            symbol-rate = "2400 Bd"
            known-share = "25 %"
            overhead = "4 B"
            delay-tolerance = "6 ms"
            tracking = "20 ms"
            gap = "1.5 dB"
            ceiling = "24 dB"
            preamble = "200 ms"
            detection = "-6 dB"

            [[rate]]
            modulation = "bpsk"
            code-rate = "1/8"
            payload = "24 B"

            [[rate]]
            modulation = "bpsk"
            code-rate = "1/4"
            payload = "52 B"

            [[rate]]
            modulation = "bpsk"
            code-rate = "1/2"
            payload = "108 B"

            [[rate]]
            modulation = "qpsk"
            code-rate = "1/2"
            payload = "221 B"

            [[rate]]
            modulation = "qpsk"
            code-rate = "3/4"
            payload = "333 B"

            [[rate]]
            modulation = "8-psk"
            code-rate = "2/3"
            payload = "446 B"

            [[rate]]
            modulation = "16-qam"
            code-rate = "3/4"
            payload = "671 B"

            [acknowledgement]
            modulation = "bpsk"
            code-rate = "1/8"
            payload = "0 B"
            overhead = "8 B"

            [call]
            modulation = "bpsk"
            code-rate = "1/8"
            payload = "0 B"
            overhead = "12 B"

            [control]
            modulation = "bpsk"
            code-rate = "1/8"
            payload = "0 B"
            overhead = "12 B"

            [arq]
            scheme = "selective-repeat"
            window = 32
            short-over = 8
            long-over = 8
            longest-over = "30 s"
            combining = "none"
            answer-to-silence = "repeat"
            silences-to-lost = 20
            listens-first = false
            margin = "100 ms"
            processing = "50 ms"

            [session]
            call-attempts = 10
            call-pause = "2 s"
            introductions = 1
            control-attempts = 10
            resumes = true
            redials = 20
            redial-pause = "10 s"

            [rate-policy]
            start-rate = 4
            """;

    private static final String SCENARIO = """
            title = "Speed policies compared"
            seed = 5
            trials = TRIALS
            horizon = "4 h"
            distance = "800 km"
            modes = MODES

            [[transfer]]
            name = "file"
            files = [{ name = "file", size = "60 kB" }]
            directions = ["upload"]
            deadlines = ["20 min"]

            [near]
            name = "Near"
            snr = "16 dB"

            [near.station]
            hang = "20 ms"
            relay = "15 ms"
            recovery = "30 ms"

            [far]
            name = "Far"
            snr = "16 dB"

            [far.station]
            hang = "20 ms"
            relay = "15 ms"
            recovery = "30 ms"

            [sky]
            condition = "CONDITION"
            slow-variation = { deviation = "2.5 dB", time-constant = "45 s" }
            """;

    private static final Map<String, String> RATE_POLICIES = new LinkedHashMap<>();

    static {
        RATE_POLICIES.put("omniscient", "policy = \"omniscient\"");
        RATE_POLICIES.put("fixed", "policy = \"fixed\"");
        RATE_POLICIES.put(
                "count",
                "policy = \"count\"\ngood-to-rise = 2\nbad-to-fall = 1\nbad-share = \"40 %\"\ndoubles-patience = false");
        RATE_POLICIES.put(
                "count-patient",
                "policy = \"count\"\ngood-to-rise = 2\nbad-to-fall = 1\nbad-share = \"40 %\"\ndoubles-patience = true");
        RATE_POLICIES.put(
                "error-rate",
                "policy = \"error-rate\"\nrise-below = \"10 %\"\nfall-above = \"40 %\"\nmemory = \"40 %\"");
        RATE_POLICIES.put(
                "snr-lookup",
                "policy = \"snr-lookup\"\ntarget-loss = \"20 %\"\nhysteresis = \"1 dB\"\ncorrection-step = \"0.5 dB\"\n"
                        + "estimate-deviation = \"1.5 dB\"");
        RATE_POLICIES.put(
                "expected-airtime", "policy = \"expected-airtime\"\nsampling-share = \"10 %\"\nmemory = \"30 %\"");
        RATE_POLICIES.put(
                "latent-snr",
                "policy = \"latent-snr\"\nprior-deviation = \"8 dB\"\nforgetting = \"0.5 dB/√s\"\n"
                        + "estimate-deviation = \"1.5 dB\"");
    }

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void writeModes() throws IOException {
        Files.createDirectory(folder.resolve("modes"));
        for (Map.Entry<String, String> ratePolicy : RATE_POLICIES.entrySet()) {
            Files.writeString(
                    folder.resolve("modes").resolve(ratePolicy.getKey() + ".toml"),
                    MODE + ratePolicy.getValue() + "\n");
        }
    }

    @Test
    void noPolicyBeatsTheOneThatKnowsTheSky() throws IOException, ScenarioProblems {
        List<String> lines = new ArrayList<>();
        lines.add("sky,policy,median_s,ninety_percent_s,airtime_at_wrong_rate,time_over_omniscient,standard_error");
        for (String condition : List.of("mid-latitude quiet", "mid-latitude moderate", "mid-latitude disturbed")) {
            Scenario scenario = scenario(condition);
            double[] yardstick = run(scenario, scenario.modes().get(0), TRIALS).seconds;
            for (Mode mode : scenario.modes()) {
                Runs runs = run(scenario, mode, TRIALS);
                double[] ratios = new double[TRIALS];
                Arrays.setAll(ratios, at -> Math.log(runs.seconds[at] / yardstick[at]));
                double mean = Arrays.stream(ratios).average().orElseThrow();
                double error = standardError(ratios, mean);
                assertTrue(mean >= -4 * error, mode.name() + " beats the omniscient policy under " + condition);
                lines.add(String.format(
                        Locale.ROOT,
                        "%s,%s,%.0f,%.0f,%.2f,%.3f,%.3f",
                        condition,
                        mode.name(),
                        quantile(runs.seconds, 0.5),
                        quantile(runs.seconds, 0.9),
                        runs.wrongShare,
                        Math.exp(mean),
                        error));
            }
        }
        assertEquals(1 + 3 * RATE_POLICIES.size(), lines.size());
        if (Boolean.getBoolean("golden.renew")) {
            Files.write(TABLE, lines);
        }
        assertEquals(Files.readAllLines(TABLE), lines);
    }

    @Test
    void moreSnrNeverHurtsOnAverage() throws IOException, ScenarioProblems {
        Scenario middling = scenario("mid-latitude disturbed");
        int compared = 0;
        for (int modeAt = 0; modeAt < middling.modes().size(); modeAt++) {
            double[] weaker = new double[0];
            for (int snrDb = 7; snrDb <= 22; snrDb += 5) {
                Scenario scenario = read(Map.of("near.snr", snrDb + " dB", "far.snr", snrDb + " dB"));
                Mode mode = scenario.modes().get(modeAt);
                double[] stronger = run(scenario, mode, 25).seconds;
                if (weaker.length > 0) {
                    assertNotSlower(mode.name() + " at " + snrDb + " dB", weaker, stronger);
                    compared++;
                }
                weaker = stronger;
            }
        }
        assertEquals(3 * RATE_POLICIES.size(), compared);
    }

    private static void assertNotSlower(String name, double[] weaker, double[] stronger) {
        double[] gains = new double[weaker.length];
        Arrays.setAll(gains, at -> Math.log(weaker[at] / stronger[at]));
        double mean = Arrays.stream(gains).average().orElseThrow();
        assertTrue(mean >= -4 * standardError(gains, mean), name + " is slower by " + -mean);
    }

    @Test
    void onASteadyPathMostAirtimeGoesToTheDataRateThatTheNeedTableNames() throws IOException, ScenarioProblems {
        scenario("flat");
        LossCurves curves = curves(read(Map.of()));
        for (int dataRate = 2; dataRate < curves.dataRateCount(); dataRate++) {
            double meterDb = (curves.needDb(dataRate, 0.2) + curves.needDb(dataRate + 1, 0.2)) / 2;
            // The crest factor of 3 dB lowers what the meter shows.
            String snr = String.format(Locale.ROOT, "%.2f dB", meterDb + 3);
            Scenario scenario = read(Map.of("near.snr", snr, "far.snr", snr, "sky.slow-variation.deviation", "0 dB"));
            for (String policy : List.of("snr-lookup", "latent-snr", "omniscient", "error-rate")) {
                assertEquals(dataRate, mostUsedDataRate(scenario, policy), policy + " at " + snr);
            }
        }
    }

    private static LossCurves curves(Scenario scenario) {
        return BenchCurves.of(
                new LinkPlan(scenario, scenario.modes().get(0)).spec().signals());
    }

    private static int mostUsedDataRate(Scenario scenario, String policy) {
        Mode mode = scenario.modes().stream()
                .filter(it -> it.name().equals(policy))
                .findFirst()
                .orElseThrow();
        SessionResult result =
                new Trials(scenario).run(scenario.transfers().get(0), Direction.UPLOAD, mode, 0, SessionTrace.NONE);
        int most = 0;
        for (int at = 1; at < result.dataRates().size(); at++) {
            most = result.dataRates().get(at).airtimeNanos()
                            > result.dataRates().get(most).airtimeNanos()
                    ? at
                    : most;
        }
        return most + 1;
    }

    private Scenario read(Map<String, String> changes) throws ScenarioProblems {
        return ScenarioReader.read(folder.resolve("policies.toml"), changes);
    }

    private Scenario scenario(String condition) throws IOException, ScenarioProblems {
        Path file = folder.resolve("policies.toml");
        String modes = "\"" + String.join("\", \"", RATE_POLICIES.keySet()) + "\"";
        String text = SCENARIO.replace("TRIALS", Integer.toString(TRIALS))
                .replace("MODES", "[" + modes + "]")
                .replace("CONDITION", condition);
        Files.writeString(file, text);
        return read(Map.of());
    }

    private static Runs run(Scenario scenario, Mode mode, int count) {
        ModeWiring wiring = new ModeWiring(scenario, mode);
        Trials trials = new Trials(scenario);
        double[] seconds = new double[count];
        long horizonNanos = Nanos.of(scenario.horizonSeconds());
        Overseer overseer = new Overseer();
        for (int trial = 0; trial < count; trial++) {
            TrialStreams streams = new TrialStreams(scenario.seed(), trial);
            Sky sky = trials.skies().sky(trial);
            SessionParts parts = wiring.parts(
                    wiring.under(sky),
                    streams,
                    scenario.transfers().get(0),
                    Direction.UPLOAD,
                    overseer,
                    SessionMoment.FIRST);
            overseer.yardstick =
                    Optional.of(new OmniscientPolicy(wiring.yardstick(sky, Direction.UPLOAD, SessionMoment.FIRST)));
            SessionResult result = new Session(parts).run(horizonNanos);
            seconds[trial] = result.deliveredNanos().orElse(horizonNanos) / SECOND;
        }
        return new Runs(seconds, overseer.wrongNanos / (double) overseer.airtimeNanos);
    }

    private static double quantile(double[] values, double probability) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(probability * sorted.length) - 1];
    }

    private static double standardError(double[] values, double mean) {
        double squares =
                Arrays.stream(values).map(it -> (it - mean) * (it - mean)).sum();
        return Math.sqrt(squares / (values.length - 1) / values.length);
    }

    private static final class Runs {
        private final double[] seconds;
        private final double wrongShare;

        Runs(double[] seconds, double wrongShare) {
            this.seconds = seconds;
            this.wrongShare = wrongShare;
        }
    }

    /** Compares each over's data rate with the one that the yardstick would have taken at the same instant. */
    private static final class Overseer implements SessionTrace {
        private Optional<RatePolicy> yardstick = Optional.empty();
        private int best;
        private long airtimeNanos;
        private long wrongNanos;

        @Override
        public void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {
            best = yardstick.orElseThrow().chooseDataRate(atNanos);
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            if (burst.message() == Message.OVER) {
                airtimeNanos += durationNanos;
                wrongNanos += burst.dataRate() == best ? 0 : durationNanos;
            }
        }
    }
}
