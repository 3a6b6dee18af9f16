package org.ionohaul.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A page as a browser shows it.
 *
 * @param browser the browser
 * @param file the page
 */
public record BrowserPage(Chromium browser, Path file) {
    public static final List<Integer> WIDTHS = List.of(320, 360, 768, 1200);

    private static final Pattern URL = Pattern.compile("\"url\":\"([^\"]*)\"");

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
            // Of each picture the one drawing that is seen: what of its lettering juts out or meets other lettering, and the
            // colours that its legend gives to names.
            function pictures(page) {
              let report = '';
              page.querySelectorAll('.picture').forEach(place => {
                const seen = [...place.querySelectorAll('svg')].filter(it => it.getBoundingClientRect().width > 0);
                report += 'drawn ' + seen.length + '\\n';
                const edge = seen[0].getBoundingClientRect(), texts = [...seen[0].querySelectorAll('text')];
                const boxes = texts.map(it => it.getBoundingClientRect());
                boxes.forEach((a, i) => {
                  const name = place.id + ': ' + texts[i].textContent;
                  if (a.left < edge.left - 1 || a.right > edge.right + 1 || a.top < edge.top - 1 || a.bottom > edge.bottom + 1) {
                    report += 'juts out of ' + name + '\\n';
                  }
                  // Boxes of lettering are higher than what is seen of it.
                  const low = 0.15 * a.height;
                  boxes.slice(0, i).forEach((b, k) => {
                    if (a.left < b.right && b.left < a.right && a.top + low < b.bottom - low && b.top + low < a.bottom - low) {
                      report += 'overlap in ' + name + ' and ' + texts[k].textContent + '\\n';
                    }
                  });
                });
                const colours = [...seen[0].querySelectorAll('.key[class*=" m"] + text')].map(it =>
                  it.textContent + ' ' + frameOf(page).getComputedStyle(it.previousElementSibling).getPropertyValue('--mode'));
                report += place.id + ' colours ' + colours.join(', ') + '\\n';
              });
              return report;
            }
            const frameOf = page => page.defaultView;
            // Which modes of its record a picture does not name, and in which colours it draws them.
            function modes(place, chart) {
              const data = JSON.parse(place.nextElementSibling.textContent), kind = place.dataset.kind;
              const names = [data.modes, data.rows, data.bars].flatMap(it => it || []).map(it => it.mode)
                .filter(it => typeof it === 'string');
              const words = place.textContent.replace(/\\s/g, '');
              const colours = names.map(name => [name, chart.getOption().series.find(it => it.name === name)])
                .filter(it => it[1]).map(it => it[0] + ' ' + it[1].color);
              return names.filter(it => !words.includes(it.replace(/\\s/g, ''))).map(it => kind + ' lacks ' + it + '\\n').join('')
                + kind + ' colours ' + colours.join(', ') + '\\n';
            }
            function probe(frame) {
              const page = frame.contentDocument, root = page.documentElement;
              page.querySelectorAll('details').forEach(it => it.open = true);
              let report = root.clientWidth + ' wide, needs ' + root.scrollWidth + '\\n' + lettering(page) + pictures(page);
              page.querySelectorAll('.chart').forEach(it => {
                report += modes(it, frame.contentWindow.echarts.getInstanceByDom(it));
                frame.contentWindow.echarts.getInstanceByDom(it)
                  .dispatchAction({ type: 'showTip', seriesIndex: 1, dataIndex: 0 });
                report += it.children[1] ? 'told: ' + it.children[1].innerText + '\\n' : '';
              });
              frame.contentWindow.dispatchEvent(new Event('beforeprint'));
              page.querySelectorAll('.chart svg').forEach(it => { report += 'on paper ' + it.getAttribute('viewBox') + '\\n'; });
              lines.textContent += report;
            }
            for (const width of %s) {
              const frame = document.createElement('iframe');
              frame.style = 'border:0;height:800px;width:' + width + 'px';
              frame.onload = () => probe(frame);
              frame.src = '%s';
              document.body.append(frame);
            }
            </script></body>
            """;

    /** Returns the page in a browser, if this machine has one. */
    public static Optional<BrowserPage> of(Path file) {
        return Chromium.find(file.resolveSibling("")).map(it -> new BrowserPage(it, file));
    }

    /** Returns lines of the console, then what the page asked for; requests without an origin are the browser's own. */
    public List<String> complaintsAndRequests() throws IOException {
        Path log = file.resolveSibling("net.json");
        List<String> noticed = new ArrayList<>(browser.open(file, "--dump-dom", "--log-net-log=" + log)
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

    /** Returns the page's elements after its script has run. */
    public String dom() {
        return browser.open(file, "--dump-dom").get(0);
    }

    /**
     * Returns what is seen at each width: how wide the page must be, a line a picture, lettering that juts out, modes that a
     * picture does not name and colours of the others, what a
     * pointer at the beginning of each picture is told, and how large each picture is on paper.
     */
    public String seen() throws IOException {
        Path probe = file.resolveSibling("probe.html");
        Files.writeString(probe, PROBE.formatted(WIDTHS, file.getFileName()));
        String dom = browser.open(probe, "--dump-dom").get(0);
        return dom.substring(0, dom.indexOf("</pre>"));
    }

    /** Returns the page on paper, as PDF. */
    public String printed() throws IOException {
        Path pdf = file.resolveSibling("page.pdf");
        browser.open(file, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        return Files.readString(pdf, StandardCharsets.ISO_8859_1);
    }
}
