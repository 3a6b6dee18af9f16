package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.Pace;
import org.ionohaul.analysis.ProvenLead;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeComparison;
import org.ionohaul.analysis.SizeCurve;
import org.ionohaul.analysis.SizePoint;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeTransfers;

/** What is said about files of other sizes in one direction. */
final class SizeTables {
    /** The sizes that a table shows; a picture shows more. */
    private static final Set<Long> SHOWN_BYTES =
            Set.of(1_000L, 2_000L, 5_000L, 10_000L, 20_000L, 50_000L, 100_000L, 200_000L, 500_000L, 1_000_000L);

    private SizeTables() {}

    static String route(Scenario scenario, SizeAnswers answers) {
        return "from " + scenario.station(answers.direction().sender()).name() + " to "
                + scenario.station(answers.direction().receiver()).name();
    }

    /** Returns what the answers rest on. */
    static String basis(SizeAnswers answers) {
        int larger = answers.largerSent();
        String more = larger == 0
                ? ""
                : ", and " + larger + " larger " + (larger == 1 ? "one" : "ones") + " about which modes change places,";
        return "Files of each size up to " + SizeText.size(SizeTransfers.LARGEST_SENT_BYTES) + more
                + " are sent on each of "
                + SizeText.grouped(answers.trials()) + " trials, under the same skies; other larger ones are read off"
                + " longer transfers, which are up to one over late.";
    }

    /** Returns which modes change places where, in few words. */
    static String pair(SizeAnswers answers, Crossing crossing) {
        Map<String, String> titles = titles(answers);
        Estimate bytes = crossing.bytes();
        return titles.getOrDefault(crossing.firstBelow(), crossing.firstBelow()) + ", then "
                + titles.getOrDefault(crossing.firstAbove(), crossing.firstAbove()) + "\nfrom " + size(bytes.value())
                + range(bytes.low(), bytes.high());
    }

    /** Nothing where both ends are written alike. */
    private static String range(double low, double high) {
        String from = size(low);
        String to = size(high);
        return from.equals(to) ? "" : " (" + from + " to " + to + ")";
    }

    private static Map<String, String> titles(SizeAnswers answers) {
        return answers.curves().stream()
                .collect(
                        Collectors.toMap(it -> it.mode().name(), it -> it.mode().title()));
    }

    /** Returns sentences on each pair of modes that changes places, or one that says that there is none. */
    static List<String> crossings(SizeAnswers answers) {
        Map<String, String> titles = titles(answers);
        List<String> sentences = answers.pairs().stream()
                .filter(it -> !it.crossings().isEmpty())
                .map(it -> crossings(it, titles))
                .toList();
        return sentences.isEmpty()
                ? List.of("Whatever the size, no mode that is ahead falls behind another beyond chance.")
                : sentences;
    }

    /** Says of no size more than the trials do: outside of what is proven, the order is open. */
    private static String crossings(SizeComparison pair, Map<String, String> titles) {
        List<ProvenLead> proven = pair.proven();
        String leads = IntStream.range(0, proven.size())
                .mapToObj(i -> lead(proven.get(i), i, titles))
                .collect(Collectors.joining(", "));
        String places = LeaderWords.and(pair.crossings().stream()
                .map(Crossing::bytes)
                .map(it -> "at about " + size(it.value()) + range(it.low(), it.high()))
                .toList());
        return leads + "; they change places " + places + "." + open(pair);
    }

    private static String lead(ProvenLead lead, int place, Map<String, String> titles) {
        String title = titles.getOrDefault(lead.mode(), lead.mode());
        return title + (place == 0 ? " is usually through first" : place == 1 ? "" : " again") + " with files of "
                + (SizeText.size(lead.fromBytes()).equals(SizeText.size(lead.toBytes()))
                        ? SizeText.size(lead.fromBytes())
                        : SizeText.size(lead.fromBytes()) + " to " + SizeText.size(lead.toBytes()));
    }

    private static String open(SizeComparison pair) {
        List<String> open = new ArrayList<>();
        pair.openBelow().ifPresent(it -> open.add("smaller than " + SizeText.size(it)));
        pair.openAbove().ifPresent(it -> open.add("larger than " + SizeText.size(it)));
        return open.isEmpty()
                ? ""
                : " Which is first with files " + String.join(" or ", open) + " can't be told beyond chance.";
    }

    /** Returns what it costs to get in with each mode, and how fast it then goes. */
    static Table pace(SizeAnswers answers) {
        return new Table(
                "Entry price and pace: medians of all trials; bytes as they go on the air",
                List.of(
                        Cell.of("mode"),
                        new Cell("first byte", "after"),
                        new Cell("first kB", "after"),
                        new Cell("early", "bytes/min"),
                        new Cell("sustained", "bytes/min"),
                        new Cell("trouble", "of time")),
                answers.curves().stream().map(SizeTables::paceRow).toList());
    }

    private static List<Cell> paceRow(SizeCurve curve) {
        Pace pace = curve.pace();
        return List.of(
                Cell.of(curve.mode().title()),
                Cells.time(pace.firstByteSeconds()),
                Cells.time(pace.firstKilobyteSeconds()),
                Cells.pace(pace.earlyBytesPerMinute()),
                Cells.pace(pace.sustainedBytesPerMinute()),
                Cell.of(OddsText.percent(pace.troubleShare())));
    }

    /** Returns the time that 5 of 10 trials keep for files of some sizes, and below it that which 9 of 10 keep. */
    static Table times(SizeAnswers answers) {
        List<Integer> shown = IntStream.range(
                        0, answers.curves().get(0).points().size())
                .filter(i -> SHOWN_BYTES.contains(
                        answers.curves().get(0).points().get(i).bytes()))
                .boxed()
                .toList();
        Function<Integer, Cell> head = i ->
                Cell.of(SizeText.size(answers.curves().get(0).points().get(i).bytes()));
        return new Table(
                "Through by, for files of other sizes: on 5 of 10 trials and, in small print, on 9 of 10",
                Stream.concat(Stream.of(Cell.of("mode")), shown.stream().map(head))
                        .toList(),
                answers.curves().stream().map(it -> timesRow(it, shown)).toList());
    }

    private static List<Cell> timesRow(SizeCurve curve, List<Integer> shown) {
        List<Cell> row = new ArrayList<>(List.of(Cell.of(curve.mode().title())));
        shown.stream().map(curve.points()::get).map(SizeTables::times).forEach(row::add);
        return row;
    }

    /** Returns the time that 5 of 10 trials keep for a file of one size and, in small print, 9 of 10. */
    static Cell times(SizePoint point) {
        return new Cell(
                timeOrDash(point.medianSeconds().value()),
                timeOrDash(point.ninthSeconds().value()));
    }

    private static String timeOrDash(double seconds) {
        return Double.isFinite(seconds) ? TimeText.length(seconds) : "-";
    }

    private static String size(double bytes) {
        return SizeText.about(bytes);
    }
}
