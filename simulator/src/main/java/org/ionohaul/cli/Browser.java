package org.ionohaul.cli;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;

/** The user's own browser. */
final class Browser {
    private Browser() {}

    /** Opens a page in it, if there is one. */
    static void open(URI address) {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            start(List.of("rundll32", "url.dll,FileProtocolHandler", address.toString()));
        } else if (system.contains("mac")) {
            start(List.of("open", address.toString()));
        } else if (System.getenv().containsKey("DISPLAY") || System.getenv().containsKey("WAYLAND_DISPLAY")) {
            start(List.of("xdg-open", address.toString()));
        }
    }

    private static void start(List<String> command) {
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // There is none: the address that is printed can be typed.
            return;
        }
    }
}
