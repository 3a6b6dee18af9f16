package org.ionohaul.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.cli.NewScenario.Question;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * A situation that nobody was ever in, drawn from a seed: a link as {@code new} asks for it, a sky by name, and two modes.
 *
 * @param answers what {@code new} would have been told
 * @param condition how the sky fades
 * @param modes names of the modes
 * @param isUpload whether the station that dials sends
 */
record InventedLink(Map<Question, String> answers, FadingCondition condition, List<String> modes, boolean isUpload) {
    private static final List<String> DISTANCES = List.of("40 km", "120 km", "300 km", "700 km", "1500 km");
    private static final List<String> SIZES = List.of("2 kB", "5 kB", "10 kB", "20 kB", "40 kB", "80 kB");
    private static final List<FadingCondition> NEAR_BY = List.of(
            FadingCondition.MID_LATITUDE_QUIET,
            FadingCondition.MID_LATITUDE_DISTURBED,
            FadingCondition.MID_LATITUDE_DISTURBED_NVIS);
    private static final List<FadingCondition> FAR_OFF = List.of(
            FadingCondition.MID_LATITUDE_QUIET,
            FadingCondition.MID_LATITUDE_MODERATE,
            FadingCondition.MID_LATITUDE_DISTURBED,
            FadingCondition.LOW_LATITUDE_MODERATE,
            FadingCondition.HIGH_LATITUDE_MODERATE);

    /** So many of the distances are short. */
    private static final int SHORT = 3;

    /**
     * Draws one.
     *
     * @param modes names of the modes to draw two from, at least two
     */
    static InventedLink of(long seed, int round, List<String> modes) {
        UniformRandomProvider random = new TrialStreams(seed, round).open(Purpose.SITUATIONS, 0);
        int distance = random.nextInt(DISTANCES.size());
        List<FadingCondition> skies = distance < SHORT ? NEAR_BY : FAR_OFF;
        Map<Question, String> answers = new EnumMap<>(Question.class);
        answers.put(Question.NEAR_NAME, "Heron Post");
        answers.put(Question.FAR_NAME, "Fell Lodge");
        answers.put(Question.GROUND_DISTANCE, DISTANCES.get(distance));
        answers.put(Question.CLOCK, String.format(Locale.ROOT, "%02d:00", random.nextInt(24)));
        answers.put(Question.SIZE, SIZES.get(random.nextInt(SIZES.size())));
        answers.put(Question.BY, "15 min");
        int signal = 5 + random.nextInt(4);
        answers.put(Question.NEAR_SIGNAL, "S" + signal);
        answers.put(Question.FAR_SIGNAL, "S" + (signal + random.nextInt(2)));
        answers.put(Question.NEAR_NOISE, "S" + (signal - 1 - random.nextInt(4)));
        answers.put(Question.FAR_NOISE, "S" + (signal - 1 - random.nextInt(4)));
        List<String> left = new ArrayList<>(modes);
        List<String> drawn =
                List.of(left.remove(random.nextInt(left.size())), left.remove(random.nextInt(left.size())));
        return new InventedLink(answers, skies.get(random.nextInt(skies.size())), drawn, random.nextBoolean());
    }

    /** Returns what stands in place of what {@code new} writes. */
    Map<String, String> changes(long seed, int trials) {
        return Map.of(
                "sky.condition", condition.key(),
                "modes", "[\"" + String.join("\", \"", modes) + "\"]",
                "seed", Long.toString(seed),
                "trials", Integer.toString(trials));
    }
}
