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
     * Opens the page at several widths, unfolds it, and writes into its own text what a person would trip over.
     */
    private static final String PROBE = """
            <!DOCTYPE html><style>:root { color-scheme: light dark; }</style><body><pre id="found"></pre><script>
            const lines = document.getElementById('found');
            // Of each picture the one drawing that is seen: the colours that its legend gives to names.
            function pictures(page) {
              let report = '';
              page.querySelectorAll('.picture').forEach(place => {
                const seen = [...place.querySelectorAll('svg')].filter(it => it.getBoundingClientRect().width > 0);
                report += 'drawn ' + seen.length + '\\n';
                const colours = [...seen[0].querySelectorAll('.key[class*=" m"] + text')].map(it =>
                  it.textContent + ' ' + frameOf(page).getComputedStyle(it.previousElementSibling).getPropertyValue('--mode'));
                report += place.id + ' colours ' + colours.join(', ') + '\\n';
              });
              return report;
            }
            ACCESSIBILITY
            // What a pointer on a picture's first surface that says something is told.
            function told(page) {
              let report = '';
              if (!page.querySelector('.tip')) { return report; }
              page.querySelectorAll('.picture').forEach(place => {
                const svg = [...place.querySelectorAll('svg')].find(it => it.getBoundingClientRect().width > 0);
                const title = svg.querySelector('title');
                if (title) {
                  const shape = title.parentElement;
                  const words = title.textContent || place.querySelector('svg + svg title').textContent;
                  shape.dispatchEvent(new (frameOf(page)).PointerEvent('pointerover', { bubbles: true, clientX: 9, clientY: 9 }));
                  const tip = page.querySelector('.tip'), box = tip.getBoundingClientRect();
                  report += 'told: ' + tip.innerText + '\\n';
                  if (tip.hidden || tip.textContent !== words || box.left < 0 || box.right > page.documentElement.clientWidth) {
                    report += 'not told: ' + words + '\\n';
                  }
                }
              });
              return report;
            }
            function probe(frame) {
              const page = frame.contentDocument, root = page.documentElement;
              page.querySelectorAll('details').forEach(it => it.open = true);
              lines.textContent += root.clientWidth + ' wide, needs ' + root.scrollWidth + '\\n'
                + 'paper ' + getComputedStyle(page.body).backgroundColor + '\\n' + pictures(page) + lettering(page) + '\\n' + faint(page) + told(page);
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
     * Returns what is seen at each width: how wide the page must be and the colour of its paper, a line a picture, lettering
     * that juts out or meets other lettering, the colours of modes, text too faint to read, and what a pointer at each picture
     * is told.
     */
    public String seen() throws IOException {
        return probed();
    }

    /** Returns the same for those who like it dark. */
    public String seenInTheDark() throws IOException {
        return probed("--blink-settings=preferredColorScheme=0");
    }

    private String probed(String... more) throws IOException {
        Path probe = file.resolveSibling("probe.html");
        Files.writeString(
                probe,
                PROBE.formatted(WIDTHS, file.getFileName())
                        .replace("ACCESSIBILITY", accessibility() + letteringScript()));
        List<String> flags = new ArrayList<>(List.of(more));
        flags.add("--dump-dom");
        String dom = browser.open(probe, flags.toArray(String[]::new)).get(0);
        return dom.substring(0, dom.indexOf("</pre>"));
    }

    /** Returns the page on paper, as PDF. */
    public String printed() throws IOException {
        Path pdf = file.resolveSibling("page.pdf");
        browser.open(file, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        return Files.readString(pdf, StandardCharsets.ISO_8859_1);
    }

    /** Returns an expression of a page's own language that unfolds it and tells what keeps people out; empty if nothing does. */
    public static String barriers() throws IOException {
        return """
                (() => {
                  %s
                  document.querySelectorAll('details').forEach(it => { it.open = true; });
                  const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
                  return [faint(document), barriers(document), wide > 1 ? wide + ' px too wide' : ''].filter(it => it).join('\\n');
                })()""".formatted(accessibility());
    }

    /** Returns functions in a page's own language that look for what keeps people out: {@code faint} and {@code barriers}. */
    private static String accessibility() throws IOException {
        return Files.readString(Path.of("src/test/resources/accessibility.js"));
    }

    /**
     * Returns an expression that unfolds a page and tells which of its lettering can't be read in place, with the machine's
     * fonts and then with one that is among the widest; empty if all can.
     */
    public static String lettering() throws IOException {
        return """
                (() => {
                  %s
                  document.querySelectorAll('details').forEach(it => { it.open = true; });
                  const ordinary = lettering(document);
                  const wide = document.styleSheets[0], last = wide.cssRules.length;
                  wide.insertRule('* { font-family: "DejaVu Sans" !important; }', last);
                  const inOneFont = lettering(document);
                  wide.deleteRule(last);
                  return [ordinary, inOneFont].filter(it => it).join('\\n');
                })()""".formatted(letteringScript());
    }

    /** Returns an expression that tells which words of pictures are not told by the arrow keys, within the window; empty if all are. */
    public static String untoldByKeys() throws IOException {
        return "(() => { %s; document.querySelectorAll('details').forEach(it => { it.open = true; }); return untold(); })()"
                .formatted(Files.readString(Path.of("src/test/resources/keys.js")));
    }

    /** Returns an expression that tells which colours of a page don't mean what they should; empty if all do. */
    public static String colours() throws IOException {
        return coloursScript("colours");
    }

    /** Returns an expression that tells the number of each mode's colour, a line a mode: its name, then the number. */
    public static String coloursOfModes() throws IOException {
        return coloursScript("coloursOfModes");
    }

    private static String coloursScript(String function) throws IOException {
        return "(() => { %s; document.querySelectorAll('details').forEach(it => { it.open = true; }); return %s(document); })()"
                .formatted(Files.readString(Path.of("src/test/resources/colours.js")), function);
    }

    private static String letteringScript() throws IOException {
        return Files.readString(Path.of("src/test/resources/lettering.js"));
    }
}
