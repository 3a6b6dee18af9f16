package org.ionohaul.foresight;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.ionohaul.foresight.Guess.Span;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.Spelling;
import org.ionohaul.scenario.WrongValue;

/** Reads what a learner types. */
public final class AnswerReader {
    private static final Pattern WINNER = Pattern.compile("(\\S.*?)(?:[\\s,;]+(\\d+(?:[.,]\\d+)?)\\s*%?)?");
    private static final Pattern SPAN = Pattern.compile(
            "(.+?)(?:\\s*(?:\\.\\.|[-–])\\s*|\\s+to\\s+)(.+)|(\\S+)\\s+(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE = Pattern.compile("[\\d.,]+");

    private AnswerReader() {}

    /**
     * A mode that is named as the first, and how sure.
     *
     * @param mode its place
     * @param sureness from one over the number of modes to 1
     */
    public record Winner(int mode, double sureness) {}

    /**
     * Reads such as {@code 2 80} or {@code brisk-comb 80 %}.
     *
     * @throws WrongValue if it is none
     */
    public static Winner winner(String text, List<Mode> modes) throws WrongValue {
        Matcher matcher = WINNER.matcher(text.strip());
        if (!matcher.matches() || matcher.group(2) == null) {
            throw new WrongValue(
                    "\"" + text.strip() + "\" does not say a mode and how sure",
                    "write such as \"1 80\" for the first at 80 %");
        }
        int mode = mode(matcher.group(1).strip(), modes);
        double percent = Double.parseDouble(matcher.group(2).replace(',', '.'));
        double least = 100.0 / modes.size();
        if (percent < Math.floor(least) || percent > 100) {
            throw new WrongValue(
                    String.format(Locale.ROOT, "%s %% is not from %.0f to 100 %%", matcher.group(2), Math.floor(least)),
                    "if you are less sure, name another mode");
        }
        return new Winner(mode, Math.max(percent / 100, 1.0 / modes.size()));
    }

    private static int mode(String name, List<Mode> modes) throws WrongValue {
        OptionalInt found = IntStream.range(0, modes.size())
                .filter(it -> name.equals(Integer.toString(it + 1))
                        || name.equalsIgnoreCase(modes.get(it).name())
                        || name.equalsIgnoreCase(modes.get(it).title()))
                .findFirst();
        if (found.isEmpty()) {
            throw new WrongValue(
                    "there is no mode \"" + name + "\" in this race",
                    Spelling.advice(name, modes.stream().map(Mode::name).toList()));
        }
        return found.getAsInt();
    }

    /**
     * Reads such as {@code 4 9}, {@code 4 min 30 s .. 9 min} or {@code 20 never}; bare numbers are minutes.
     *
     * @throws WrongValue if it is none
     */
    public static Span span(String text) throws WrongValue {
        Matcher matcher = SPAN.matcher(text.strip());
        if (!matcher.matches()) {
            throw new WrongValue(
                    "\"" + text.strip() + "\" is no range of times",
                    "write such as \"4 9\" for 4 to 9 minutes, or \"20 never\"");
        }
        boolean isSpaced = matcher.group(1) == null;
        double low = seconds(isSpaced ? matcher.group(3) : matcher.group(1));
        double high = seconds(isSpaced ? matcher.group(4) : matcher.group(2));
        if (low > high) {
            throw new WrongValue("the range begins after its end", "write the shorter time first");
        }
        return new Span(low, high);
    }

    private static double seconds(String text) throws WrongValue {
        String word = text.strip();
        if (word.equalsIgnoreCase("never")) {
            return Double.POSITIVE_INFINITY;
        }
        return Quantity.seconds(BARE.matcher(word).matches() ? word + " min" : word);
    }
}
