package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.ionohaul.livepage.DrivenChromium;
import org.ionohaul.report.BrowserPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of page and all that is printed: who can use them, and in which words. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class EveryPageInBrowserTest {
    private static final List<Integer> WIDTHS = List.of(1280, 390);
    private static final int HEIGHT = 900;
    /** What of a page is no text. */
    private static final Pattern TAGS = Pattern.compile("<(script|style)\\b.*?</\\1>|<[^>]*>", Pattern.DOTALL);

    private static final int AROUND = 60;

    /** What nobody should have to read, and why. */
    private static final Map<String, String> REFUSED = Map.of(
            "\\bevenings?\\b(?! (?:net|watch|school))", "a study at noon has none",
            "fifth with|third lowest|second highest", "a riddle",
            "(?<!\\(|[\\w./-]|--(?:set|vary|daily) )(?:near|far|sky|transfer|modes)\\.(?!toml|csv|html|json)[a-z0-9-]+(?:\\.[a-z0-9-]+)*",
                    "a key, outside of brackets, stands for a thing",
            "variance ratio", "a term of statistics",
            "\\bno\\. \\d+ */ *none", "a riddle",
            "\\b(\\d+:\\d\\d) (?:to|-) \\1\\b", "a range without a width",
            "\\b(\\d[\\d.]* k?B)(?: to | ?- ?)\\1(?![\\w.])", "a range without a width",
            "(?<!min )(?<![\\d-])(\\d+ min(?: \\d+ s)?|\\d+ s) (?:to|-) \\1\\b(?! \\d)", "a range without a width",
            "\\b\\d+m\\d\\ds\\b", "a length of time written in a way of its own");

    /** A line that ends with a number, and one of prose below that begins with a unit. */
    private static final Pattern PARTED = Pattern.compile(
            "[a-z(].* [(+-]?[0-9][0-9.,-]*\\n *(?:%|min|ms|s|h|dB|dBm|Hz|kHz|bytes?|B|kB|bit/s|km)(?![A-Za-z0-9])[^\\n]{0,3}");

    private Path folder = Path.of("");
    private EveryPage every = new EveryPage(Map.of(), List.of());

    @BeforeAll
    void run(@TempDir Path shared) throws IOException {
        folder = shared;
        every = EveryPage.in(shared.resolve("results"));
    }

    @Test
    void everyKindOfPageIsThere() {
        assertEquals(
                List.of("card", "grid", "learn", "net", "next", "place", "promise", "report", "runs", "sky", "story"),
                every.pages().stream()
                        .map(it -> String.valueOf(it.getFileName()).replace(".html", ""))
                        .distinct()
                        .sorted()
                        .toList());
    }

    @Test
    void nobodyIsKeptOutInLightOrDarkOnADeskOrAPhone() throws IOException, InterruptedException {
        assertEquals("", everywhere(tab -> {
            StringBuilder told = new StringBuilder();
            for (boolean isDark : List.of(false, true)) {
                tab.dark(isDark);
                told.append(tab.eval(BrowserPage.barriers()));
            }
            return told.toString();
        }));
    }

    @Test
    void letteringIsNeitherCutOffNorMeetsOther() throws IOException, InterruptedException {
        assertEquals("", everywhere(tab -> tab.eval(BrowserPage.lettering())));
    }

    @Test
    void colourMeansTheModeOrTroubleInLightAndDark() throws IOException, InterruptedException {
        assertEquals("", everywhere(tab -> {
            StringBuilder told = new StringBuilder();
            for (boolean isDark : List.of(false, true)) {
                tab.dark(isDark);
                told.append(tab.eval(BrowserPage.colours()));
            }
            return told.toString();
        }));
    }

    /** Modes of a scenario are told in one order of colours, that of their names: in pictures, in grids, on every page. */
    @Test
    void aModeHasOneColourInEveryPicture() throws IOException, InterruptedException {
        Map<String, String> met = new TreeMap<>();
        assertEquals("", everywhere(List.of(WIDTHS.get(0)), tab -> {
            String scenario = tab.eval("location.pathname.replace(/.*results.([a-z-]*)-.*/, '$1')");
            StringBuilder told = new StringBuilder();
            // The contours of a promise are in the colour of the mode that their picture is about.
            tab.eval(BrowserPage.coloursOfModes())
                    .lines()
                    .filter(it -> !it.matches(".* of 10 trials.*"))
                    .forEach(it -> {
                        int end = it.lastIndexOf(' ');
                        String before =
                                met.merge(scenario + ": " + it.substring(0, end), it.substring(end), (a, b) -> a);
                        told.append(before.equals(it.substring(end)) ? "" : it + " but" + before + "; ");
                    });
            return told.toString();
        }));
        String text = met.toString();
        assertTrue(text.contains("river-watch: Brisk comb= 0, river-watch: Patient climber= 1,"), text);
        assertTrue(text.contains("river-watch: Slow whistle= 2, river-watch: Steady wagon= 3"), text);
    }

    /** Which mode, how surely, and the race: what a planner takes along. */
    @Test
    void aStudysAnswerGridAndRaceStandOnTheFirstOfTwoSheets() throws IOException, InterruptedException {
        assertEquals("", onPaper((tab, paper) -> {
            if (tab.eval("document.querySelector('#race .picture') !== null").equals("false")) {
                return "";
            }
            int end = Integer.parseInt(tab.eval(
                    "Math.ceil(document.querySelector('#race .picture').getBoundingClientRect().bottom + scrollY)"));
            int sheets = paper.sheets(tab);
            return end <= paper.highPixels() && sheets <= 2
                    ? ""
                    : "the race ends at " + end + " of " + paper.highPixels() + " px; " + sheets + " sheets";
        }));
    }

    @Test
    void everyPageIsPrintedOnFewSheets() throws IOException, InterruptedException {
        assertEquals("", onPaper((tab, paper) -> {
            int sheets = paper.sheets(tab);
            return sheets <= paper.mostSheets(tab) ? "" : sheets + " sheets";
        }));
    }

    /** What stays in one piece must have room on a sheet, or it is cut where one ends, or lies over what follows. */
    @Test
    void noPictureIsCutBySheets() throws IOException, InterruptedException {
        assertEquals(
                "",
                onPaper((tab, paper) -> tab.eval("[...document.querySelectorAll('figure, figcaption b, .grid')]"
                        + ".filter(it => it.getBoundingClientRect().height > " + paper.highPixels() + ")"
                        + ".map(it => it.tagName + ' ' + it.innerText.slice(0, 40)).join()")));
    }

    /** Paper, with the margins that the browser leaves. */
    private record Paper(String name, double wideInches, double highInches) {
        private static final double MARGIN_INCHES = 0.4;
        private static final int PIXELS_AN_INCH = 96;
        private static final List<Paper> BOTH = List.of(new Paper("A4", 8.27, 11.69), new Paper("Letter", 8.5, 11));

        int widePixels() {
            return (int) (PIXELS_AN_INCH * (wideInches - 2 * MARGIN_INCHES));
        }

        int highPixels() {
            return (int) (PIXELS_AN_INCH * (highInches - 2 * MARGIN_INCHES));
        }

        int sheets(DrivenChromium.Tab tab) {
            return tab.sheets(wideInches, highInches);
        }

        /** Six, but for the arrows of a session, which are as long as it lasts. */
        int mostSheets(DrivenChromium.Tab tab) {
            return tab.eval("document.querySelector('[id^=sequence]') !== null").equals("true") ? 16 : 6;
        }
    }

    private interface PaperLook {
        /** Returns what is wrong with a page on paper; empty for nothing. */
        String faults(DrivenChromium.Tab tab, Paper paper) throws IOException;
    }

    private String onPaper(PaperLook look) throws IOException, InterruptedException {
        StringBuilder all = new StringBuilder();
        for (Paper paper : Paper.BOTH) {
            all.append(everywhere(List.of(paper.widePixels()), tab -> {
                tab.paper(true);
                String told = look.faults(tab, paper);
                tab.paper(false);
                return told.isEmpty() ? "" : paper.name() + ": " + told;
            }));
        }
        return all.toString();
    }

    /** What a shape says when pointed at is told with the arrow keys, too: every shape's words, each within the window. */
    @Test
    void everyNumberIsReachedByKeys() throws IOException, InterruptedException {
        assertEquals("", everywhere(tab -> tab.eval(BrowserPage.untoldByKeys())));
    }

    /** As a person presses them. */
    @Test
    void theArrowKeysThemselvesStepThroughAPicture() throws IOException, InterruptedException {
        Path report = every.pages().stream()
                .filter(it -> it.endsWith("report.html"))
                .findFirst()
                .orElseThrow();
        Optional<DrivenChromium> found = DrivenChromium.start(Files.createTempDirectory(folder, "browser"));
        assumeTrue(found.isPresent(), "no Chromium on this machine: pages are not looked at in a browser");
        try (DrivenChromium browser = found.orElseThrow()) {
            DrivenChromium.Tab tab = browser.tab(WIDTHS.get(0), HEIGHT);
            tab.open(report.toUri());
            for (int i = 0;
                    i < 40
                            && !tab.eval("document.activeElement.matches('.picture')")
                                    .equals("true");
                    i++) {
                tab.press("Tab", 9);
            }
            String first = tab.eval("document.querySelector('.tip').textContent");
            tab.press("ArrowRight", 39);
            String second = tab.eval("document.querySelector('.tip').textContent");
            tab.press("ArrowLeft", 37);
            assertFalse(first.isBlank());
            assertFalse(first.equals(second), first);
            assertEquals(first, tab.eval("document.querySelector('.tip').textContent"));
            tab.press("Escape", 27);
            assertEquals("true", tab.eval("document.querySelector('.tip').hidden"));
        }
    }

    private interface Look {
        /** Returns what is wrong with a page; empty for nothing. */
        String faults(DrivenChromium.Tab tab) throws IOException;
    }

    /** Looks at every page at each width, and returns what is wrong. */
    private String everywhere(Look look) throws IOException, InterruptedException {
        return everywhere(WIDTHS, look);
    }

    private String everywhere(List<Integer> widths, Look look) throws IOException, InterruptedException {
        Optional<DrivenChromium> found = DrivenChromium.start(Files.createTempDirectory(folder, "browser"));
        assumeTrue(found.isPresent(), "no Chromium on this machine: pages are not looked at in a browser");
        StringBuilder all = new StringBuilder();
        try (DrivenChromium browser = found.orElseThrow()) {
            DrivenChromium.Tab tab = browser.tab(WIDTHS.get(0), HEIGHT);
            for (Path page : every.pages()) {
                tab.open(page.toUri());
                for (int width : widths) {
                    tab.size(width, HEIGHT);
                    String told = look.faults(tab);
                    all.append(told.isBlank() ? "" : folder.relativize(page) + " at " + width + ":\n" + told + "\n");
                }
            }
        }
        return all.toString();
    }

    /** Pictures and a page whose lettering can't be read. */
    @Test
    void letteringThatCannotBeReadWouldBeNoticed() throws IOException, InterruptedException {
        Path muddle = folder.resolve("muddle.html");
        Files.writeString(muddle, """
                <!DOCTYPE html><html lang="en"><head><style></style></head><body>
                <svg id="s" width="200" height="90" viewBox="0 0 200 90"><text x="10" y="30">one</text>
                <text x="15" y="32">two</text><text x="190" y="75">beyond</text><path d="M0 55L200 55" stroke="#000"/>
                <text x="10" y="60">struck</text><text x="90" y="60" style="paint-order: stroke">safe</text></svg>
                <p style="width:50px;overflow:hidden;white-space:nowrap">too long for its place</p>
                <p style="position:relative;left:1270px;white-space:nowrap">far out</p>
                <p>below</p><p style="margin-top:-2.2em">above</p></body></html>""");
        Optional<DrivenChromium> found = DrivenChromium.start(Files.createTempDirectory(folder, "browser"));
        assumeTrue(found.isPresent(), "no Chromium on this machine: pages are not looked at in a browser");
        try (DrivenChromium browser = found.orElseThrow()) {
            DrivenChromium.Tab tab = browser.tab(WIDTHS.get(0), HEIGHT);
            tab.open(muddle.toUri());
            assertEquals(
                    List.of(
                            "crossed by null in s: struck",
                            "cut off in : too long for its place",
                            "juts out of s: beyond",
                            "juts out of the page : far out",
                            "overlap in : above and below",
                            "overlap in s: one and two"),
                    tab.eval(BrowserPage.lettering())
                            .lines()
                            .distinct()
                            .sorted()
                            .toList());
        }
    }

    /** A page that shuts people out in every way that is looked for. */
    @Test
    void whatKeepsPeopleOutWouldBeNoticed() throws IOException, InterruptedException {
        Path shut = folder.resolve("shut.html");
        Files.writeString(shut, """
                <!DOCTYPE html><html><head><style>:focus { outline: none !important; }</style></head><body>
                <p id="a">outside</p><main><h1>One</h1><h3 id="a">Three</h3><p style="color:#bbb">faint</p>
                <input><a href="#none">to nothing</a><svg></svg><table><tr><td>1</td></tr></table>
                <div role="img"></div><button aria-describedby="none">b</button>
                <div style="overflow-x:auto;width:50px"><p style="width:500px">wide</p></div></main></body></html>""");
        Optional<DrivenChromium> found = DrivenChromium.start(Files.createTempDirectory(folder, "browser"));
        assumeTrue(found.isPresent(), "no Chromium on this machine: pages are not looked at in a browser");
        try (DrivenChromium browser = found.orElseThrow()) {
            DrivenChromium.Tab tab = browser.tab(WIDTHS.get(0), HEIGHT);
            tab.open(shut.toUri());
            String told = tab.eval(BrowserPage.barriers());
            for (String each : List.of(
                    "no language",
                    "no title",
                    "no zoom",
                    "outside of landmarks",
                    "a level of headings is left out",
                    "an id twice",
                    "no name: <input",
                    "no name: <table",
                    "a picture without a role",
                    "leads nowhere",
                    "no column heads",
                    "no row head",
                    "refers to nothing",
                    "scrolls, but not by keys",
                    "focus is not seen",
                    "faint")) {
                assertTrue(told.contains(each), () -> each + " in\n" + told);
            }
        }
    }

    @Test
    void nothingIsSaidInWordsThatMisleadOrPuzzle() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Map.Entry<String, String> each : every.printed().entrySet()) {
            all.append(refused(each.getKey(), each.getValue()));
        }
        for (Path page : every.pages()) {
            String text = TAGS.matcher(withoutInputs(Files.readString(page))).replaceAll(" | ");
            all.append(refused(folder.relativize(page).toString(), text));
        }
        assertEquals("", all.toString());
    }

    /** A scenario's own text may say what it likes. */
    private static String withoutInputs(String page) {
        int inputs = page.indexOf("<section id=\"inputs\">");
        return inputs < 0 ? page : page.substring(0, inputs);
    }

    private static String refused(String place, String text) {
        // Prose goes on in the next line; far to the right there is a column of a table.
        String line =
                text.replaceAll("\\n {9,}", " | ").replaceAll("\\n *", " ").replaceAll(" {2,}", " | ");
        StringBuilder told = new StringBuilder();
        REFUSED.forEach((pattern, why) -> {
            for (MatchResult found :
                    Pattern.compile(pattern).matcher(line).results().toList()) {
                told.append(place)
                        .append(", ")
                        .append(why)
                        .append(": ")
                        .append(
                                line,
                                Math.max(0, found.start() - AROUND),
                                Math.min(line.length(), found.end() + AROUND))
                        .append('\n');
            }
        });
        return told.toString();
    }

    @Test
    void noNumberStandsAtTheEndOfALineWithItsUnitOnTheNext() {
        StringBuilder all = new StringBuilder();
        every.printed().forEach((command, text) -> all.append(parted(command, text)));
        assertEquals("", all.toString());
    }

    /** The demo's longest sentences at every width that a terminal may have. */
    @ParameterizedTest
    @ValueSource(ints = {60, 80, 120})
    void norAtAnyWidth(int width) throws IOException {
        String text = EveryPage.printed(
                List.of(
                        "study",
                        "../scenarios/river-watch.toml",
                        "--trials",
                        "4",
                        "--size-trials",
                        "2",
                        "--full",
                        "--width",
                        Integer.toString(width)),
                folder.resolve("at-" + width));
        assertEquals("", parted("at " + width, text));
        text.lines()
                .filter(it -> it.length() > width && !it.contains("Written to"))
                .findFirst()
                .ifPresent(it -> fail("wider than " + width + ": " + it));
    }

    private static String parted(String place, String text) {
        StringBuilder told = new StringBuilder();
        for (MatchResult found : PARTED.matcher(text).results().toList()) {
            told.append(place).append(": ").append(found.group()).append('\n');
        }
        return told.toString();
    }

    @Test
    void aUnitOnItsOwnLineWouldBeNoticed() {
        assertEquals("here: through 11\n  min 20\n", parted("here", "through 11\n  min 20 s\n9 of\n  10 trials"));
    }

    @Test
    void wordsThatPuzzleWouldBeNoticed() {
        for (String each : List.of(
                "95 of 100 evenings",
                "far.snr: 12.0 dB before",
                "With sky.path.1.doppler-spread = 2 Hz",
                "Varied: modes.brisk-comb.arq.window.",
                "the fifth with the third lowest SNR",
                "(variance ratio 0.31)",
                "(0:00 to 0:00)",
                "from 2 kB - 2 kB",
                "4 min 20 s to 4 min 20 s",
                "(4 min to 4 min)",
                "2m07s")) {
            assertFalse(refused("here", each).isEmpty(), each);
        }
        assertEquals(
                "",
                refused(
                        "here",
                        "4 min 20 s to 4 min 21 s, 4 min to 4 min 20 s, -12 s to 12 s, 2 kB to 2.5 kB, 0:00 to 0:20, SNR at Flood desk (far.snr), modes/a.toml, --set far.snr=1"));
    }

    /** The demo's report is the largest; a grid of a year by the hour is looked at in {@code GridPageTest}. */
    @Test
    void pagesAreSmall() throws IOException {
        for (Path page : every.pages()) {
            assertTrue(Files.readString(page, StandardCharsets.UTF_8).length() < 900_000, page::toString);
        }
    }
}
