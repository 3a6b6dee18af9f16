package org.ionohaul.rendering;

import org.ionohaul.session.Cause;

/**
 * How a cause of a session's time budget is named and coloured, the same in every text and picture: grey for what every session
 * needs, red for trouble, since other colours mean modes.
 *
 * @param name in words
 * @param colour its colour, as CSS and SVG write it
 */
public record CauseLegend(String name, String colour) {
    /** Returns its style on a page. */
    public String style() {
        return "c-" + name.replace(' ', '-');
    }

    /** Returns how a cause is shown. */
    public static CauseLegend of(Cause cause) {
        return switch (cause) {
            case DIALLING -> new CauseLegend("dialling", "#b9bfc5");
            case INTRODUCTIONS -> new CauseLegend("introductions", "#8c959f");
            case PREAMBLES -> new CauseLegend("preambles", "#d0d7de");
            case NEW_PAYLOAD -> new CauseLegend("new payload", "#3b4148");
            case REPEATED_PAYLOAD -> new CauseLegend("repeated payload", "#b3261e");
            case ACKNOWLEDGEMENTS -> new CauseLegend("acknowledgements", "#6e7781");
            case TURNAROUNDS -> new CauseLegend("turnarounds", "#e6eaee");
            case SILENCE -> new CauseLegend("waiting in silence", "#e0a09c");
            case REDIALLING -> new CauseLegend("redialling", "#7d1a15");
            case HANGING_UP -> new CauseLegend("hanging up", "#57606a");
        };
    }
}
