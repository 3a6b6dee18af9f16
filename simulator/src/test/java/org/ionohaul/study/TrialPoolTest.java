package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Trials of any kind on the threads of studies. */
final class TrialPoolTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 3, 8})
    void whatTrialsComeToIsInTheirOrderWhateverTheThreads(int threads) {
        assertEquals(
                IntStream.range(0, 2500).mapToObj(it -> "trial " + it).toList(),
                TrialPool.of(threads).run(2500, it -> "trial " + it));
    }

    @Test
    void aCancelledRunIsTheTrialsFromTheFirstOn() {
        AtomicInteger questions = new AtomicInteger();
        List<Integer> done =
                new TrialPool(4, (finished, asked) -> {}, () -> questions.incrementAndGet() > 50).run(1000, it -> it);
        assertTrue(done.size() > 20 && done.size() <= 50, "" + done.size());
        assertEquals(IntStream.range(0, done.size()).boxed().toList(), done);
    }

    @Test
    void aTrialThatFailsIsNamedAndAPoolNeedsAThread() {
        IllegalStateException failure = assertThrows(
                IllegalStateException.class,
                () -> TrialPool.of(2).run(9, it -> {
                    if (it == 5) {
                        throw new IllegalArgumentException("broken mast");
                    }
                    return it;
                }));
        assertEquals("trial 5 failed: broken mast", failure.getMessage());
        assertThrows(IllegalArgumentException.class, () -> TrialPool.of(0));
    }
}
