package org.ionohaul.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.text.StringSubstitutor;
import org.ionohaul.channel.NoiseEnvironment;
import org.ionohaul.rendering.JarText;
import org.ionohaul.scenario.Deadline;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.WrongValue;

/**
 * A new scenario file, made of a template and a few answers; what nobody was asked is a default with its source beside it.
 *
 * @param file where it is to lie
 * @param modes names of the modes to compare
 * @param answers by what was asked; what is not answered is taken from the question
 */
record NewScenario(Path file, List<String> modes, Map<Question, String> answers) {
    /** Height of the reflecting layer; common practice, no source. */
    private static final double LAYER_KM = 300;

    /** Paths no longer than this go up steeply (near-vertical incidence); common practice, no source. */
    private static final double STEEP_KM = 400;

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double DAY_SECONDS = 86_400;

    /** So many deadlines are watched, so that what comes too late is told apart from what never comes. */
    private static final double DEADLINES_WATCHED = 4;

    private static final String STEEP_WHY =
            "A steep path: echoes 7 ms apart, each spread by 1 Hz (ITU-R F.1487, mid latitudes, disturbed,"
                    + " near-vertical\n"
                    + "# incidence): the hard case, so that an answer errs on the safe side. On a calm day try"
                    + " \"mid-latitude-quiet\".";
    private static final String FLAT_WHY =
            "Echoes 1 ms apart, each spread by 0.5 Hz (ITU-R F.1487, mid latitudes, moderate)."
                    + " On a bad day try\n# \"mid-latitude-disturbed\", far north \"high-latitude-moderate\".";

    /** A frequency of each band for volunteers' traffic, in MHz (IARU band plans, from memory); noise changes little within one. */
    private static final Map<String, String> MEGAHERTZ_BY_BAND = Map.of(
            "160 m", "1.84", "80 m", "3.6", "60 m", "5.36", "40 m", "7.05", "30 m", "10.14", "20 m", "14.1", "17 m",
            "18.1", "15 m", "21.1", "12 m", "24.92", "10 m", "28.1");

    private static final Pattern BAND = Pattern.compile("(\\d+)\\s*m");

    private static final String OR_SURROUNDINGS = " (not known? city, residential, rural or quiet-rural)";

    /** What is asked of the user. */
    enum Question {
        NEAR_NAME("near-name", "What is your station called", "My station"),
        FAR_NAME("far-name", "What is the other station called", "Gateway"),
        GROUND_DISTANCE("ground-distance", "How far apart are they over ground", "70 km"),
        BAND("band", "On which band or frequency, such as 80 m or 3.6 MHz", "80 m"),
        CLOCK("clock", "At what time of day will you send", "12:00"),
        SIZE("size", "How large is the file", "40 kB"),
        BY("by", "By when must it be through, after pressing send or by the clock", "15 min"),
        NEAR_SIGNAL("near-signal", "What does your meter show while the other station sends", "S7"),
        NEAR_NOISE("near-noise", "What does your meter show while nobody sends" + OR_SURROUNDINGS, "S3"),
        FAR_SIGNAL("far-signal", "What does the other station's meter show while you send", "S7"),
        FAR_NOISE("far-noise", "What does it show there while nobody sends" + OR_SURROUNDINGS, "S4");

        private final String option;
        private final String asks;
        private final String standsIn;

        Question(String option, String asks, String standsIn) {
            this.option = option;
            this.asks = asks;
            this.standsIn = standsIn;
        }

        /** Returns the option of the command line that answers it, without dashes. */
        String option() {
            return option;
        }

        /** Returns the question, without its mark. */
        String asks() {
            return asks;
        }

        /** Returns the answer that is taken if none is given. */
        String standsIn() {
            return standsIn;
        }
    }

    /** Copies list and map. */
    NewScenario {
        modes = List.copyOf(modes);
        Map<Question, String> all = new EnumMap<>(Question.class);
        all.putAll(answers);
        answers = Map.copyOf(all);
    }

    /** Returns this with one more answer. */
    NewScenario answered(Question question, String answer) {
        Map<Question, String> more = new HashMap<>(answers);
        more.put(question, answer);
        return new NewScenario(file, modes, more);
    }

    /**
     * Returns what stands in the file.
     *
     * @throws WrongValue if the distance, the band or the deadline is none
     */
    String text() throws WrongValue {
        double groundKm = Quantity.metres(answer(Question.GROUND_DISTANCE)) / 1000;
        double pathKm = 2 * Math.hypot(groundKm / 2, LAYER_KM);
        boolean isSteep = groundKm <= STEEP_KM;
        Map<String, String> values = new HashMap<>();
        for (Question question : Question.values()) {
            values.put(placeholder(question), quoted(answer(question)));
        }
        values.put("frequency", quoted(frequency()));
        values.put("nearNoise", noise(Question.NEAR_NOISE));
        values.put("farNoise", noise(Question.FAR_NOISE));
        values.put("file", file.toString());
        values.put("horizon", minutes(Math.min(DAY_SECONDS, DEADLINES_WATCHED * deadlineSeconds())));
        values.put("distance", String.format(Locale.ROOT, "%.0f km", pathKm));
        values.put("modes", modes.stream().map(it -> '"' + it + '"').collect(Collectors.joining(", ")));
        values.put("condition", isSteep ? "mid-latitude-disturbed-nvis" : "mid-latitude-moderate");
        values.put("conditionWhy", isSteep ? STEEP_WHY : FLAT_WHY);
        return new StringSubstitutor(values)
                .setEnableUndefinedVariableException(true)
                .setDisableSubstitutionInValues(true)
                .replace(JarText.beside(NewScenario.class, "new-scenario.toml"));
    }

    /** A wavelength names a band, anything else is a frequency. */
    private String frequency() throws WrongValue {
        String answer = answer(Question.BAND).strip();
        Matcher band = BAND.matcher(answer);
        if (!band.matches()) {
            return answer;
        }
        String megahertz = MEGAHERTZ_BY_BAND.get(band.group(1) + " m");
        if (megahertz == null) {
            throw new WrongValue(
                    "\"" + answer + "\" is no band between 160 m and 10 m", "write a frequency, such as \"5.3 MHz\"");
        }
        return megahertz + " MHz";
    }

    /** A meter's reading, or the surroundings, whose noise follows from the frequency. */
    private String noise(Question question) {
        String answer = answer(question);
        String surroundings = answer.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        boolean isKnown = Arrays.stream(NoiseEnvironment.values())
                .noneMatch(it -> it.key().equals(surroundings));
        return isKnown ? "noise = \"" + quoted(answer) + '"' : "noise-environment = \"" + surroundings + '"';
    }

    /** By the clock, a deadline is the next such time of day after pressing send. */
    private double deadlineSeconds() throws WrongValue {
        Deadline by = Deadline.of(answer(Question.BY));
        if (!by.isClock() && by.seconds() > DAY_SECONDS) {
            throw new WrongValue(
                    "\"" + answer(Question.BY) + "\" is more than a day, and nothing is watched for longer",
                    "write a time of at most \"24 h\"");
        }
        return by.isClock() ? by.afterSend(Deadline.of(answer(Question.CLOCK)).seconds()) : by.seconds();
    }

    private String answer(Question question) {
        return answers.getOrDefault(question, question.standsIn());
    }

    /** Such as {@code nearName} for the option {@code near-name}. */
    private static String placeholder(Question question) {
        String[] words = question.option().split("-", -1);
        return words.length == 1
                ? words[0]
                : words[0] + Character.toUpperCase(words[1].charAt(0)) + words[1].substring(1);
    }

    /** What a user typed, so that it can't end the string that it stands in, nor the remark. */
    private static String quoted(String answer) {
        return answer.replaceAll("\\p{Cntrl}", " ").replace("\\", "\\\\").replace("\"", "\\\"");
    }

    private static String minutes(double seconds) {
        return Math.max(1, Math.round(Math.ceil(seconds / SECONDS_PER_MINUTE))) + " min";
    }
}
