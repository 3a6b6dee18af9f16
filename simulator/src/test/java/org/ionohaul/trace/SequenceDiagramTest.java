package org.ionohaul.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Picture;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.trace.TraceStep.Kind;
import org.junit.jupiter.api.Test;

/** Sessions of the demo as pictures: nothing is left out, nothing is cut off, slopes are real time. */
final class SequenceDiagramTest {
    private static final Pattern LETTERING = Pattern.compile(
            "<text(?: class=\"[a-z]+\")? x=\"([-\\d.]+)\" y=\"([-\\d.]+)\"(?: font-size=\"([\\d.]+)\")?(?: text-anchor=\"(\\w+)\")?>([^<]*)<");

    private final List<TraceStory> stories;

    SequenceDiagramTest() throws ScenarioProblems {
        Scenario demo = ScenarioReader.read(Path.of("../scenarios/river-watch.toml"));
        stories = List.of(
                TraceStoryTest.story(demo, demo.transfers().get(0), demo.modes().get(0), Direction.UPLOAD, 0),
                TraceStoryTest.story(demo, demo.transfers().get(1), demo.modes().get(1), Direction.UPLOAD, 3),
                TraceStoryTest.story(demo, demo.transfers().get(1), demo.modes().get(3), Direction.DOWNLOAD, 1));
    }

    private static long bursts(TraceStory story) {
        return story.steps().stream().filter(it -> it.kind() == Kind.BURST).count();
    }

    private static long count(String svg, String sign) {
        return svg.split(Pattern.quote(sign), -1).length - 1L;
    }

    @Test
    void everyBurstIsAnArrowOrInAFoldAndOnlyRowsAtOneDataRateAreFolded() {
        int foldedOvers = 0;
        for (TraceStory story : stories) {
            List<Fold> folds = Fold.of(story.steps());
            long folded = 0;
            for (Fold fold : folds) {
                List<TraceStep> held =
                        story.steps().stream().filter(fold::holds).toList();
                List<TraceStep> overs = held.stream()
                        .filter(it -> it.dataRate() > 0 && it.kind() == Kind.BURST)
                        .toList();
                assertEquals(fold.overs(), overs.size());
                assertTrue(held.stream().noneMatch(it -> it.kind() == Kind.STAGE));
                assertTrue(held.stream().filter(it -> it.kind() == Kind.BURST).allMatch(TraceStep::isHeard));
                assertTrue(overs.stream().allMatch(it -> it.dataRate() == fold.dataRate()));
                assertEquals(
                        fold.framesDecoded(),
                        overs.stream().mapToInt(TraceStep::framesDecoded).sum());
                folded += held.stream().filter(it -> it.kind() == Kind.BURST).count();
                foldedOvers += fold.overs();
            }
            for (int width : new int[] {Picture.NARROW, 1040}) {
                String svg = SequenceDiagram.partsOf(story).stream()
                        .map(it -> it.svg(width))
                        .collect(Collectors.joining());
                assertEquals(bursts(story) - folded, count(svg, "<title>"), "arrows say what they are");
                assertEquals(
                        story.steps().stream()
                                .filter(it -> it.kind() == Kind.BURST && !it.isHeard())
                                .count(),
                        count(svg, "class=\"lost\""));
                long bars = Pattern.compile("<title>(?![^<]* % of )")
                        .matcher(new SessionOverview(story).svg(width))
                        .results()
                        .count();
                assertEquals(bursts(story), bars, "but for the shares of time");
            }
        }
        assertTrue(foldedOvers > 10, "the demo folds: " + foldedOvers);
    }

    @Test
    void lettersBeginAndEndWithinThePicture() {
        for (TraceStory story : stories) {
            for (int width : new int[] {Picture.NARROW, 1040}) {
                for (Picture picture : pictures(story)) {
                    String svg = picture.svg(width);
                    Matcher box = Pattern.compile("viewBox=\"0 0 \\d+ (\\d+)\" font-size=\"([\\d.]+)\"")
                            .matcher(svg);
                    assertTrue(box.find());
                    Matcher letters = LETTERING.matcher(svg);
                    int found = 0;
                    while (letters.find()) {
                        double size = Double.parseDouble(letters.group(3) == null ? box.group(2) : letters.group(3));
                        double wide = Lettering.width(letters.group(5).replace("&gt;", ">"), size);
                        String anchor = letters.group(4) == null ? "start" : letters.group(4);
                        double left = Double.parseDouble(letters.group(1))
                                - (anchor.equals("middle") ? wide / 2 : anchor.equals("end") ? wide : 0);
                        assertTrue(left > -1 && left + wide < width + 1, letters.group());
                        double y = Double.parseDouble(letters.group(2));
                        assertTrue(y > 0 && y < Double.parseDouble(box.group(1)), letters.group());
                        found++;
                    }
                    assertEquals(count(svg, "<text"), found);
                }
            }
        }
    }

    private static List<Picture> pictures(TraceStory story) {
        return Stream.<Picture>concat(SequenceDiagram.partsOf(story).stream(), Stream.of(new SessionOverview(story)))
                .toList();
    }

    /** Parts follow one another, begin and end when nobody sends, and go on a sheet; no arrow leaves its part. */
    @Test
    void aLongSessionComesInPartsThatAreWhole() {
        int most = 0;
        for (TraceStory story : stories) {
            List<SequenceDiagram> parts = SequenceDiagram.partsOf(story);
            most = Math.max(most, parts.size());
            long reached = 0;
            for (SequenceDiagram part : parts) {
                assertEquals(reached, part.fromNanos());
                reached = part.untilNanos();
                long end = reached;
                assertTrue(
                        story.steps().stream()
                                .noneMatch(
                                        it -> it.kind() == Kind.BURST && it.atNanos() < end && it.untilNanos() > end),
                        "somebody sends at " + end);
                Matcher box = Pattern.compile("viewBox=\"0 0 1040 (\\d+)\"").matcher(part.svg(1040));
                assertTrue(box.find() && Integer.parseInt(box.group(1)) < 1350, box::group);
            }
            assertEquals(story.result().endedNanos(), reached);
        }
        assertTrue(most > 3, "the demo's longest has parts: " + most);
    }

    /** By hand: 10 px a second; a fold of 40 px from 20 to 50 s. */
    @Test
    void secondsAreEquallyLongButForFolds() {
        FoldedClock clock = new FoldedClock(List.of(new Fold(20_000_000_000L, 50_000_000_000L, 3, 1, 9, 9)), 100, 10);
        assertEquals(100, clock.at(0), 1e-9);
        assertEquals(250, clock.at(15_000_000_000L), 1e-9);
        assertEquals(300, clock.at(20_000_000_000L), 1e-9);
        assertEquals(320, clock.at(35_000_000_000L), 1e-9);
        assertEquals(340, clock.at(50_000_000_000L), 1e-9);
        assertEquals(440, clock.at(60_000_000_000L), 1e-9);
        assertTrue(clock.isFolded(30_000_000_000L) && !clock.isFolded(50_000_000_000L));
    }
}
