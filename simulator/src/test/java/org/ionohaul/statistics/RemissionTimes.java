package org.ionohaul.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Weeks in remission of the leukaemia trial of E. J. Freireich et al., Blood 21, 1963: the classic censored sample. */
final class RemissionTimes {
    static final List<Observation> TREATED = Stream.concat(
                    weeks(true, 6, 6, 6, 7, 10, 13, 16, 22, 23),
                    weeks(false, 6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35))
            .toList();
    static final List<Observation> PLACEBO = weeks(
                    true, 1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23)
            .toList();

    private RemissionTimes() {}

    private static Stream<Observation> weeks(boolean isEvent, int... weeks) {
        return Arrays.stream(weeks).mapToObj(week -> new Observation(week, isEvent));
    }
}
