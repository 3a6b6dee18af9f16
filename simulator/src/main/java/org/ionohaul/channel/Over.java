package org.ionohaul.channel;

/**
 * One over of a visiting station as one end hears it.
 *
 * @param startNanos when it begins; negative when it was under way before the trial
 * @param endNanos when it ends, not included
 * @param power power relative to the end's noise floor in 3 kHz at the trial's beginning
 * @param lowHz lower edge of the spectrum it covers, as an offset from the middle of the 3 kHz
 * @param highHz upper edge, above {@code lowHz}
 */
public record Over(long startNanos, long endNanos, double power, double lowHz, double highHz) {
    boolean isOn(long atNanos) {
        return startNanos <= atNanos && atNanos < endNanos;
    }

    /** Returns the mean power density between two frequencies, relative to that of the noise floor. */
    double density(double fromHz, double toHz) {
        double overlapHz = Math.max(0, Math.min(highHz, toHz) - Math.max(lowHz, fromHz));
        double shareCovered = overlapHz / (toHz - fromHz);
        return power * Reception.NOISE_BANDWIDTH_HZ / (highHz - lowHz) * shareCovered;
    }
}
