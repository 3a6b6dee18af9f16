package org.ionohaul.rendering;

import org.ionohaul.session.Cause;

/**
 * How a cause of a session's time budget is named and coloured, the same in every text and picture.
 *
 * @param name in words
 * @param colour its colour, as CSS and SVG write it
 */
public record CauseLegend(String name, String colour) {
    /** Returns how a cause is shown. */
    public static CauseLegend of(Cause cause) {
        return switch (cause) {
            case DIALLING -> new CauseLegend("dialling", "#999999");
            case INTRODUCTIONS -> new CauseLegend("introductions", "#5f5f5f");
            case PREAMBLES -> new CauseLegend("preambles", "#56b4e9");
            case NEW_PAYLOAD -> new CauseLegend("new payload", "#0072b2");
            case REPEATED_PAYLOAD -> new CauseLegend("repeated payload", "#d55e00");
            case ACKNOWLEDGEMENTS -> new CauseLegend("acknowledgements", "#009e73");
            case TURNAROUNDS -> new CauseLegend("turnarounds", "#f0e442");
            case SILENCE -> new CauseLegend("waiting in silence", "#cc79a7");
            case REDIALLING -> new CauseLegend("redialling", "#e69f00");
            case HANGING_UP -> new CauseLegend("hanging up", "#000000");
        };
    }
}
