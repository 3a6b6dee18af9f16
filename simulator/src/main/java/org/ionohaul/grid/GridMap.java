package org.ionohaul.grid;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.LineStore;

/**
 * The answers of a grid laid out by two of its columns, for one case: which mode may be best and how surely a deadline is kept.
 *
 * @param transfer what is sent
 * @param direction which way
 * @param down the values of the first column, in the order of the table
 * @param across the values of the second
 * @param places one entry a value down, in it one a value across; empty where the table has no such row
 */
public record GridMap(
        String transfer, String direction, List<String> down, List<String> across, List<List<Optional<Place>>> places) {
    /**
     * One place of the map; if several rows fall on it, the one that comes off worst, since a plan must hold in each.
     *
     * @param leaders the modes that may be best
     * @param safeNinthSeconds the soonest time to plan for if 9 of 10 trials are to keep it; infinite if there is none
     * @param firstDeadline the chance of the first deadline with the mode that keeps it most often; empty without deadlines
     */
    public record Place(List<String> leaders, double safeNinthSeconds, Optional<Estimate> firstDeadline) {
        private static final Comparator<Place> WORST_FIRST = Comparator.comparingDouble(Place::firstDeadlineShare)
                .thenComparing(Place::safeNinthSeconds, Comparator.reverseOrder());

        /** Copies the list. */
        public Place {
            leaders = List.copyOf(leaders);
        }

        /** Returns the largest chance of the first deadline with any mode; 0 without deadlines. */
        public double firstDeadlineShare() {
            return firstDeadline.map(Estimate::value).orElse(0.0);
        }

        private static Place of(AnsweredCase it) {
            return new Place(
                    it.leaders(),
                    it.modes().stream()
                            .mapToDouble(AnsweredCase.OfMode::safeNinthSeconds)
                            .min()
                            .orElse(Double.POSITIVE_INFINITY),
                    it.modes().stream()
                            .flatMap(mode -> mode.deadlines().stream().limit(1))
                            .map(AnsweredCase.OfDeadline::chance)
                            .max(Comparator.comparingDouble(Estimate::value)));
        }
    }

    /** Copies the lists. */
    public GridMap {
        down = List.copyOf(down);
        across = List.copyOf(across);
        places = places.stream().map(List::copyOf).toList();
    }

    /**
     * Lays out the answers to a table, a map for each transfer and direction.
     *
     * @param heads the line of heads of the answers
     * @param down which column of the table runs down, from 0
     * @param across which one runs across
     * @throws IOException if the answers can't be read
     */
    public static List<GridMap> of(CaseTable table, String heads, LineStore lines, int down, int across)
            throws IOException {
        Map<List<String>, Map<List<String>, Place>> cases = new LinkedHashMap<>();
        AnsweredCase.forEach(
                heads,
                table.heads().size(),
                lines,
                it -> cases.computeIfAbsent(List.of(it.transfer(), it.direction()), key -> new LinkedHashMap<>())
                        .merge(
                                List.of(it.cells().get(down), it.cells().get(across)),
                                Place.of(it),
                                (a, b) -> Place.WORST_FIRST.compare(a, b) <= 0 ? a : b));
        List<String> rows = values(table, down);
        List<String> columns = values(table, across);
        List<GridMap> maps = new ArrayList<>();
        cases.forEach((name, found) -> maps.add(new GridMap(
                name.get(0),
                name.get(1),
                rows,
                columns,
                rows.stream()
                        .map(row -> columns.stream()
                                .map(column -> Optional.ofNullable(found.get(List.of(row, column))))
                                .toList())
                        .toList())));
        return maps;
    }

    private static List<String> values(CaseTable table, int column) {
        return table.rows().stream()
                .map(it -> it.cells().get(column))
                .distinct()
                .toList();
    }
}
