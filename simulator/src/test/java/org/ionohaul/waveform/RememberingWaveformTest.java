package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ionohaul.channel.Reception;
import org.junit.jupiter.api.Test;

final class RememberingWaveformTest {
    private static final Reception FIRST = ScriptedReception.of(1, 1, (at, band) -> 1);
    private static final Reception SECOND = ScriptedReception.of(1, 1, (at, band) -> 1);
    private static final Reception OTHER = ScriptedReception.of(1, 1, (at, band) -> 1);

    private final Asked asked = new Asked();
    private final Waveform remembering = Waveforms.remembering(asked, FIRST, SECOND);

    @Test
    void asksOnceForWhatTwoReceptionsComeToAndEachTimeForOthers() {
        for (int time = 1; time <= 3; time++) {
            for (Reception reception : List.of(FIRST, SECOND, OTHER)) {
                assertEquals(asked.number(1, reception, 7, 0, 0), remembering.detectionProbability(reception, 7));
                assertEquals(asked.number(2, reception, 7, 3, 5), remembering.evidence(reception, 7, 3, 5));
                assertEquals(asked.number(3, reception, 7, 0, 5), remembering.meanSnrDb(reception, 7, 5));
                assertEquals(Fate.WRONG, remembering.fate(reception, 7, 3, 5, 0.5));
                assertEquals(Fate.RIGHT, remembering.fate(reception, 7, 3, 5, 0.25));
            }
            assertEquals(10 + 5 * time, asked.times);
        }
    }

    @Test
    void takesNothingForAnotherHoweverMuchItHears() {
        SplittableRandom random = new SplittableRandom(41);
        List<long[]> questions = new ArrayList<>();
        for (int i = 0; i < 200_000; i++) {
            questions.add(new long[] {random.nextInt(1000), random.nextInt(30), 30 + random.nextInt(30)});
        }
        for (long[] it : questions) {
            double number = asked.number(2, FIRST, it[0], (int) it[1], (int) it[2]);
            assertEquals(number, remembering.evidence(FIRST, it[0], (int) it[1], (int) it[2]));
        }
        int different = (int) questions.stream()
                .map(it -> it[0] * 10_000 + it[1] * 100 + it[2])
                .distinct()
                .count();
        assertTrue(asked.times >= different && asked.times < questions.size(), asked.times + " times");
    }

    /** Says a number that tells what it was asked, and counts how often it was. */
    private static final class Asked implements Waveform {
        private int times;

        double number(int question, Reception reception, long startNanos, int frame, int frames) {
            int ear = reception == FIRST ? 1 : reception == SECOND ? 2 : 3;
            return (((question * 4L + ear) * 10_000 + startNanos) * 100 + frame) * 100 + frames;
        }

        @Override
        public int payloadBytes() {
            return 1;
        }

        @Override
        public long burstNanos(int frames) {
            return frames;
        }

        @Override
        public long preambleNanos() {
            return 0;
        }

        @Override
        public double detectionProbability(Reception reception, long startNanos) {
            times++;
            return number(1, reception, startNanos, 0, 0);
        }

        @Override
        public double evidence(Reception reception, long startNanos, int frame, int frames) {
            times++;
            return number(2, reception, startNanos, frame, frames);
        }

        @Override
        public Fate fate(Reception reception, long startNanos, int frame, int frames, double draw) {
            times++;
            return draw < 0.5 ? Fate.RIGHT : Fate.WRONG;
        }

        @Override
        public double combined(double earlier, double fresh) {
            return earlier + fresh;
        }

        @Override
        public double decodingProbability(double evidence) {
            return 1;
        }

        @Override
        public double meanSnrDb(Reception reception, long startNanos, int frames) {
            times++;
            return number(3, reception, startNanos, 0, frames);
        }
    }
}
