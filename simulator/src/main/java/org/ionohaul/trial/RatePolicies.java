package org.ionohaul.trial;

import java.util.function.Supplier;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.rate.CountPolicy;
import org.ionohaul.rate.DesignRates;
import org.ionohaul.rate.ErrorRatePolicy;
import org.ionohaul.rate.ExpectedAirtimePolicy;
import org.ionohaul.rate.FixedPolicy;
import org.ionohaul.rate.LatentSnrPolicy;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.rate.SnrLookupPolicy;

/** Which rate policy follows which rules. */
public final class RatePolicies {
    private RatePolicies() {}

    /**
     * Returns a fresh policy.
     *
     * @param rules what it follows
     * @param rates what the makers of the mode know of its data rates
     * @param random chance in its choices
     * @param yardstick makes the policy that knows the sky, which nothing else here can reach
     */
    public static RatePolicy of(
            RatePolicyRules rules, DesignRates rates, UniformRandomProvider random, Supplier<RatePolicy> yardstick) {
        if (rules instanceof RatePolicyRules.Fixed fixed) {
            return new FixedPolicy(fixed.startDataRate());
        } else if (rules instanceof RatePolicyRules.Count count) {
            return new CountPolicy(count, rates.dataRateCount());
        } else if (rules instanceof RatePolicyRules.ErrorRate errorRate) {
            return new ErrorRatePolicy(errorRate, rates.dataRateCount());
        } else if (rules instanceof RatePolicyRules.SnrLookup lookup) {
            return new SnrLookupPolicy(lookup, rates.curves());
        } else if (rules instanceof RatePolicyRules.ExpectedAirtime airtime) {
            return new ExpectedAirtimePolicy(airtime, rates, random);
        } else if (rules instanceof RatePolicyRules.LatentSnr latent) {
            return new LatentSnrPolicy(latent, rates);
        }
        return yardstick.get();
    }
}
