package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class JsonFormTest {
    record Units(double leadSeconds, long atNanos, double earlyBytesPerMinute, int secondsLeft) {}

    record Limits(double reached, double never, OptionalDouble later, Optional<Double> ratio, OptionalDouble unknown) {}

    @Test
    void unitsStandInNamesAsTheManualHasThem() {
        assertEquals(
                "{\"lead_s\":1.5,\"at_ns\":2,\"early_bytes_per_min\":3.0,\"seconds_left\":4}",
                JsonForm.LINE.writeValueAsString(new Units(1.5, 2, 3, 4)));
    }

    @Test
    void whateverIsNotReachedIsNullHoweverItIsHeld() {
        Limits limits = new Limits(
                0.1,
                Double.POSITIVE_INFINITY,
                OptionalDouble.of(Double.POSITIVE_INFINITY),
                Optional.of(Double.NaN),
                OptionalDouble.empty());
        assertEquals(
                "{\"reached\":0.1,\"never\":null,\"later\":null,\"ratio\":null,\"unknown\":null}",
                JsonForm.LINE.writeValueAsString(limits));
        assertEquals("[null,1.0]", JsonForm.LINE.writeValueAsString(List.of(Double.NEGATIVE_INFINITY, 1.0)));
    }

    @Test
    void constantsAreWordsInSmallLetters() {
        assertEquals("\"half_up\"", JsonForm.LINE.writeValueAsString(java.math.RoundingMode.HALF_UP));
    }
}
