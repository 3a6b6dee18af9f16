package org.ionohaul.scenario;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.tomlj.TomlTable;

/**
 * How strong other stations are at a receiver, and what that is compared to.
 *
 * @param level the level, in dBm or in dB over the reference; may be uncertain
 * @param reference what it is compared to
 */
record VisitorLevel(Uncertain level, Reference reference) {
    private static final Pattern OVER_NOISE = Pattern.compile("\\s+over\\s+(?:the\\s+)?noise$");
    private static final String REMEDY =
            "write their level, such as \"S6\" or \"-97 dBm\", or by how much they are over"
                    + " the noise, \"9 dB\" or \"9 dB over noise\"";

    /** What a level is compared to. */
    enum Reference {
        /** Nothing: it is a level at the receiver's input. */
        NONE,
        /** The middle of what the scenario says of the noise: what a trial draws for it leaves the visitors alone. */
        STATED_NOISE,
        /** The noise of the trial. */
        DRAWN_NOISE;

        /**
         * Returns what is to be added to a level so that it is in dB over the noise of the trial.
         *
         * @param noiseDbm the noise; where its level is not known it is not drawn either, and nothing is added
         */
        Described<Double> shiftDb(Optional<Described<Double>> noiseDbm) {
            if (this == DRAWN_NOISE || noiseDbm.isEmpty()) {
                return draws -> 0.0;
            }
            double fromDbm = this == NONE ? 0 : noiseDbm.get().in(key -> 0.5);
            return draws -> fromDbm - noiseDbm.get().in(draws);
        }
    }

    /** Reads a meter reading or a level in dBm, a ratio in dB, or a ratio {@code over noise}. */
    static Kind<VisitorLevel> kind() {
        Kind<Uncertain> level =
                Kind.meterOrDbm(-180, 0, "no receiver is told of less than -180 dBm or stands more than 0 dBm");
        Kind<Double> decibels = Kind.quantity(Dimension.RATIO);
        Kind<Double> overNoise = new Kind<>(decibels.words(), value -> decibels.read(withoutReference(value)));
        Kind<Uncertain> overStated = Kind.uncertain(Dimension.RATIO);
        Kind<Uncertain> overDrawn = new UncertainReading(overNoise, decibels, Dimension.RATIO.example()).kind();
        return new Kind<>("a level, or a ratio in dB over the noise" + UncertainReading.MARK, value -> {
            if (isAll(value, Kind::isLevel)) {
                return new VisitorLevel(level.read(value), Reference.NONE);
            }
            try {
                return isAll(value, text -> OVER_NOISE.matcher(text).find())
                        ? new VisitorLevel(overDrawn.read(withoutReference(value)), Reference.DRAWN_NOISE)
                        : new VisitorLevel(overStated.read(value), Reference.STATED_NOISE);
            } catch (WrongValue e) {
                throw new WrongValue(e.message(), e.remedy().startsWith("write a ratio") ? REMEDY : e.remedy());
            }
        });
    }

    /** Returns whether something holds of a text, or of every value of a list of weighted ones. */
    private static boolean isAll(Object value, Predicate<String> holds) {
        if (value instanceof List<?> entries) {
            return !entries.isEmpty()
                    && entries.stream()
                            .allMatch(entry -> entry instanceof TomlTable table
                                    && table.get("value") instanceof String text
                                    && holds.test(WrittenText.plain(text)));
        }
        return value instanceof String text && holds.test(WrittenText.plain(text));
    }

    private static Object withoutReference(Object value) {
        return value instanceof String text
                ? OVER_NOISE.matcher(WrittenText.plain(text)).replaceFirst("")
                : value;
    }
}
