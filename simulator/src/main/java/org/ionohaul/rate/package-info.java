/**
 * Chooses the data rate of each over from what its sender can know.
 *
 * <p>The package knows no link, no waveform and no sky: what a policy is told before the first over is what the makers of a
 * mode could have built into it ({@link org.ionohaul.rate.DesignRates}), and afterwards what a sender observes. The
 * yardstick that knows the sky is made elsewhere, by who wires trials.
 */
@org.jspecify.annotations.NullMarked
package org.ionohaul.rate;
