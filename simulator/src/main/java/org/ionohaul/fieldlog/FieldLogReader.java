package org.ionohaul.fieldlog;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ionohaul.scenario.CellTable;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Spelling;
import org.ionohaul.scenario.WrongValue;

/** Reads a field log, a table whose columns are those of {@link LogColumn} in any order, and checks everything in it. */
public final class FieldLogReader {
    /** What placing and learning can be asked to simulate. */
    private static final int MOST_RUNS = 500;

    private static final Pattern HOURS = Pattern.compile("(\\d{1,2}):([0-5]\\d):([0-5]\\d)");
    private static final Pattern TWO_PARTS = Pattern.compile("(\\d{1,3}):([0-5]\\d)");
    private static final Pattern MINUTES = Pattern.compile("min(ute)?s?");
    private static final Pattern STEP = Pattern.compile("(.*\\S)\\s+(up|down|nearest)", Pattern.CASE_INSENSITIVE);
    private static final Pattern WITH_ERROR = Pattern.compile("(.*?)\\s*(?:±|\\+-|\\+/-)\\s*(.+)");

    private final String file;
    private final Collection<String> modes;
    private final NavigableSet<Problem> problems = new TreeSet<>();

    private FieldLogReader(String file, Collection<String> modes) {
        this.file = file;
        this.modes = modes;
    }

    /**
     * Reads a log.
     *
     * @param files where its text comes from
     * @param file the log
     * @param modes names of the modes that runs may have been sent with
     * @throws ScenarioProblems if anything in it is wrong, with all that is
     */
    public static FieldLog read(SourceFiles files, Path file, Collection<String> modes) throws ScenarioProblems {
        FieldLogReader reader = new FieldLogReader(file.toString(), modes);
        List<LoggedRun> runs = CellTable.read(files, file, reader.problems::add)
                .map(reader::runs)
                .orElse(List.of());
        if (!reader.problems.isEmpty()) {
            throw new ScenarioProblems(List.copyOf(reader.problems));
        }
        return new FieldLog(nameOf(file), runs);
    }

    private static String nameOf(Path file) {
        return String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "");
    }

    private List<LoggedRun> runs(CellTable table) {
        if (table.rows().size() < 2) {
            problem(1, 1, "", "holds no run", "write a line of heads, then a line a run; heads: " + heads());
            return List.of();
        }
        Map<LogColumn, Integer> places = places(table.rows().get(0));
        List<LoggedRun> runs = new ArrayList<>();
        List<CellTable.Row> rows = table.rows().subList(1, table.rows().size());
        if (rows.size() > MOST_RUNS) {
            problem(rows.get(MOST_RUNS).line(), 1, "", "is run " + (MOST_RUNS + 1), "a log has at most 500 runs");
            return List.of();
        }
        for (CellTable.Row row : rows) {
            row.surplus(file, table.rows().get(0).cells().size()).ifPresent(problems::add);
            run(runs.size() + 1, new LogCells(file, row, places, problems)).ifPresent(runs::add);
        }
        return runs;
    }

    private Map<LogColumn, Integer> places(CellTable.Row heads) {
        Map<LogColumn, Integer> places = new EnumMap<>(LogColumn.class);
        for (int i = 0; i < heads.cells().size(); i++) {
            String head = heads.cell(i);
            Optional<LogColumn> column = LogColumn.named(head);
            if (column.isEmpty() && !head.isEmpty()) {
                problem(
                        heads.line(),
                        heads.column(i),
                        "",
                        "there is no column \"" + head + "\"",
                        Spelling.advice(head, LogColumn.heads()));
            } else if (column.isPresent() && places.putIfAbsent(column.get(), i) != null) {
                problem(heads.line(), heads.column(i), column.get().head(), "stands twice", "leave one of them out");
            }
        }
        for (LogColumn column : LogColumn.values()) {
            if (column.isNeeded() && !places.containsKey(column)) {
                problem(heads.line(), 1, column.head(), "is missing", "add the column; heads: " + heads());
            }
        }
        return places;
    }

    private static String heads() {
        return String.join(", ", LogColumn.heads());
    }

    private Optional<LoggedRun> run(int number, LogCells cells) {
        Optional<LocalDate> date = cells.find(LogColumn.DATE, Quantity::date);
        Optional<LocalTime> start =
                cells.find(LogColumn.START, text -> LocalTime.ofSecondOfDay(Math.round(Quantity.clockSeconds(text))));
        Optional<String> mode = cells.need(LogColumn.MODE, LogCells.oneOf(List.copyOf(modes), it -> it));
        Optional<Direction> direction = cells.need(LogColumn.DIRECTION, LogCells.oneOf(Direction.class));
        Optional<Long> bytes = cells.need(LogColumn.SIZE, FieldLogReader::size);
        Optional<Long> onAir = cells.find(LogColumn.ON_AIR, FieldLogReader::size);
        Optional<LoggedOutcome> outcome = cells.need(LogColumn.OUTCOME, LogCells.oneOf(LoggedOutcome.class));
        Optional<Long> through = cells.find(LogColumn.THROUGH, Quantity::bytes);
        Optional<NotedTime> session = time(cells, LogColumn.SESSION_TIME);
        Optional<NotedTime> delivered = time(cells, LogColumn.DELIVERED_AFTER);
        EndReadings near =
                readings(cells, LogColumn.NEAR_SNR, LogColumn.NEAR_SIGNAL, LogColumn.NEAR_NOISE, LogColumn.NEAR_READ);
        EndReadings far =
                readings(cells, LogColumn.FAR_SNR, LogColumn.FAR_SIGNAL, LogColumn.FAR_NOISE, LogColumn.FAR_READ);
        if (mode.isEmpty() || direction.isEmpty() || bytes.isEmpty() || outcome.isEmpty()) {
            return Optional.empty();
        }
        LoggedRun run = new LoggedRun(
                number,
                date,
                start,
                mode.get(),
                direction.get(),
                bytes.get(),
                length(onAir),
                outcome.get(),
                length(through),
                session,
                delivered,
                near,
                far,
                cells.text(LogColumn.REMARKS));
        refuseContradictions(run, cells);
        return Optional.of(run);
    }

    private static OptionalLong length(Optional<Long> bytes) {
        return bytes.stream().mapToLong(Long::longValue).findFirst();
    }

    private static void refuseContradictions(LoggedRun run, LogCells cells) {
        long sent = run.sentBytes();
        if (run.outcome().isDelivered() && run.throughBytes().orElse(sent) != sent) {
            cells.problem(LogColumn.THROUGH, "is not all that was sent, but the run delivered", "leave it empty");
        } else if (!run.outcome().isDelivered() && run.throughBytes().orElse(0) >= sent) {
            cells.problem(
                    LogColumn.THROUGH,
                    "is all that was sent, but the run did not deliver",
                    "write delivered-not-closed if everything was through");
        }
        if (run.onAirBytes().orElse(0) > 2 * run.bytes()) {
            cells.problem(LogColumn.ON_AIR, "is more than twice the size", "write the size after compression");
        }
        if (!run.outcome().isDelivered() && run.deliveredAfter().isPresent()) {
            cells.problem(LogColumn.DELIVERED_AFTER, "is noted, but the run did not deliver", "leave it empty");
        }
        boolean isBackwards = run.sessionTime().isPresent()
                && run.deliveredAfter().isPresent()
                && run.deliveredAfter().get().lowSeconds()
                        > run.sessionTime().get().highSeconds();
        if (isBackwards) {
            cells.problem(LogColumn.DELIVERED_AFTER, "is later than the end of the session", "");
        }
        if (run.outcome() == LoggedOutcome.BROKEN_OFF && run.sessionTime().isEmpty()) {
            cells.problem(
                    LogColumn.SESSION_TIME,
                    "is empty, but the run was broken off",
                    "write when: it might have got through later");
        }
    }

    private static long size(String text) throws WrongValue {
        long bytes = Quantity.bytes(text);
        if (bytes >= 1 && bytes <= 1_000_000_000) {
            return bytes;
        }
        throw new WrongValue("\"" + text + "\" must be from 1 B to 1000 MB", "");
    }

    private static Optional<NotedTime> time(LogCells cells, LogColumn column) {
        Optional<Double> seconds = cells.find(column, FieldLogReader::seconds);
        Optional<Step> step = cells.find(LogColumn.ROUNDED, Step::of);
        return seconds.flatMap(it -> cells.find(column, text -> {
            Step noted = step.orElseGet(() -> Step.writtenIn(text));
            return new NotedTime(it, noted.seconds(), noted.rounding());
        }));
    }

    private static double seconds(String text) throws WrongValue {
        Matcher hours = HOURS.matcher(text);
        if (hours.matches()) {
            return 3600 * Double.parseDouble(hours.group(1))
                    + 60 * Double.parseDouble(hours.group(2))
                    + Double.parseDouble(hours.group(3));
        }
        Matcher two = TWO_PARTS.matcher(text);
        if (two.matches()) {
            String minutes = two.group(1) + " min " + two.group(2) + " s";
            throw new WrongValue(
                    "\"" + text + "\" can be read in two ways: " + minutes + ", or " + two.group(1) + " h "
                            + two.group(2) + " min",
                    "write \"" + minutes + "\" or \"0:" + text + "\"");
        }
        return Quantity.seconds(text);
    }

    private static EndReadings readings(
            LogCells cells, LogColumn snr, LogColumn signal, LogColumn noise, LogColumn read) {
        Meter meter = cells.find(read, Meter::of).orElse(Meter.USUAL);
        return new EndReadings(
                cells.find(snr, text -> meter.reading(Quantity.decibels(text))),
                cells.find(signal, text -> meter.reading(Quantity.levelDbm(text))),
                cells.find(noise, text -> new Reading(Quantity.levelDbm(text), HowRead.AVERAGE, meter.accuracyDb())));
    }

    private void problem(int line, int column, String key, String message, String remedy) {
        problems.add(new Problem(file, line, column, key, message, remedy));
    }

    /** How finely a time is noted. */
    private record Step(double seconds, Rounding rounding) {
        static Step of(String text) throws WrongValue {
            Matcher parts = STEP.matcher(text);
            double seconds = Quantity.seconds(parts.matches() ? parts.group(1) : text);
            if (!(seconds > 0 && seconds <= 3600)) {
                throw new WrongValue("\"" + text + "\" must be above 0 and at most 1 h", "");
            }
            return new Step(
                    seconds, parts.matches() ? LogCells.oneOf(Rounding.class).read(parts.group(2)) : Rounding.NEAREST);
        }

        /** Returns the smallest unit that somebody took the trouble to write. */
        static Step writtenIn(String text) {
            boolean hasSeconds = MINUTES.matcher(text).replaceAll("m").contains("s")
                    || HOURS.matcher(text).matches();
            return new Step(hasSeconds ? 1 : text.contains("m") ? 60 : 3600, Rounding.NEAREST);
        }
    }

    /** How a meter was read. */
    private record Meter(HowRead how, double accuracyDb) {
        static final Meter USUAL = new Meter(HowRead.AVERAGE, Reading.USUAL_ACCURACY_DB);

        static Meter of(String text) throws WrongValue {
            Matcher parts = WITH_ERROR.matcher(text);
            String how = parts.matches() ? parts.group(1) : text;
            double accuracyDb = parts.matches() ? Quantity.decibels(parts.group(2)) : Reading.USUAL_ACCURACY_DB;
            if (!(accuracyDb >= 0 && accuracyDb <= 30)) {
                throw new WrongValue("\"" + text + "\" must be from 0 to 30 dB", "");
            }
            return new Meter(
                    how.isEmpty()
                            ? HowRead.AVERAGE
                            : LogCells.oneOf(HowRead.class).read(how),
                    accuracyDb);
        }

        Reading reading(double value) {
            return new Reading(value, how, accuracyDb);
        }
    }
}
