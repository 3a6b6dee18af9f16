package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.trial.ModeCard;
import org.junit.jupiter.api.Test;

/** A card made up: what the sheet shows must be what stands on the card. */
final class ModeSheetTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private static ModeCard.OnPath path(FadingCondition path, double half, double tenth, double hundredth) {
        return new ModeCard.OnPath(
                path,
                half,
                tenth,
                hundredth,
                List.of(
                        new ModeCard.LossPoint(-5, 1),
                        new ModeCard.LossPoint(half, 0.5),
                        new ModeCard.LossPoint(20, 0)));
    }

    private static ModeCard card(double unnoticedErrors) {
        return card(unnoticedErrors, 0);
    }

    private static ModeCard card(double unnoticedErrors, double mistakenReplies) {
        FadingCondition[] paths = FadingCondition.values();
        return new ModeCard(
                FabricatedStudy.result().scenario().modes().get(0),
                0.045,
                0.25,
                0.5,
                mistakenReplies,
                List.of(
                        new ModeCard.DataRate(
                                1,
                                50,
                                1.25,
                                8,
                                9.5,
                                312,
                                6.5,
                                0,
                                List.of(path(paths[0], -3, 2, 4), path(paths[1], 3, 11, 21))),
                        new ModeCard.DataRate(
                                2,
                                100,
                                0.75,
                                1,
                                0.75,
                                1234,
                                NEVER,
                                unnoticedErrors,
                                List.of(path(paths[0], 7, 8, 9), path(paths[1], 14, 25, NEVER)))),
                List.of(new ModeCard.ErrorFree(1000, 31, 33), new ModeCard.ErrorFree(50_000, NEVER, NEVER)));
    }

    private static String text(ModeCard card) {
        return String.join("\n", new ModeSheet(card).lines());
    }

    @Test
    void everyDataRateHasItsNeedsOnEveryPath() {
        String text = text(card(0));
        List.of("-3.0 / 2.0 / 4.0", "3.0 / 11.0 / 21.0", "7.0 / 8.0 / 9.0", "14.0 / 25.0 / never")
                .forEach(it -> assertTrue(text.contains(it), it + " in\n" + text));
        assertTrue(text.contains("1 234 bit/s") || text.contains("1,234 bit/s"), text);
        assertTrue(text.contains("not in a day"), text);
    }

    /** From 0 dB on: nothing below 3 dB, then eight dB of each mark until 21 dB. */
    @Test
    void theStripFollowsTheNeedsOfTheLastPath() {
        String strip = text(card(0))
                .lines()
                .filter(it -> it.startsWith("      1  "))
                .findFirst()
                .orElseThrow();
        assertTrue(strip.startsWith("      1     ........++++++++++###"), strip);
    }

    @Test
    void errorsThatNobodyNoticesAreToldOnlyWhereThereAreAny() {
        assertTrue(!text(card(0)).contains("nobody notices"));
        assertTrue(text(card(0.0023)).contains("Data rate 2 delivers errors that nobody notices: 1 frame in 435 is"));
    }

    @Test
    void answersTakenForTheOtherWordAreToldOnlyWhereThereAreAny() {
        assertTrue(!text(card(0)).contains("taken for the other word"));
        String told = text(card(0, 0.0004)).replace('\n', ' ');
        assertTrue(told.contains("1 answer in 2,500 is taken for the other word."), told);
    }

    @Test
    void theLossesCanBeReadBack() throws IOException {
        StringWriter text = new StringWriter();
        new LossCsv(card(0)).writeTo(text);
        List<CSVRecord> rows = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text.toString()))
                .getRecords();
        assertEquals(2 * 2 * 3, rows.size(), "data rates x paths x points");
        assertEquals(
                List.of("-5", "3", "20"),
                rows.subList(3, 6).stream().map(it -> it.get("snr_db")).toList());
        assertEquals(
                List.of("1.00000", "0.50000", "0.00000"),
                rows.subList(3, 6).stream().map(it -> it.get("frame_loss")).toList());
        assertEquals("2", rows.get(11).get("data_rate"));
    }

    /** Shown down to the first loss of one in a thousand or less, which is drawn as just that. */
    @Test
    void aLineOfLossesEndsWhereHardlyAnyIsLeft() {
        List<ModeCard.LossPoint> curve = List.of(
                new ModeCard.LossPoint(-5, 1),
                new ModeCard.LossPoint(0, 0.5),
                new ModeCard.LossPoint(5, 0.0011),
                new ModeCard.LossPoint(6, 0.001),
                new ModeCard.LossPoint(7, 0));
        LossChart.Line line = LossChart.Line.of(
                new ModeCard.DataRate(
                        3,
                        50,
                        1,
                        1,
                        1,
                        100,
                        6,
                        0,
                        List.of(new ModeCard.OnPath(FadingCondition.FLAT, 0, 3, 4.5, curve))),
                0);
        assertEquals(List.of(-5.0, 0.0, 5.0, 6.0), line.snrDb());
        assertEquals(List.of(100.0, 50.0, 100 * 0.0011, 0.1), line.loss());
        assertEquals("Data rate 3 at 5.0 dB: 0.110 % lost", line.says().get(2));
        assertEquals(List.of(0.0, 3.0, 4.5), List.of(line.halfLostDb(), line.tenthLostDb(), line.hundredthLostDb()));
    }

    /** Ten times the loss is a third of the height of three decades. */
    @Test
    void lossesAreDrawnByDecadesAndLevelsTrueToScale() {
        LossChart.Line line = new LossChart.Line(
                List.of(0.0, 10.0, 40.0), List.of(100.0, 10.0, 0.1), List.of("a", "b", "c"), 5, 10, 20);
        List<MatchResult> dots = Pattern.compile("<circle class=\"point\" cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"")
                .matcher(new LossChart(0.1, List.of(line)).svg(520))
                .results()
                .toList();
        assertEquals(3, dots.size());
        double across = Double.parseDouble(dots.get(2).group(1))
                - Double.parseDouble(dots.get(0).group(1));
        double down = Double.parseDouble(dots.get(2).group(2))
                - Double.parseDouble(dots.get(0).group(2));
        assertTrue(across > 300, "it fills the picture");
        assertEquals(230, down, 0.2);
        assertEquals(
                across / 4,
                Double.parseDouble(dots.get(1).group(1))
                        - Double.parseDouble(dots.get(0).group(1)),
                0.2);
        assertEquals(
                down / 3,
                Double.parseDouble(dots.get(1).group(2))
                        - Double.parseDouble(dots.get(0).group(2)),
                0.2);
    }

    @Test
    void theSheetTellsHowLongAFrameAndAnOverLast() {
        String text = text(card(0)).replaceAll(" +", " ").replace("\n", " ");
        assertTrue(text.contains("1 50 bytes 1.25 s 8 frames 9.50 s 312 bit/s"), text);
        assertTrue(text.contains("2 100 bytes 0.75 s 1 frame 0.75 s"), text);
        assertTrue(text.contains("An acknowledgement lasts 0.25 s, a call 0.50 s; each turnaround takes 45 ms"), text);
    }

    @Test
    void thePageHasAPictureForEachPathAndTheSameNeeds() throws IOException {
        StringWriter page = new StringWriter();
        new ModeSheet(card(0)).page("1.2.3-test").writeTo(page);
        assertEquals(2, page.toString().split("class=\"picture\"", -1).length - 1);
        assertTrue(page.toString().contains("14.0 / 25.0 / never"));
        assertTrue(page.toString().contains(", 25.0 dB, data rate 1 first.\""), "what is heard of the picture");
        assertTrue(page.toString().contains("Data rate 2 at 14.0 dB: 50.0 % lost"));
    }
}
