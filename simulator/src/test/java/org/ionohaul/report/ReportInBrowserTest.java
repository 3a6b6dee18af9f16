package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as a browser shows it; skipped where there is none, which the test run says. */
final class ReportInBrowserTest {
    private static final Pattern URL = Pattern.compile("\"url\":\"([^\"]*)\"");

    private static final int CHARTS = 2 * 5 + 2 + 1;

    /**
     * Opens the page at several widths, unfolds it, and writes what juts out into its own text: the page itself, and
     * lettering beyond the edge of its picture. Then does what a browser does before it prints.
     */
    private static final String PROBE = """
            <!DOCTYPE html><body><pre id="found"></pre><script>
            const lines = document.getElementById('found');
            function lettering(page) {
              let report = '';
              page.querySelectorAll('.chart svg').forEach(svg => {
                const box = svg.getBoundingClientRect();
                report += 'picture\\n';
                svg.querySelectorAll('text').forEach(text => {
                  const own = text.getBoundingClientRect();
                  if (own.left < box.left - 2 || own.top < box.top - 2 || own.right > box.right + 2
                      || own.bottom > box.bottom + 2) {
                    report += 'juts out of its picture: ' + text.textContent + '\\n';
                  }
                });
              });
              return report;
            }
            function probe(frame) {
              const page = frame.contentDocument, root = page.documentElement;
              page.querySelectorAll('details').forEach(it => it.open = true);
              let report = root.clientWidth + ' wide, needs ' + root.scrollWidth + '\\n' + lettering(page);
              frame.contentWindow.dispatchEvent(new Event('beforeprint'));
              page.querySelectorAll('.chart svg').forEach(it => { report += 'on paper ' + it.getAttribute('viewBox') + '\\n'; });
              lines.textContent += report;
            }
            for (const width of [320, 360, 768, 1200]) {
              const frame = document.createElement('iframe');
              frame.style = 'border:0;height:800px;width:' + width + 'px';
              frame.onload = () => probe(frame);
              frame.src = 'report.html';
              document.body.append(frame);
            }
            </script></body>
            """;

    @TempDir
    private Path folder = Path.of("");

    private Optional<Chromium> found = Optional.empty();
    private Path page = Path.of("");

    @BeforeEach
    void writeTheReport() throws IOException {
        found = Chromium.find(folder);
        assumeTrue(found.isPresent(), "no Chromium on this machine: the report is not looked at in a browser");
        page = folder.resolve("report.html");
        new ReportHtml(FabricatedStudy.findings(FabricatedStudy.TRIALS)).writeTo(page);
    }

    @Test
    void itOpensWithoutAComplaintAndAsksForNothingElse() throws IOException {
        assertEquals(List.of(), complaintsAndRequests(page));
    }

    @Test
    void complaintsAndRequestsWouldBeNoticed() throws IOException {
        Path talkative = folder.resolve("talkative.html");
        Files.writeString(talkative, "<script>nonsense()</script><img src='http://127.0.0.1:9/dot.png' alt=''>");
        List<String> noticed = complaintsAndRequests(talkative);
        assertEquals(2, noticed.size(), noticed::toString);
        assertTrue(noticed.get(0).contains("nonsense is not defined"), noticed.get(0));
        assertEquals("http://127.0.0.1:9/dot.png", noticed.get(1));
    }

    /** Returns lines of the console, then what the page asked for; requests without an origin are the browser's own. */
    private List<String> complaintsAndRequests(Path asking) throws IOException {
        Path log = folder.resolve("net.json");
        List<String> noticed = new ArrayList<>(open(asking, "--dump-dom", "--log-net-log=" + log)
                .get(1)
                .lines()
                .filter(it -> it.contains("CONSOLE"))
                .toList());
        Files.readString(log)
                .lines()
                .filter(it -> it.contains("\"initiator\":") && !it.contains("\"initiator\":\"not an origin\""))
                .flatMap(it -> URL.matcher(it).results())
                .map(it -> it.group(1))
                .distinct()
                .forEach(noticed::add);
        return noticed;
    }

    @Test
    void nothingJutsOutAtAnyWidth() throws IOException {
        Path probe = folder.resolve("probe.html");
        Files.writeString(probe, PROBE);
        String dom = open(probe, "--dump-dom").get(0);
        String seen = dom.substring(0, dom.indexOf("</pre>"));
        for (int width : new int[] {320, 360, 768, 1200}) {
            assertTrue(seen.contains(width + " wide, needs " + width + "\n"), seen);
        }
        assertEquals(4 * CHARTS, count(seen, "picture\n"), "widths x charts");
        assertFalse(seen.contains("juts out"), seen);
        assertEquals(4 * (CHARTS - 3), count(seen, "on paper 0 0 400 "), "half a sheet, whatever the screen");
        assertEquals(4 * 3, count(seen, "on paper 0 0 760 "), "those that stand alone: the whole sheet");
    }

    @Test
    void everyChartIsDrawnAndItsTableFolded() {
        String dom = open(page, "--dump-dom").get(0);
        assertEquals(CHARTS, count(dom.replace(ChartScript.text(), ""), "<svg"));
        assertTrue(dom.contains("Tough: 21 % (14-30 %)"), "options stay readable");
        assertEquals(0, count(dom, "<details class=\"behind\" open"));
    }

    /** As in the preview of a mail program, which takes scripts away. */
    @Test
    void withoutItsScriptThePageShowsItsTables() throws IOException {
        Files.writeString(page, Files.readString(page).replace(ChartScript.text(), ""));
        String dom = open(page, "--dump-dom").get(0);
        assertEquals(2 * 3 + 2 + 1, count(dom, "<details class=\"behind\" open"));
        assertFalse(dom.contains("class=\"drawn\""), "the style sheet hides the sentence only then");
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void itPrints() throws IOException {
        Path pdf = folder.resolve("report.pdf");
        open(page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        String printed = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        assertTrue(printed.startsWith("%PDF-"));
        assertTrue(printed.split("/Type /Page\\b", -1).length - 1 >= 3, "pages");
    }

    private List<String> open(Path what, String... more) {
        return found.orElseThrow().open(what, more);
    }
}
