package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The quick functions agree with the exact ones of the Java library to what they promise. */
final class ExponentialsTest {
    private static final double RIGHT_TO = 1e-11;
    private static final double STEP = 0.0137;

    @Test
    void exponentialsAgreeWithTheLibrary() {
        for (double power = -700; power <= 700; power += STEP) {
            assertEquals(1, Exponentials.exp(power) / Math.exp(power), RIGHT_TO);
        }
        for (double power = 1; power > 1e-12; power /= 1.7) {
            assertEquals(Math.exp(power), Exponentials.exp(power), RIGHT_TO);
            assertEquals(Math.exp(-power), Exponentials.exp(-power), RIGHT_TO);
        }
    }

    @Test
    void exponentialsStayNumbersBeyondTheirReach() {
        assertEquals(Exponentials.exp(700), Exponentials.exp(1e9));
        assertEquals(Exponentials.exp(-700), Exponentials.exp(-1e9));
    }

    @Test
    void logarithmsAgreeWithTheLibrary() {
        for (double power = -700; power <= 700; power += STEP) {
            double number = Math.exp(power);
            assertEquals(Math.log(number), Exponentials.log(number), RIGHT_TO * Math.max(1, Math.abs(power)));
        }
        // Near 1 the logarithm is small itself: what is left out is far below what is left of 1 there.
        for (double rest = 0.1; rest > 1e-5; rest /= 1.3) {
            assertEquals(1, Exponentials.log(1 - rest) / Math.log1p(-rest), 1e-10);
            assertEquals(1, Exponentials.log(1 + rest) / Math.log1p(rest), 1e-10);
        }
    }
}
