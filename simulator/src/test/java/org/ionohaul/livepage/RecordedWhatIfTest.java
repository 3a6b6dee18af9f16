package org.ionohaul.livepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.ionohaul.livepage.DrivenChromium.Tab;
import org.ionohaul.scenario.ScenarioProblems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A what-if on the demo's page as a person does it, read at each step: the desk's signal gets better, trials come in, and the
 * setting is compared with the file's own. {@code -Dwhat-if.record=true} writes it down as README's moving picture.
 */
final class RecordedWhatIfTest {
    private static final Path RECORDING = Path.of("../results/reference/what-if.webp");
    private static final boolean IS_RECORDED = Boolean.getBoolean("what-if.record");
    /** Of the demo; a slow browser may see none before all are in. */
    private static final int TRIALS = 1000;

    private static final int WIDE = 1280;
    private static final int HIGH = 860;
    private static final int QUALITY = 29;
    private static final int SHOWN_MILLIS = 3000;

    private static final String COUNT = "Number(document.querySelector('.progress progress').value)";
    private static final String FIELD = "[name='far.snr']";
    /** The cell of the first file and deadline of each setting. */
    private static final String FIRST_CELLS =
            "Array.from(document.querySelectorAll('.sides:not(.stale) > section'), it => it.querySelector('.grid tr:not(.heads) td:nth-of-type(2)')?.innerText)";

    @TempDir
    private Path folder = Path.of("");

    private final List<byte[]> frames = new ArrayList<>();

    @Test
    @Timeout(value = 10, unit = TimeUnit.MINUTES)
    void aBetterSignalAtTheDeskIsTriedAndLaidBesideTheFile()
            throws IOException, InterruptedException, ScenarioProblems {
        Optional<DrivenChromium> found = DrivenChromium.start(folder);
        assumeTrue(found.isPresent(), "no Chromium on this machine: the page is not looked at in a browser");
        try (DrivenChromium browser = found.orElseThrow();
                LivePage page = LivePage.serve(Path.of("../scenarios/river-watch.toml"), 0, 2)) {
            Tab tab = browser.tab(WIDE, HIGH);
            tab.open(page.address());

            tab.await("document.querySelector('.sides .grid') !== null");
            assertTrue(told(tab, ".progress").endsWith("more are coming in."), () -> told(tab, ".progress"));
            top(tab);
            awaitTrials(tab, 100);
            String asInTheFile = firstCell(tab, 0);
            assertTrue(asInTheFile.contains("Patient climber") && chance(asInTheFile) < 75, asInTheFile);
            keep(tab);

            tab.type(FIELD, "16 dB");
            tab.await("document.querySelector('.changes')?.innerText.includes('SNR at Flood desk = 16 dB')");
            tab.await("document.querySelector('.sides:not(.stale) .grid') !== null");
            double early = Double.parseDouble(tab.eval(COUNT));
            awaitTrials(tab, Math.min(TRIALS, Math.max(100, early + 1)));
            String better = firstCell(tab, 0);
            assertTrue(better.contains("Patient climber") && chance(better) > 85, better);
            assertNotEquals(asInTheFile, better);
            top(tab);

            tab.click("[name='compare']");
            tab.await("document.querySelector(\"[name='second.far.snr']\").offsetParent !== null");
            tab.type("[name='second.far.snr']", "10 dB");
            tab.await("document.querySelectorAll('.sides:not(.stale) > section .grid').length === 2"
                    + " && document.querySelectorAll('.changes').length === 1");
            tab.await("Array.from(document.querySelectorAll('.sides progress')).every(it => it.value >= 100)");
            assertTrue(chance(firstCell(tab, 0)) > chance(firstCell(tab, 1)), () -> tab.eval(FIRST_CELLS));
            String difference = told(tab, ".differences li");
            assertTrue(
                    difference.contains("with the second setting,") && difference.contains("later on the median trial"),
                    difference);
            assertEquals(
                    "?far.snr=16+dB&compare=yes",
                    tab.eval("'?' + location.search.slice(1).split('&').sort().reverse().join('&')"));
            top(tab);
            // In one go: what comes in meanwhile would move the page.
            assertEquals(
                    "2",
                    tab.eval("(() => { document.querySelector('.sides figure').scrollIntoView({ block: 'end' });"
                            + " return Array.from(document.querySelectorAll('.sides figure svg'), it => it.getBoundingClientRect())"
                            + ".filter(it => it.width > 0 && it.top >= 0 && it.bottom <= innerHeight).length; })()"),
                    "both races are seen at once");
            keep(tab);
        }
        if (IS_RECORDED) {
            Files.write(RECORDING, MovingPicture.of(frames, WIDE, HIGH, SHOWN_MILLIS));
        }
    }

    private static void awaitTrials(Tab tab, double least) {
        tab.await(COUNT + " >= " + least + " && !document.querySelector('.stale')");
    }

    private static String told(Tab tab, String selector) {
        return tab.eval("document.querySelector(\"" + selector + "\").innerText");
    }

    /** Waits while the page is grey: a poll may bring what was typed before the page takes note of it, which greys it once more. */
    private static String firstCell(Tab tab, int setting) {
        tab.await("(window.firstCells = " + FIRST_CELLS + ")[" + setting + "] !== undefined");
        return tab.eval("window.firstCells[" + setting + "]");
    }

    /** Returns the chance in a cell of the grid, of 100. */
    private static int chance(String cell) {
        return Integer.parseInt(cell.replaceAll("(?s).*?(\\d+)\\s%.*", "$1"));
    }

    /** Keeps the page from its top on, where what was changed and its answer are seen at once. */
    private void top(Tab tab) throws IOException {
        tab.eval("scrollTo(0, 0)");
        keep(tab);
    }

    private void keep(Tab tab) throws IOException {
        if (IS_RECORDED) {
            frames.add(tab.webp(QUALITY));
            tab.picture(Path.of("target/what-if-" + frames.size() + ".png"), false);
        }
    }
}
