package org.ionohaul.onair;

import java.util.HashMap;
import java.util.Map;

/** An evening that makes no run twice: several orders begin with the same runs. */
final class RememberedEvening implements Evening {
    private final Evening evening;
    private final Map<Asked, Run> runs = new HashMap<>();

    private record Asked(int mode, int repeat, long startNanos) {}

    RememberedEvening(Evening evening) {
        this.evening = evening;
    }

    @Override
    public Run run(int mode, int repeat, long startNanos) {
        return runs.computeIfAbsent(
                new Asked(mode, repeat, startNanos), it -> evening.run(it.mode(), it.repeat(), it.startNanos()));
    }
}
