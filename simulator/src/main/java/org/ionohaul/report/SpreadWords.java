package org.ionohaul.report;

import java.util.stream.Collectors;
import org.ionohaul.study.SpreadSplit;

/** What is said about luck and ignorance. */
final class SpreadWords {
    private SpreadWords() {}

    /**
     * Returns the sentence that splits the spread of a mode's times, such as {@code Why evenings differ with Hare: 70 %
     * luck of fading, 30 % not knowing near.snr. Measuring near.snr would sharpen this forecast most.}
     *
     * @param mode what people call the mode
     */
    static String sentence(String mode, SpreadSplit split) {
        String unknown = split.inputs().stream()
                .map(it -> OddsText.percent(Math.min(1, it.share())) + " not knowing " + it.key())
                .collect(Collectors.joining(", "));
        String advice = split.worthMeasuring()
                .map(key -> "Measuring " + key + " would sharpen this forecast most.")
                .orElse("No single measurement would sharpen this forecast.");
        return "Why evenings differ with " + mode + ": " + OddsText.percent(split.luckShare()) + " luck of fading, "
                + unknown + ". " + advice;
    }
}
