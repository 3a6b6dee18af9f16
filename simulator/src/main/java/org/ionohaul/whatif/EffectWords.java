package org.ionohaul.whatif;

import java.util.Optional;
import java.util.OptionalInt;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/** What a change of a key does to a mode, in a plain sentence with its uncertainty. */
final class EffectWords {
    private EffectWords() {}

    /**
     * Returns the sentence.
     *
     * @param change what is changed, such as {@code With near.snr = 18 dB instead of 6 dB}
     * @param mode title of the mode
     * @param point the mode after the change, its effect being that of the change
     */
    static String sentence(String change, String mode, ModePoint point) {
        PairedEffect effect = point.effect();
        Optional<String> deadline = deadline(point);
        String head = change + ", ";
        if (!effect.changesAnything()) {
            return deadline.map(it -> head + mode + " " + it + ".")
                    .orElse(head + "not one trial differs for " + mode + ".");
        }
        if (!effect.isBeyondChance() && deadline.isEmpty()) {
            return head + "nothing changes for " + mode + " that could not be chance" + range(effect) + ".";
        }
        return head + mode + " " + time(effect)
                + deadline.map(it -> " and " + it).orElse("") + ".";
    }

    private static String time(PairedEffect effect) {
        double seconds = effect.medianChangeSeconds().value();
        if (Double.isInfinite(seconds)) {
            return seconds < 0
                    ? "gets through on many trials on which it would not otherwise"
                    : "no longer gets through on many trials";
        }
        if (!effect.isBeyondChance()) {
            return "is neither sooner nor later beyond chance" + range(effect);
        }
        String amount = Math.round(Math.abs(seconds)) == 0 ? "less than a second" : TimeText.length(Math.abs(seconds));
        return "is through " + amount + (effect.isSooner() ? " sooner" : " later") + " on the median trial"
                + range(effect);
    }

    private static String range(PairedEffect effect) {
        Estimate change = effect.medianChangeSeconds();
        if (!Double.isFinite(change.low()) || !Double.isFinite(change.high())) {
            return "";
        }
        return inBrackets(
                isOneWay(change)
                        ? ordered(
                                TimeText.length(Math.abs(change.low())),
                                TimeText.length(Math.abs(change.high())),
                                change)
                        : PointWords.changeRange(effect));
    }

    private static String inBrackets(String range) {
        return range.isEmpty() ? "" : " (" + range + ")";
    }

    private static boolean isOneWay(Estimate change) {
        return change.low() >= 0 || change.high() <= 0;
    }

    /** Of a change one way, from the smaller to the larger; nothing where both are written alike. */
    private static String ordered(String low, String high, Estimate change) {
        if (low.equals(high)) {
            return "";
        }
        return change.low() >= 0 ? low + " to " + high : high + " to " + low;
    }

    private static Optional<String> deadline(ModePoint point) {
        OptionalInt most = point.effect().mostChangedDeadline();
        return most.isEmpty()
                ? Optional.empty()
                : Optional.of(deadline(
                        point.deadlines().get(most.getAsInt()).deadlineSeconds(),
                        point.effect().deadlineChanges().get(most.getAsInt())));
    }

    private static String deadline(double seconds, Estimate change) {
        String amount = hundredths(change.value());
        return "keeps " + TimeText.given(seconds) + " on " + (amount.equals("0") ? "less than 1" : amount)
                + (change.value() > 0 ? " more" : " fewer") + " of 100 trials"
                + inBrackets(
                        isOneWay(change)
                                ? ordered(hundredths(change.low()), hundredths(change.high()), change)
                                : PointWords.points(change).detail());
    }

    private static String hundredths(double share) {
        return Long.toString(Math.round(100 * Math.abs(share)));
    }
}
