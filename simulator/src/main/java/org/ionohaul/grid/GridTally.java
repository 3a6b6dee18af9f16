package org.ionohaul.grid;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ionohaul.study.LineStore;

/**
 * How the rows of a grid divide, case by case: which modes may be best, and where a deadline is kept surely enough. Small,
 * whatever the number of rows.
 *
 * @param cases one entry for each transfer and direction
 */
public record GridTally(List<OfCase> cases) {
    /** What is asked of a deadline: nine of ten trials. */
    public static final double SURE = 0.9;

    /**
     * One case.
     *
     * @param transfer what is sent
     * @param direction which way
     * @param rowsByLeaders number of rows by the modes that may be best in them
     * @param deadlines one entry a deadline
     */
    public record OfCase(
            String transfer, String direction, Map<List<String>, Integer> rowsByLeaders, List<OfDeadline> deadlines) {
        /** Copies both, keeping their order. */
        public OfCase {
            rowsByLeaders = Collections.unmodifiableMap(new LinkedHashMap<>(rowsByLeaders));
            deadlines = List.copyOf(deadlines);
        }
    }

    /**
     * How many rows keep a deadline surely enough with at least one mode.
     *
     * @param shortestSeconds the deadline in the row where it is shortest
     * @param longestSeconds the deadline in the row where it is longest
     * @param kept rows in which a mode's time to plan for, which allows for having been picked among modes, is within it
     * @param missed rows in which every mode's whole interval of the chance lies below {@link #SURE}
     * @param open the others: more trials would tell
     */
    public record OfDeadline(double shortestSeconds, double longestSeconds, int kept, int missed, int open) {
        private static final OfDeadline NONE = new OfDeadline(Double.POSITIVE_INFINITY, 0, 0, 0, 0);

        private OfDeadline and(AnsweredCase it, int deadline) {
            double seconds = it.modes().get(0).deadlines().get(deadline).seconds();
            boolean isKept = it.modes().stream().anyMatch(mode -> mode.safeNinthSeconds() <= seconds);
            boolean isMissed = it.modes().stream()
                    .allMatch(mode -> mode.deadlines().get(deadline).chance().high() < SURE);
            return new OfDeadline(
                    Math.min(shortestSeconds, seconds),
                    Math.max(longestSeconds, seconds),
                    kept + (isKept ? 1 : 0),
                    missed + (isMissed ? 1 : 0),
                    open + (isKept || isMissed ? 0 : 1));
        }
    }

    /** Copies the list. */
    public GridTally {
        cases = List.copyOf(cases);
    }

    /**
     * Counts the answers to a table.
     *
     * @param heads the line of heads of the answers
     * @throws IOException if they can't be read
     */
    public static GridTally of(CaseTable table, String heads, LineStore lines) throws IOException {
        Map<List<String>, Counts> cases = new LinkedHashMap<>();
        AnsweredCase.forEach(
                heads,
                table.heads().size(),
                lines,
                it -> cases.computeIfAbsent(List.of(it.transfer(), it.direction()), key -> new Counts())
                        .add(it));
        return new GridTally(cases.entrySet().stream()
                .map(it -> new OfCase(
                        it.getKey().get(0), it.getKey().get(1), it.getValue().rowsByLeaders, it.getValue().deadlines))
                .toList());
    }

    private static final class Counts {
        private final Map<List<String>, Integer> rowsByLeaders = new LinkedHashMap<>();
        private final List<OfDeadline> deadlines = new ArrayList<>();

        void add(AnsweredCase it) {
            rowsByLeaders.merge(it.leaders(), 1, Integer::sum);
            for (int i = 0; i < it.modes().get(0).deadlines().size(); i++) {
                if (deadlines.size() <= i) {
                    deadlines.add(OfDeadline.NONE);
                }
                deadlines.set(i, deadlines.get(i).and(it, i));
            }
        }
    }
}
