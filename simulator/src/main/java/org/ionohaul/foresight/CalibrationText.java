package org.ionohaul.foresight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.statistics.Estimate;

/**
 * How well forecasts held, in words.
 *
 * @param calibration the rounds
 */
public record CalibrationText(Calibration calibration) {
    /** Returns the lines for a terminal. */
    public List<String> lines(int width) {
        List<String> lines = new ArrayList<>();
        sentences().forEach(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        return lines;
    }

    /** Returns the sentences. */
    public List<String> sentences() {
        List<String> told = new ArrayList<>();
        told.add(ranges());
        winner().ifPresent(told::add);
        told.add(String.format(
                Locale.ROOT,
                "Interval score of your ranges (width in doublings of time, and ten times what you missed by;"
                        + " less is better): %.1f. Those that the simulation gives score %.1f.",
                calibration.rangeScore(),
                calibration.simulatedScore()));
        return told;
    }

    private String ranges() {
        Estimate share = calibration.heldShare();
        String verdict = share.high() < Guess.HOLDING
                ? "They are too narrow, beyond chance: you are surer than you may be."
                : share.low() > Guess.HOLDING
                        ? "They are wider than they need be, beyond chance."
                        : "So few rounds can't tell that from 8 of 10; go on.";
        boolean isNear =
                share.low() <= Guess.HOLDING && share.high() >= Guess.HOLDING && share.high() - share.low() < 0.3;
        return String.format(
                Locale.ROOT,
                "Your ranges for 8 of 10 held %d of %d times (%s of rounds like these, by %s). %s",
                calibration.held(),
                calibration.ranges(),
                OddsText.percentRange(share.low(), share.high()),
                count(calibration.rounds().size()),
                isNear ? "That goes with 8 of 10." : verdict);
    }

    private static String count(int rounds) {
        return rounds == 1 ? "1 round" : rounds + " rounds";
    }

    private Optional<String> winner() {
        return calibration.rightShare().map(right -> {
            Estimate brier = calibration.brier().orElseThrow();
            String sure = calibration.meanSureness() > right.high()
                    ? " You are surer of winners than you may be, beyond chance."
                    : calibration.meanSureness() < right.low() ? " You could be surer of winners, beyond chance." : "";
            return String.format(
                    Locale.ROOT,
                    "You named the first %d of %d times (%s), and said %s on average.%s Brier score %.2f (%.2f to %.2f): 0 is"
                            + " perfect, %.2f a coin that says so.",
                    calibration.right(),
                    calibration.decided(),
                    OddsText.percentRange(right.low(), right.high()),
                    OddsText.percent(calibration.meanSureness()),
                    sure,
                    brier.value(),
                    brier.low(),
                    brier.high(),
                    Calibration.COIN_BRIER);
        });
    }
}
