package org.ionohaul.livepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.livepage.DrivenChromium.Tab;
import org.ionohaul.report.BrowserPage;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page under a user's hands: clicked, typed into and read, on a desk and on a phone; skipped without a browser. */
final class LivePageInBrowserTest {
    private static final int TRIALS = 24;
    private static final int UP = 38;
    private static final int RIGHT = 39;

    private static final String ALL_IN = "document.querySelectorAll('.sides > section').length === %d"
            + " && document.getElementById('answers').dataset.over === 'true' && !document.querySelector('.stale')";

    @TempDir
    private Path folder = Path.of("");

    private Optional<DrivenChromium> found = Optional.empty();
    private final List<LivePage> pages = new ArrayList<>();

    @BeforeEach
    void serve() throws IOException, InterruptedException, ScenarioProblems {
        found = DrivenChromium.start(folder);
        assumeTrue(found.isPresent(), "no Chromium on this machine: the page is not looked at in a browser");
        pages.add(LivePage.serve(PageFixture.write(folder.resolve("scenarios"), TRIALS), 0, 2));
    }

    @AfterEach
    void close() {
        found.ifPresent(DrivenChromium::close);
        pages.forEach(LivePage::close);
    }

    private URI address(String query) {
        return pages.get(0).address().resolve("/" + query);
    }

    private Tab opened(String query) throws IOException, InterruptedException {
        Tab tab = found.orElseThrow().tab(1280, 900);
        tab.open(address(query));
        tab.await(ALL_IN.formatted(query.contains("compare") ? 2 : 1));
        return tab;
    }

    private static String grid(Tab tab) {
        return tab.eval("document.querySelector('.sides .grid').innerText");
    }

    @Test
    void nobodyIsKeptOutInLightOrDarkOnADeskOrAPhone() throws IOException, InterruptedException {
        Tab tab = opened("?compare=yes");
        for (boolean isDark : List.of(false, true)) {
            tab.dark(isDark);
            for (int width : List.of(1280, 390)) {
                tab.size(width, 900);
                assertEquals("", tab.eval(BrowserPage.barriers()), "at " + width);
                assertEquals("", tab.eval(BrowserPage.colours()), "at " + width);
                assertEquals("", tab.eval(BrowserPage.lettering()), "at " + width);
            }
        }
    }

    @Test
    void aTypedValueIsAnsweredAndStandsInTheAddress() throws IOException, InterruptedException {
        Tab tab = opened("");
        String before = grid(tab);
        assertTrue(tab.eval("document.querySelector('.progress').innerText")
                .startsWith("24 of 24 trials, each mode under the same sky, seed 41."));
        assertTrue(before.contains("at least"), "the safe end stands in the grid: " + before);
        tab.type("[name='far.snr']", "-6 dB");
        tab.await("document.querySelector('.changes')?.innerText.includes('SNR at Flood desk = -6 dB')");
        tab.await(ALL_IN.formatted(1));
        String after = grid(tab);
        assertNotEquals(before, after);
        assertEquals(address("?far.snr=-6+dB").toString(), tab.eval("location.href"));
        tab.reload();
        tab.await(ALL_IN.formatted(1));
        assertEquals("-6 dB", tab.eval("document.querySelector(\"[name='far.snr']\").value"));
        assertEquals(after, grid(tab));
        tab.click("#reset");
        tab.await("location.search === '' && document.readyState === 'complete'");
        tab.await(ALL_IN.formatted(1));
        assertEquals(before, grid(tab));
    }

    @Test
    void theFirstPictureComesBeforeAllTrialsAreInAndTheNumberRises() throws Exception {
        pages.add(LivePage.serve(PageFixture.write(folder.resolve("many"), 5000), 0, 2));
        Tab tab = found.orElseThrow().tab(1280, 900);
        tab.open(pages.get(1).address());
        tab.await("document.querySelectorAll('.sides .grid, .sides figure').length === 2");
        String count = "Number(document.querySelector('.progress progress').value)";
        double first = Double.parseDouble(tab.eval(count));
        assertTrue(first > 0 && first < 5000, "trials " + first);
        assertTrue(tab.eval("document.querySelector('.progress').innerText").endsWith("more are coming in."));
        tab.await(count + " > " + first);
        tab.type("[name='far.snr']", "12 dB");
        tab.await("document.querySelector('.changes') !== null");
        tab.await(count + " > 0");
    }

    @Test
    void aBadValueIsToldBesideItsControlAndTheLastAnswersStayGrey() throws IOException, InterruptedException {
        Tab tab = opened("");
        String before = grid(tab);
        tab.type("[name='far.snr']", "17");
        String remark = "document.getElementById('remark-far.snr').innerText";
        tab.await(remark + " !== ''");
        assertEquals("17 has no unit; write it in quotation marks with its unit, such as \"14 dB\"", tab.eval(remark));
        assertEquals("true", tab.eval("document.querySelector(\"[name='far.snr']\").getAttribute('aria-invalid')"));
        assertEquals(
                "remark-far.snr",
                tab.eval("document.querySelector(\"[name='far.snr']\").getAttribute('aria-describedby')"));
        assertEquals(
                "true",
                tab.eval("(a => { const b = a.getBoundingClientRect(), c = document.querySelector(\"[name='far.snr']\")"
                        + ".getBoundingClientRect(); return b.top >= c.bottom - 1 && b.top < c.bottom + 20; })"
                        + "(document.getElementById('remark-far.snr'))"),
                "right below it");
        assertEquals(before, grid(tab));
        assertEquals("1", tab.eval("document.querySelectorAll('.stale').length"));
        tab.type("[name='far.snr']", "10 dB");
        tab.await(remark + " === ''");
        tab.await(ALL_IN.formatted(1));
        assertEquals("null", tab.eval("document.querySelector(\"[name='far.snr']\").getAttribute('aria-invalid')"));
    }

    @Test
    void whatIsOddIsToldAndAnswered() throws IOException, InterruptedException {
        Tab tab = opened("?far.snr=70+dB");
        assertTrue(
                tab.eval("document.getElementById('remark-far.snr').innerText").contains("unusual"),
                () -> tab.eval("document.getElementById('remark-far.snr').innerText"));
    }

    @Test
    void twoSettingsStandSideBySideUnderTheSameSkies() throws IOException, InterruptedException {
        Tab tab = opened("");
        tab.click("[name='compare']");
        tab.await(ALL_IN.formatted(2));
        String grids = "Array.from(document.querySelectorAll('.sides .grid'), it => it.innerText)";
        assertEquals("true", tab.eval("(it => it[0] === it[1])(" + grids + ")"), "the same setting, the same skies");
        assertTrue(
                tab.eval("document.querySelector('.differences').innerText").contains("not one trial differs"),
                tab.eval("document.querySelector('.differences').innerText"));
        tab.type("[name='second.far.snr']", "0 dB");
        tab.await("document.querySelector('.changes')?.innerText.includes('SNR at Flood desk = 0 dB')");
        tab.await(ALL_IN.formatted(2));
        assertEquals("false", tab.eval("(it => it[0] === it[1])(" + grids + ")"));
        String told = tab.eval("document.querySelector('.differences').innerText");
        assertTrue(told.contains("with the second setting,") && told.contains("later on the median trial"), told);
        assertEquals(address("?compare=yes&second.far.snr=0+dB").toString(), tab.eval("location.href"));
        assertEquals(
                "true",
                tab.eval("(it => it[0].top === it[1].top && it[1].left >= it[0].right)(Array.from("
                        + "document.querySelectorAll('.sides > section'), it => it.getBoundingClientRect()))"),
                "side by side on a desk");
    }

    @Test
    void tabsAreOfOneAnother() throws IOException, InterruptedException {
        Tab one = opened("?far.snr=-6+dB");
        Tab other = opened("?far.snr=20+dB");
        assertNotEquals(grid(one), grid(other));
        String kept = grid(other);
        one.type("[name='far.snr']", "20 dB");
        one.await("document.querySelector('.changes')?.innerText.includes('20 dB')");
        one.await(ALL_IN.formatted(1));
        assertEquals(kept, grid(one));
    }

    @Test
    void aValueGoesUpAndDownByButtonAndByKey() throws IOException, InterruptedException {
        Tab tab = opened("");
        String value = "document.querySelector(\"[name='far.snr']\").value";
        tab.click("[name='far.snr'] + .step");
        tab.await(value + " === '11 dB'");
        tab.click("[name='far.snr']");
        tab.press("ArrowUp", UP);
        tab.await(value + " === '12 dB'");
        tab.await("document.querySelector('.changes')?.innerText.includes('SNR at Flood desk = 12 dB')");
    }

    @Test
    void modesAreChosenAndTheRaceIsThatOfTheRowClicked() throws IOException, InterruptedException {
        Tab tab = opened("");
        assertTrue(grid(tab).contains("Steady wagon") || grid(tab).contains("Patient climber"), grid(tab));
        tab.click("[value='steady-wagon']");
        tab.await("document.querySelector('.changes')?.innerText.includes('modes = [\"patient-climber\"]')");
        tab.await(ALL_IN.formatted(1));
        assertFalse(grid(tab).contains("Steady wagon"), grid(tab));
        tab.click("a[href='#case-2']");
        tab.await("document.querySelector('.sides figcaption')?.innerText.includes('photo to Osier Weir')");
        assertEquals("?modes=%5B%22patient-climber%22%5D&case=2", tab.eval("location.search"));
    }

    /** In the alphabet, what is unticked comes before what stays; what is ticked then lies in the folder alone. */
    @Test
    void aModeKeepsItsColourWhicheverOthersAreTicked() throws IOException, InterruptedException, ScenarioProblems {
        Files.copy(
                Path.of("../scenarios/modes/brisk-comb.toml"),
                folder.resolve("scenarios").resolve("modes").resolve("brisk-comb.toml"));
        pages.add(LivePage.serve(folder.resolve("scenarios").resolve("small-watch.toml"), 0, 2));
        Tab tab = found.orElseThrow().tab(1280, 900);
        tab.open(pages.get(1).address());
        tab.await(ALL_IN.formatted(1));
        assertEquals(List.of("Patient climber m0 d0", "Steady wagon m1 d1"), colours(tab));
        tab.click("[value='patient-climber']");
        tab.await("document.querySelector('.changes')?.innerText.includes('modes = [\"steady-wagon\"]')");
        tab.await(ALL_IN.formatted(1));
        assertEquals(List.of("Steady wagon m1 d1"), colours(tab));
        String named = "Array.from(document.querySelectorAll('.sides .grid .mode-name'), it => it.className)";
        assertEquals("mode-name m1 d1", tab.eval("[...new Set(" + named + ")].join(';')"));
        tab.click("[value='brisk-comb']");
        tab.await("document.querySelector('.changes')?.innerText.includes('brisk-comb')");
        tab.await(ALL_IN.formatted(1));
        assertEquals(List.of("Brisk comb m2 d2", "Steady wagon m1 d1"), colours(tab));
    }

    /** Returns the modes of the race's legend, each with its colour and its pattern. */
    private static List<String> colours(Tab tab) {
        String keys = "document.querySelector('.sides .picture svg').querySelectorAll('.key.line')";
        return List.of(tab.eval("Array.from(" + keys + ", it => it.nextElementSibling.textContent"
                        + " + it.getAttribute('class').replace('key line', '')).join(';')")
                .split(";"));
    }

    @Test
    void whatIsSavedIsAScenarioFile() throws IOException, InterruptedException, ScenarioProblems {
        Tab tab = opened("?far.snr=12+dB");
        Path downloads = Files.createDirectories(folder.resolve("downloads"));
        tab.command("Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", downloads.toString()));
        tab.click("#save");
        for (int i = 0; i < 600 && !PageFixture.names(downloads).toString().contains(".toml]"); i++) {
            Thread.sleep(100);
        }
        Path saved = Path.of(PageFixture.names(downloads).get(0));
        assertTrue(String.valueOf(saved.getFileName()).startsWith("small-watch-far.snr-12_dB"), saved::toString);
        Path copy = folder.resolve("scenarios").resolve("copy.toml");
        Files.copy(saved, copy);
        ScenarioReader.read(copy);
        assertTrue(Files.readString(copy).contains("snr = \"12 dB\""));
    }

    @Test
    void nothingJutsOutOnDeskOrPhone() throws IOException, InterruptedException {
        for (String query : List.of("", "?compare=yes&second.far.snr=0+dB")) {
            Tab tab = opened(query);
            for (int width : List.of(1280, 768, 390, 360)) {
                tab.size(width, 844);
                assertEquals(
                        "0",
                        tab.eval("document.documentElement.scrollWidth - document.documentElement.clientWidth"),
                        width + query);
                assertEquals(
                        "",
                        tab.eval(
                                "Array.from(document.querySelectorAll('#controls input, #controls select, #controls button'))"
                                        + ".filter(it => it.offsetParent && it.getBoundingClientRect().right > innerWidth + 1)"
                                        + ".map(it => it.name).join()"),
                        width + query);
            }
        }
    }

    @Test
    void onAPhoneTheAnswerIsOneScreenAway() throws IOException, InterruptedException {
        Tab tab = found.orElseThrow().tab(390, 844);
        tab.open(address(""));
        tab.await(ALL_IN.formatted(1));
        double top = Double.parseDouble(
                tab.eval("document.querySelector('.sides .grid').getBoundingClientRect().top + scrollY"));
        assertTrue(top < 2 * 844, "the grid begins " + top + " pixels down");
    }

    @Test
    void itComplainsOfNothingAndAsksNobodyElse() throws IOException, InterruptedException {
        Tab tab = opened("?compare=yes");
        tab.type("[name='far.snr']", "12 dB");
        tab.await(ALL_IN.formatted(2));
        String own = "asks " + pages.get(0).address();
        assertEquals(
                List.of(),
                tab.noticed().stream()
                        .filter(it -> !it.startsWith(own) && !it.equals("asks data:,"))
                        .toList());
        assertTrue(tab.noticed().stream().anyMatch(it -> it.startsWith(own + "answer")));
    }

    @Test
    void whenTheProgramEndsThePageSaysSo() throws IOException, InterruptedException {
        Tab tab = opened("");
        pages.get(0).close();
        tab.type("[name='far.snr']", "12 dB");
        tab.await(
                "document.getElementById('state').innerText.startsWith('The program that serves this page does not answer')");
        assertEquals("?far.snr=12+dB", tab.eval("location.search"), "what was asked is kept");
    }

    @Test
    void everyNumberIsReachedByKeys() throws IOException, InterruptedException {
        Tab tab = opened("?compare=yes");
        for (int width : List.of(1280, 390)) {
            tab.size(width, 900);
            assertEquals("", tab.eval(BrowserPage.untoldByKeys()), "at " + width);
        }
        assertTrue(Integer.parseInt(tab.eval("document.querySelectorAll('.picture [data-says]').length")) > 20);
    }

    /** While trials come in the picture is drawn anew; whoever steps through it stays where they are. */
    @Test
    void keysGoOnWhileTrialsComeIn() throws Exception {
        pages.add(LivePage.serve(PageFixture.write(folder.resolve("many"), 5000), 0, 2));
        Tab tab = found.orElseThrow().tab(1280, 900);
        tab.open(pages.get(1).address());
        tab.await("document.querySelector('.picture') !== null");
        tab.eval("document.querySelector('.picture').focus({ focusVisible: true })");
        for (int i = 0; i < 5; i++) {
            tab.press("ArrowRight", RIGHT);
        }
        String place =
                "(() => { const svg = [...document.querySelectorAll('.picture svg')].find(it => it.getBoundingClientRect().width);"
                        + " return [...svg.querySelectorAll('[data-says], :has(> title)')].findIndex(it => it.matches('.reached')); })()";
        tab.await(place + " === 5");
        tab.eval("document.querySelector('.picture').classList.add('old')");
        tab.await("document.querySelector('.picture.old') === null");
        tab.await(place + " === 5");
        assertEquals("false", tab.eval("document.querySelector('.tip').hidden"));
    }

    /** Everything that is done by hand has a name for those who hear the page, and can be reached by key. */
    @Test
    void everyControlHasANameAndIsReachedByKey() throws IOException, InterruptedException {
        Tab tab = opened("?compare=yes");
        assertEquals(
                "",
                tab.eval(
                        "Array.from(document.querySelectorAll('input, select, button, progress'))"
                                + ".filter(it => !it.ariaLabel && !it.labels?.length && !it.innerText).map(it => it.outerHTML).join()"));
        assertEquals(
                "",
                tab.eval(
                        "Array.from(document.querySelectorAll('#controls input, #controls select, #controls button, a'))"
                                + ".filter(it => it.tabIndex < 0).map(it => it.outerHTML).join()"));
        assertEquals(
                "true",
                tab.eval(
                        "(it => new Set(it).size === it.length)(Array.from(document.querySelectorAll('[id]'), it => it.id))"));
    }
}
