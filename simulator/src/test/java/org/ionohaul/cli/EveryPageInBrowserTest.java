package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.ionohaul.livepage.DrivenChromium;
import org.ionohaul.report.BrowserPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

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
            "variance ratio", "a term of statistics",
            "\\bno\\. \\d+ */ *none", "a riddle",
            "\\b(\\d+:\\d\\d) (?:to|-) \\1\\b", "a range without a width",
            "\\b(\\d[\\d.]* k?B)(?: to | ?- ?)\\1(?![\\w.])", "a range without a width",
            "\\b(\\d+m\\d\\ds)(?: to |-)\\1\\b", "a range without a width");

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
                List.of("card", "learn", "net", "next", "place", "promise", "report", "runs", "sky", "story"),
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

    private interface Look {
        /** Returns what is wrong with a page; empty for nothing. */
        String faults(DrivenChromium.Tab tab) throws IOException;
    }

    /** Looks at every page at each width, and returns what is wrong. */
    private String everywhere(Look look) throws IOException, InterruptedException {
        Optional<DrivenChromium> found = DrivenChromium.start(Files.createTempDirectory(folder, "browser"));
        assumeTrue(found.isPresent(), "no Chromium on this machine: pages are not looked at in a browser");
        StringBuilder all = new StringBuilder();
        try (DrivenChromium browser = found.orElseThrow()) {
            DrivenChromium.Tab tab = browser.tab(WIDTHS.get(0), HEIGHT);
            for (Path page : every.pages()) {
                tab.open(page.toUri());
                for (int width : WIDTHS) {
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
        String line = text.replaceAll("\\n *", " ").replaceAll(" {2,}", " | ");
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
    void wordsThatPuzzleWouldBeNoticed() {
        for (String each : List.of(
                "95 of 100 evenings",
                "the fifth with the third lowest SNR",
                "(variance ratio 0.31)",
                "(0:00 to 0:00)",
                "from 2 kB - 2 kB",
                "4m20s-4m20s")) {
            assertFalse(refused("here", each).isEmpty(), each);
        }
        assertEquals("", refused("here", "4m20s-4m21s, 2 kB to 2.5 kB, 0:00 to 0:20"));
    }

    @Test
    void pagesAreSmall() throws IOException {
        for (Path page : every.pages()) {
            assertTrue(Files.readString(page, StandardCharsets.UTF_8).length() < 1_300_000, page::toString);
        }
    }
}
