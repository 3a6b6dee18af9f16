package org.ionohaul.scenario;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.rate.RatePolicyRules;

/** The keys of a mode's rate policy, which differ from policy to policy, and what each policy makes of them. */
final class RatePolicyFormat {
    static final Key<Integer> START_RATE =
            Key.of("start-rate", "startDataRate", Kind.count(), 1L, "Data rate of the first over, from 1.");
    static final Key<Integer> GOOD_TO_RISE = Key.of(
            "good-to-rise",
            "goodToRise",
            Kind.count(),
            3L,
            "Overs in a row without loss until it rises one data rate, 1 or more.");
    static final Key<Integer> BAD_TO_FALL = Key.of(
            "bad-to-fall",
            "badToFall",
            Kind.count(),
            2L,
            "Bad overs in a row until it falls one data rate, 1 or more.");
    static final Key<Double> BAD_SHARE = Key.of(
            "bad-share",
            "badShare",
            Kind.share(),
            "50 %",
            "From which share of lost frames on an over is bad, above 0, at most 1.");
    static final Key<Boolean> DOUBLES_PATIENCE = Key.of(
            "doubles-patience",
            "doublesPatience",
            Kind.flag(),
            true,
            "Whether a rise that fails at once doubles the count needed for the next one.");
    static final Key<Double> RISE_BELOW = Key.of(
            "rise-below", "riseBelow", Kind.share(), "5 %", "Rises while the smoothed loss is below this, from 0.");
    static final Key<Double> FALL_ABOVE = Key.of(
            "fall-above", "fallAbove", Kind.share(), "40 %", "Falls while the smoothed loss is above this, at most 1.");
    static final Key<Double> MEMORY = Key.of(
            "memory",
            "memory",
            Kind.share(),
            "25 %",
            "Weight of the newest over in the smoothing, above 0, at most 1.");
    static final Key<Double> TARGET_LOSS = Key.of(
            "target-loss", "targetLoss", Kind.share(), "10 %", "Share of lost frames it aims at, above 0, below 1.");
    static final Key<Double> HYSTERESIS = Key.of(
            "hysteresis",
            "hysteresisDb",
            Kind.quantity(Dimension.RATIO),
            "2 dB",
            "How much more than a higher data rate's need it wants before it rises, 0 or more.");
    static final Key<Double> CORRECTION_STEP = Key.of(
            "correction-step",
            "correctionStepDb",
            Kind.quantity(Dimension.RATIO),
            "0.5 dB",
            "Step of the outer loop after a lost over; \"0 dB\" switches it off.");
    static final Key<Double> ESTIMATE_DEVIATION = Key.of(
            "estimate-deviation",
            "estimateDeviationDb",
            Kind.quantity(Dimension.RATIO),
            "1.5 dB",
            "Standard deviation of the error of measured SNR, 0 or more.");
    static final Key<Double> SAMPLING_SHARE = Key.of(
            "sampling-share", "samplingShare", Kind.share(), "8 %", "Share of overs used for sampling, 0 to below 1.");
    static final Key<Double> PRIOR_DEVIATION = Key.of(
            "prior-deviation",
            "priorDeviationDb",
            Kind.quantity(Dimension.RATIO),
            "8 dB",
            "Width of the belief before the first over, above 0.");
    static final Key<Double> FORGETTING = Key.of(
            "forgetting",
            "forgettingDbPerRootSecond",
            Kind.quantity(Dimension.WIDENING),
            "0.4 dB/√s",
            "How fast the belief widens, 0 or more.");

    /** The policies by the name that chooses them. */
    static final List<Policy> POLICIES = List.of(
            policy("fixed", "Always the same data rate.", s -> new RatePolicyRules.Fixed(s.get(START_RATE))),
            policy(
                    "count",
                    "Counts good and bad overs in a row.",
                    s -> new RatePolicyRules.Count(
                            s.get(START_RATE),
                            s.get(GOOD_TO_RISE),
                            s.get(BAD_TO_FALL),
                            s.get(BAD_SHARE),
                            s.get(DOUBLES_PATIENCE)),
                    GOOD_TO_RISE,
                    BAD_TO_FALL,
                    BAD_SHARE,
                    DOUBLES_PATIENCE),
            policy(
                    "error-rate",
                    "Holds the smoothed share of lost frames between two marks.",
                    s -> new RatePolicyRules.ErrorRate(
                            s.get(START_RATE), s.get(RISE_BELOW), s.get(FALL_ABOVE), s.get(MEMORY)),
                    RISE_BELOW,
                    FALL_ABOVE,
                    MEMORY),
            policy(
                    "snr-lookup",
                    "Looks the measured SNR up in the data rates' needs and corrects itself by what gets lost.",
                    s -> new RatePolicyRules.SnrLookup(
                            s.get(START_RATE),
                            s.get(TARGET_LOSS),
                            s.get(HYSTERESIS),
                            s.get(CORRECTION_STEP),
                            s.get(ESTIMATE_DEVIATION)),
                    TARGET_LOSS,
                    HYSTERESIS,
                    CORRECTION_STEP,
                    ESTIMATE_DEVIATION),
            policy(
                    "expected-airtime",
                    "Uses the data rate with the least expected airtime a byte and now and then samples a better one.",
                    s -> new RatePolicyRules.ExpectedAirtime(s.get(START_RATE), s.get(SAMPLING_SHARE), s.get(MEMORY)),
                    SAMPLING_SHARE,
                    MEMORY),
            policy(
                    "latent-snr",
                    "Keeps a belief about the path's SNR and updates it with each frame's outcome.",
                    s -> new RatePolicyRules.LatentSnr(
                            s.get(START_RATE), s.get(PRIOR_DEVIATION), s.get(FORGETTING), s.get(ESTIMATE_DEVIATION)),
                    PRIOR_DEVIATION,
                    FORGETTING,
                    ESTIMATE_DEVIATION),
            policy(
                    "omniscient",
                    "The yardstick, which no real station can be: knows the sky over the coming over.",
                    s -> new RatePolicyRules.Omniscient(s.get(START_RATE))));

    static final Key<Policy> POLICY = Key.of(
            "policy",
            "policy",
            Kind.choice(POLICIES, Policy::name),
            "count",
            "How the data rate is chosen; sets the keys.");

    /** The rate policy before its policy is known. */
    static final Group ANY =
            Group.of("rate-policy", "How the data rate is chosen.", POLICY).open();

    private RatePolicyFormat() {}

    /** Turns a rate policy's keys into its rules. */
    @FunctionalInterface
    interface Reading {
        /** Returns the rules that the section's keys describe. */
        RatePolicyRules rules(Section section);
    }

    /**
     * One way of choosing data rates.
     *
     * @param name the word that chooses it
     * @param meaning one sentence for the manual
     * @param keys its keys besides the policy
     * @param reading what becomes of them
     */
    record Policy(String name, String meaning, List<Key<?>> keys, Reading reading) {
        /** Returns the rate policy's keys under this policy. */
        Group group() {
            Key<?>[] all = Stream.concat(Stream.of(POLICY), keys.stream()).toArray(Key<?>[]::new);
            return Group.of("rate-policy", meaning, all);
        }
    }

    private static Policy policy(String name, String meaning, Reading reading, Key<?>... more) {
        return new Policy(
                name,
                meaning,
                Stream.concat(Stream.of(START_RATE), Stream.of(more)).toList(),
                reading);
    }
}
