package org.ionohaul.sheet;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.DecibelText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Mode;
import org.ionohaul.trial.ModeCard;

/** A mode's data sheet as text. */
public record ModeSheet(ModeCard card) implements ResultFolder.Text {
    private static final int WIDTH = 80;
    private static final int SCALE_STEP_DB = 10;

    @Override
    public String fileName() {
        return "card.txt";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        for (String line : lines()) {
            writer.write(line + "\n");
        }
    }

    /** Returns the text, line by line. */
    public List<String> lines() {
        Mode mode = card.mode();
        List<String> lines =
                new ArrayList<>(List.of(mode.title(), "=".repeat(mode.title().length())));
        lines.addAll(TextWrap.lines(mode.about(), "", WIDTH));
        lines.add("");
        lines.addAll(TextWrap.lines(onTheAir(), "", WIDTH));
        lines.add("");
        lines.addAll(TextWrap.lines(dataRates().caption() + ":", "", WIDTH));
        lines.addAll(new TextTable(dataRates()).lines(WIDTH));
        lines.add("");
        lines.add(needs().caption());
        lines.addAll(new TextTable(needs()).lines(WIDTH));
        lines.add("");
        lines.addAll(strips());
        card.dataRates().stream()
                .max(Comparator.comparingDouble(ModeCard.DataRate::unnoticedErrors))
                .filter(dataRate -> dataRate.unnoticedErrors() > 0)
                .ifPresent(dataRate -> lines.addAll(TextWrap.lines(unnoticed(dataRate), "", WIDTH)));
        if (card.mistakenReplies() > 0) {
            lines.addAll(TextWrap.lines(mistaken(), "", WIDTH));
        }
        lines.add("");
        lines.add(undisturbed().caption());
        lines.addAll(new TextTable(undisturbed()).lines(WIDTH));
        return lines;
    }

    /**
     * Returns the sheet as a page, with the frame loss as pictures.
     *
     * @param version version of the program
     */
    public ChartPage page(String version) {
        return new ChartPage(
                "card.html",
                card.mode().title(),
                card.mode().about() + " " + onTheAir(),
                List.of(dataRates(), needs(), undisturbed()),
                IntStream.range(0, card.dataRates().get(0).paths().size())
                        .mapToObj(path -> LossChart.chart(card, path))
                        .toList(),
                "Made by ionohaul " + version + ", measured by the program's own machinery.");
    }

    private String onTheAir() {
        Mode mode = card.mode();
        return String.format(
                Locale.ROOT,
                "%.0f Hz wide; peaks %.1f dB above the mean: of a transmitter's peak power it sends so much less,"
                        + " and the SNR of a scenario must be so much above the needs below."
                        + " An acknowledgement lasts %.2f s, a call %.2f s; each turnaround takes %.0f ms between two"
                        + " stations with 10 ms of hang, 15 ms of relays and 20 ms of recovery.",
                mode.emission().bandwidthHz(),
                mode.emission().crestFactorDb(),
                card.acknowledgementSeconds(),
                card.callSeconds(),
                1000 * card.answerSeconds());
    }

    private static String unnoticed(ModeCard.DataRate dataRate) {
        return "Data rate " + dataRate.number() + " delivers errors that nobody notices: 1 frame in "
                + SizeText.grouped(1 / dataRate.unnoticedErrors())
                + " is wrong where one in ten is lost on the steady path.";
    }

    private String mistaken() {
        List<ModeCard.OnPath> paths = card.dataRates().get(0).paths();
        return "Its answers are one of two words: where data rate 1 loses a frame in ten on "
                + paths.get(paths.size() - 1).path().key() + ", 1 answer in "
                + SizeText.grouped(1 / card.mistakenReplies()) + " is taken for the other word. "
                + (card.mode().arq().scheme() == ArqScheme.ALTERNATING
                        ? "Then a frame of the file is printed again, or is missing, and nobody notices."
                        : "Then a frame is sent in vain, or the link is lost; of the last frame nobody notices that it is missing.");
    }

    private Table dataRates() {
        return new Table(
                "Data rates; needs: SNR of a full-power carrier in 3 kHz, as scenarios state it, at which 1 frame in"
                        + " 10 is lost on a steady path",
                cells("data rate", "frame", "alone", "longest over", "lasts", "then net", "needs"),
                card.dataRates().stream()
                        .map(dataRate -> cells(
                                String.valueOf(dataRate.number()),
                                SizeText.size(dataRate.payloadBytes()),
                                seconds(dataRate.frameSeconds()),
                                dataRate.overFrames() == 1 ? "1 frame" : dataRate.overFrames() + " frames",
                                seconds(dataRate.overSeconds()),
                                SizeText.grouped(dataRate.netBitsPerSecond()) + " bit/s",
                                DecibelText.need(dataRate.carrierNeedDb())))
                        .toList());
    }

    private Table needs() {
        List<Cell> heads = new ArrayList<>(cells("data rate"));
        card.dataRates()
                .get(0)
                .paths()
                .forEach(it -> heads.add(Cell.of(it.path().key())));
        return new Table(
                "SNR of the signal in 3 kHz at which 50 / 10 / 1 % of frames are lost, in dB",
                heads,
                card.dataRates().stream()
                        .map(dataRate -> {
                            List<Cell> row = new ArrayList<>(cells(String.valueOf(dataRate.number())));
                            dataRate.paths().forEach(path -> row.add(Cell.of(needs(path))));
                            return List.copyOf(row);
                        })
                        .toList());
    }

    private static String needs(ModeCard.OnPath path) {
        return decibels(path.halfLostDb()) + " / " + decibels(path.tenthLostDb()) + " / "
                + decibels(path.hundredthLostDb());
    }

    /** Draws for each data rate on the last path a strip over SNR: nothing, half, most, all of its frames get through. */
    private List<String> strips() {
        List<ModeCard.OnPath> paths = card.dataRates().stream()
                .map(dataRate -> dataRate.paths().get(dataRate.paths().size() - 1))
                .toList();
        int lowest = roundedDown(paths.stream()
                .mapToDouble(ModeCard.OnPath::halfLostDb)
                .filter(Double::isFinite)
                .min()
                .orElse(0));
        int highest = lowest + WIDTH - 12;
        List<String> lines = new ArrayList<>();
        lines.add("Frame loss on " + paths.get(0).path().key() + ":  . below 50 %  + below 10 %  # below 1 %");
        for (int i = 0; i < paths.size(); i++) {
            lines.add(String.format(Locale.ROOT, "  %5d  %s", i + 1, strip(paths.get(i), lowest, highest)));
        }
        StringBuilder scale = new StringBuilder("  data rate  ");
        for (int db = lowest; db <= highest - SCALE_STEP_DB; db += SCALE_STEP_DB) {
            scale.append(String.format(Locale.ROOT, "%-" + SCALE_STEP_DB + "s", "|" + db));
        }
        lines.add(scale.toString().stripTrailing() + " dB");
        return lines;
    }

    private static int roundedDown(double db) {
        return SCALE_STEP_DB * (int) Math.floor(db / SCALE_STEP_DB);
    }

    private static String strip(ModeCard.OnPath path, int lowest, int highest) {
        StringBuilder strip = new StringBuilder();
        for (int db = lowest; db < highest; db++) {
            strip.append(
                    db >= path.hundredthLostDb()
                            ? '#'
                            : db >= path.tenthLostDb() ? '+' : db >= path.halfLostDb() ? '.' : ' ');
        }
        return strip.toString().stripTrailing();
    }

    private Table undisturbed() {
        return new Table(
                "Undisturbed transfers, with all that belongs to them from pressing send",
                cells("file", "delivered", "hung up"),
                card.errorFree().stream()
                        .map(it -> cells(
                                SizeText.size(it.bytes()), clock(it.deliveredSeconds()), clock(it.closedSeconds())))
                        .toList());
    }

    private static String clock(double seconds) {
        return Double.isInfinite(seconds) ? "not in a day" : TimeText.length(seconds);
    }

    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.2f s", seconds);
    }

    private static String decibels(double db) {
        return Double.isInfinite(db) ? "never" : String.format(Locale.ROOT, "%.1f", db);
    }

    private static List<Cell> cells(String... texts) {
        return List.of(texts).stream().map(Cell::of).collect(Collectors.toUnmodifiableList());
    }
}
