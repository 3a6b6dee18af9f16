package org.ionohaul.link;

import org.ionohaul.rate.RatePolicyRules;

/**
 * What two stations that work the same mode agree on.
 *
 * @param signals the mode's bursts
 * @param arq how frames move
 * @param ratePolicy how the data rate is chosen
 */
public record ModeSpec(Signals signals, ArqRules arq, RatePolicyRules ratePolicy) {
    /** Checks the start data rate. */
    public ModeSpec {
        if (ratePolicy.startDataRate() < 1 || ratePolicy.startDataRate() > signals.dataRateCount()) {
            throw new IllegalArgumentException(
                    "startDataRate must be from 1 to " + signals.dataRateCount() + ": " + ratePolicy);
        }
    }
}
