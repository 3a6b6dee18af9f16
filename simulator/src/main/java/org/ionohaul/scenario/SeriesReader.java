package org.ionohaul.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ionohaul.channel.Schedule;

/** Reads the series of readings that a scenario names, a table with the columns of {@link SeriesColumn} in any order. */
final class SeriesReader {
    private static final double DAY_SECONDS = 86_400;
    private static final int MOST_ROWS = 20_000;
    private static final int MOST_LEVELS = 5_000;
    private static final Pattern TIME = Pattern.compile("(?:(\\S+)[ T]+)?(\\d{1,2}:\\d{2}(?::\\d{2})?)(?:[.,]\\d+)?");

    private final SourceFiles files;
    private final Path scenario;
    private final Notes notes;
    private final double sendClockSeconds;

    /**
     * Makes a reader.
     *
     * @param scenario the scenario's file, from whose folder paths go
     * @param notes where problems go
     * @param sendClockSeconds time of day when send is pressed, in seconds since midnight
     */
    SeriesReader(SourceFiles files, Path scenario, Notes notes, double sendClockSeconds) {
        this.files = files;
        this.scenario = scenario;
        this.notes = notes;
        this.sendClockSeconds = sendClockSeconds;
    }

    /** Returns the file that a section of readings names; empty if there is none of this name. */
    static Optional<Path> file(SourceFiles files, Path scenario, Section readings) {
        try {
            return Optional.of(scenario.resolveSibling(readings.get(ScenarioFormat.READINGS_FILE))
                            .normalize())
                    .filter(files::isFile);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Returns the readings that a section names; empty if that made a problem. */
    Optional<ReadSeries> read(Section readings) {
        if (!readings.isReadable(ScenarioFormat.READINGS_FILE)) {
            readings.get(ScenarioFormat.READINGS_FILE);
            return Optional.empty();
        }
        Optional<Path> file = file(files, scenario, readings);
        if (file.isEmpty()) {
            readings.problem(
                    ScenarioFormat.READINGS_FILE,
                    "there is no file " + Kind.shown(readings.get(ScenarioFormat.READINGS_FILE))
                            + " beside the scenario",
                    "write the name of a table of readings, or a path from the scenario's folder");
            return Optional.empty();
        }
        Notes found = new Notes();
        Optional<ReadSeries> series = new Table(file.get().toString(), found).read(file.get(), readings);
        if (files.isWithin(scenario.toAbsolutePath().normalize().resolveSibling(""), file.get())) {
            found.problems().forEach(notes::add);
        } else if (!found.problems().isEmpty()) {
            readings.problem(
                    ScenarioFormat.READINGS_FILE,
                    "the file outside the scenario's folder is no table of readings in order",
                    "put it beside the scenario, so that what is wrong with it may be told");
        }
        return found.problems().isEmpty() ? series : Optional.empty();
    }

    /** One file while it is being read. */
    private final class Table {
        private final String name;
        private final Notes found;
        private final Map<SeriesColumn, Integer> places = new HashMap<>();
        private final Map<SeriesColumn, SeriesColumn.Head> heads = new HashMap<>();
        private Optional<LocalDate> firstDay = Optional.empty();
        private boolean isByClock;

        private Table(String name, Notes found) {
            this.name = name;
            this.found = found;
        }

        private Optional<ReadSeries> read(Path file, Section readings) {
            List<CellTable.Row> rows =
                    CellTable.read(files, file, found::add).map(CellTable::rows).orElse(List.of());
            if (!found.problems().isEmpty()) {
                return Optional.empty();
            }
            if (rows.size() < 2) {
                problem(1, 1, "", "holds no reading", "write a line of heads, then a line a reading");
            } else if (rows.size() > MOST_ROWS) {
                problem(rows.get(MOST_ROWS).line(), 1, "", "is reading " + MOST_ROWS, "a series has at most 20,000");
            } else if (areHeads(rows.get(0))) {
                rows.stream()
                        .skip(1)
                        .forEach(it ->
                                it.surplus(name, rows.get(0).cells().size()).ifPresent(found::add));
                return series(rows.subList(1, rows.size()), readings);
            }
            return Optional.empty();
        }

        private boolean areHeads(CellTable.Row row) {
            for (int i = 0; i < row.cells().size(); i++) {
                Optional<SeriesColumn.Head> head = SeriesColumn.Head.of(row.cell(i));
                if (head.isEmpty() && !row.cell(i).isEmpty()) {
                    problem(
                            row.line(),
                            row.column(i),
                            "",
                            "there is no column \"" + row.cell(i) + "\"",
                            Spelling.advice(row.cell(i), SeriesColumn.heads()));
                } else if (head.isPresent() && places.putIfAbsent(head.get().column(), i) != null) {
                    problem(row.line(), row.column(i), head.get().column().head(), "stands twice", "leave one out");
                }
                head.ifPresent(it -> heads.putIfAbsent(it.column(), it));
            }
            boolean hasLevels = places.containsKey(SeriesColumn.SNR)
                    || places.containsKey(SeriesColumn.SIGNAL)
                    || places.containsKey(SeriesColumn.NOISE);
            if (!places.containsKey(SeriesColumn.TIME) || !hasLevels) {
                problem(
                        row.line(),
                        1,
                        "",
                        "needs a column time and one of snr, signal and noise",
                        "heads: " + String.join(", ", SeriesColumn.heads()));
            }
            if (places.containsKey(SeriesColumn.SNR)
                    && (places.containsKey(SeriesColumn.SIGNAL) || places.containsKey(SeriesColumn.NOISE))) {
                problem(
                        row.line(),
                        row.column(places.get(SeriesColumn.SNR)),
                        "snr",
                        "stands beside signal or noise",
                        "keep either the snr or signal and noise");
            }
            return found.problems().isEmpty();
        }

        private Optional<ReadSeries> series(List<CellTable.Row> rows, Section readings) {
            List<Double> seconds = new ArrayList<>();
            Map<SeriesColumn, List<Schedule.Point>> levels = new LinkedHashMap<>();
            for (CellTable.Row row : rows) {
                Optional<Double> at = time(row, seconds);
                at.ifPresent(seconds::add);
                for (SeriesColumn column : List.of(SeriesColumn.SNR, SeriesColumn.SIGNAL, SeriesColumn.NOISE)) {
                    Optional<Double> level = level(row, column);
                    if (at.isPresent() && level.isPresent()) {
                        levels.computeIfAbsent(column, it -> new ArrayList<>())
                                .add(new Schedule.Point(at.get(), level.get()));
                    }
                }
            }
            if (!found.problems().isEmpty()) {
                return Optional.empty();
            }
            if (levels.isEmpty()) {
                problem(rows.get(0).line(), 1, "", "and the lines below hold no level", "");
                return Optional.empty();
            }
            double shift = shift(seconds);
            ReadSeries series = readings.build(() -> {
                double averageSeconds = readings.get(ScenarioFormat.READINGS_AVERAGE);
                Function<SeriesColumn, List<Schedule.Point>> averages =
                        column -> averaged(levels.getOrDefault(column, List.of()), shift, averageSeconds);
                return new ReadSeries(
                        readings.get(ScenarioFormat.READINGS_FILE),
                        averages.apply(SeriesColumn.SNR),
                        averages.apply(SeriesColumn.SIGNAL),
                        averages.apply(SeriesColumn.NOISE),
                        averageSeconds);
            });
            if (series.levels().size() > MOST_LEVELS) {
                problem(
                        0,
                        0,
                        "",
                        "comes to " + series.levels().size() + " levels, and a trial takes 5,000",
                        "average over longer");
            }
            return Optional.of(series);
        }

        private Optional<Double> level(CellTable.Row row, SeriesColumn column) {
            if (!places.containsKey(column) || row.cell(places.get(column)).isEmpty()) {
                return Optional.empty();
            }
            String cell = Objects.requireNonNull(heads.get(column)).withUnit(row.cell(places.get(column)));
            try {
                double level = column == SeriesColumn.SNR ? Quantity.decibels(cell) : Quantity.levelDbm(cell);
                if (Math.abs(level) < 200) {
                    return Optional.of(level);
                }
                throw new WrongValue("\"" + cell + "\" must be within 200 dB", "");
            } catch (WrongValue e) {
                problem(row.line(), row.column(places.get(column)), column.head(), e.message(), e.remedy());
                return Optional.empty();
            }
        }

        /** Returns when a line was read, in seconds since pressing send, or on a count that is shifted by whole days. */
        private Optional<Double> time(CellTable.Row row, List<Double> earlier) {
            int place = places.getOrDefault(SeriesColumn.TIME, 0);
            try {
                double at = seconds(row.cell(place), earlier);
                if (!earlier.isEmpty() && !(at > earlier.get(earlier.size() - 1))) {
                    throw new WrongValue("is not later than the line before", "put the lines in order of time");
                }
                if (!earlier.isEmpty() && at - earlier.get(0) > DAY_SECONDS) {
                    throw new WrongValue(
                            "is more than a day after the first line",
                            "put the lines in order of time, and keep those of one evening");
                }
                return Optional.of(at);
            } catch (WrongValue e) {
                problem(row.line(), row.column(place), "time", e.message(), e.remedy());
                return Optional.empty();
            }
        }

        private double seconds(String cell, List<Double> earlier) throws WrongValue {
            Matcher clock = TIME.matcher(cell);
            if (!clock.matches()) {
                return Quantity.seconds(cell);
            }
            isByClock = true;
            double ofDay = Quantity.clockSeconds(clock.group(2));
            if (clock.group(1) != null) {
                LocalDate day = Quantity.date(clock.group(1));
                firstDay = firstDay.or(() -> Optional.of(day));
                return ofDay - sendClockSeconds + DAY_SECONDS * ChronoUnit.DAYS.between(firstDay.get(), day);
            }
            double sinceSend = ofDay - sendClockSeconds;
            double last = earlier.isEmpty() ? sinceSend : earlier.get(earlier.size() - 1);
            return sinceSend >= last
                    ? sinceSend
                    : sinceSend + DAY_SECONDS * Math.ceil((last - sinceSend) / DAY_SECONDS);
        }

        /** Returns by how many seconds, in whole days, times lie off: pressing send falls among them, or as near as can be. */
        private double shift(List<Double> seconds) {
            double first = seconds.get(0);
            double last = seconds.get(seconds.size() - 1);
            double best = 0;
            for (double days = -DAY_SECONDS; days <= DAY_SECONDS; days += DAY_SECONDS) {
                if (away(first + days, last + days) < away(first + best, last + best)) {
                    best = days;
                }
            }
            return isByClock ? best : 0;
        }

        private static double away(double first, double last) {
            return Math.max(0, Math.max(first, -last));
        }

        private void problem(int line, int column, String key, String message, String remedy) {
            found.add(new Problem(name, line, column, key, message, remedy));
        }
    }

    /** Returns the mean powers of readings that are nearer together than that, each at the mean of their times. */
    private static List<Schedule.Point> averaged(List<Schedule.Point> points, double shift, double averageSeconds) {
        List<Schedule.Point> means = new ArrayList<>();
        int from = 0;
        for (int to = 1; to <= points.size(); to++) {
            boolean isFull = to == points.size()
                    || points.get(to).atSeconds() - points.get(from).atSeconds() >= averageSeconds;
            if (isFull) {
                means.add(mean(points.subList(from, to), shift));
                from = to;
            }
        }
        return means;
    }

    /** Levels that are all the same stay the same to the last digit. */
    private static Schedule.Point mean(List<Schedule.Point> points, double shift) {
        double at =
                points.stream().mapToDouble(Schedule.Point::atSeconds).average().orElseThrow();
        double first = points.get(0).levelDb();
        boolean areAlike = points.stream().allMatch(it -> it.levelDb() == first);
        double power = points.stream()
                .mapToDouble(it -> Math.pow(10, it.levelDb() / 10))
                .average()
                .orElseThrow();
        return new Schedule.Point(at + shift, areAlike ? first : 10 * Math.log10(power));
    }
}
