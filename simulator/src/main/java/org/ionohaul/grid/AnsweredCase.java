package org.ionohaul.grid;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.LineStore;

/**
 * One case of one row, as read back from the answers: what was written is what is told.
 *
 * @param cells what the table says of the row, one a head
 * @param transfer what is sent
 * @param direction which way
 * @param modes one entry a mode, in the scenario's order
 */
record AnsweredCase(List<String> cells, String transfer, String direction, List<OfMode> modes) {
    /**
     * A mode in it.
     *
     * @param name its name
     * @param mayBeBest whether no other mode is better beyond chance
     * @param deliveredShare share of trials in which everything was delivered
     * @param safeNinthSeconds the time to plan for if 9 of 10 trials are to keep it; infinite if there is none
     * @param deadlines one entry a deadline
     */
    record OfMode(
            String name,
            boolean mayBeBest,
            double deliveredShare,
            double safeNinthSeconds,
            List<OfDeadline> deadlines) {}

    /**
     * A deadline of it.
     *
     * @param seconds the deadline
     * @param chance share of trials that keep it
     * @param mayBeBest whether no other mode keeps it more often beyond chance
     */
    record OfDeadline(double seconds, Estimate chance, boolean mayBeBest) {}

    /** Returns the names of the modes that may be best; none where nothing arrives with any. */
    List<String> leaders() {
        boolean isHopeless = modes.stream().allMatch(it -> it.deliveredShare() == 0);
        return modes.stream()
                .filter(it -> !isHopeless)
                .filter(OfMode::mayBeBest)
                .map(OfMode::name)
                .toList();
    }

    /**
     * Hands on every case of every row, in order.
     *
     * @param heads the line of heads
     * @param tableHeads how many of them, after the first, are the table's
     * @throws IOException if the lines can't be read
     */
    static void forEach(String heads, int tableHeads, LineStore lines, Consumer<AnsweredCase> taker)
            throws IOException {
        Grouping grouping = new Grouping(GridColumns.cells(heads), tableHeads, taker);
        lines.forEach(line -> grouping.take(GridColumns.cells(line)));
        grouping.end();
    }

    /** Gathers the modes of a case, whose lines follow one another. */
    private static final class Grouping {
        private final List<String> heads;
        private final int tableHeads;
        private final Consumer<AnsweredCase> taker;
        private final List<List<String>> together = new ArrayList<>();

        Grouping(List<String> heads, int tableHeads, Consumer<AnsweredCase> taker) {
            this.heads = heads;
            this.tableHeads = tableHeads;
            this.taker = taker;
        }

        void take(List<String> line) {
            // Row, the table's own cells, transfer and direction: what is the same for all modes of a case.
            int common = tableHeads + 3;
            if (!together.isEmpty() && !together.get(0).subList(0, common).equals(line.subList(0, common))) {
                end();
            }
            together.add(line);
        }

        void end() {
            if (!together.isEmpty()) {
                List<String> first = together.get(0);
                taker.accept(new AnsweredCase(
                        List.copyOf(first.subList(1, 1 + tableHeads)),
                        first.get(1 + tableHeads),
                        first.get(2 + tableHeads),
                        together.stream().map(this::ofMode).toList()));
                together.clear();
            }
        }

        private OfMode ofMode(List<String> line) {
            List<OfDeadline> deadlines = new ArrayList<>();
            for (int i = 1;
                    heads.contains(GridColumns.share(i))
                            && !cell(line, GridColumns.share(i)).isEmpty();
                    i++) {
                deadlines.add(new OfDeadline(
                        number(line, GridColumns.deadline(i)),
                        new Estimate(
                                number(line, GridColumns.share(i)),
                                number(line, GridColumns.share(i) + GridColumns.LOW),
                                number(line, GridColumns.share(i) + GridColumns.HIGH)),
                        Boolean.parseBoolean(cell(line, GridColumns.mayBeBest(i)))));
            }
            return new OfMode(
                    cell(line, GridColumns.MODE),
                    Boolean.parseBoolean(cell(line, GridColumns.MAY_BE_BEST)),
                    number(line, GridColumns.DELIVERED),
                    number(line, GridColumns.SAFE_NINTH),
                    deadlines);
        }

        private double number(List<String> line, String head) {
            String cell = cell(line, head);
            return cell.isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(cell);
        }

        /** By place after the table's own heads, one of which may be called the same. */
        private String cell(List<String> line, String head) {
            return line.get(
                    1 + tableHeads + heads.subList(1 + tableHeads, heads.size()).indexOf(head));
        }
    }
}
