package org.ionohaul.scenario;

import java.util.List;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/** Thrown when a text is so broken that the parser, which recovers from most errors of syntax, itself fails over it. */
final class BrokenSyntax extends Exception {
    private static final long serialVersionUID = 1;

    private final int line;

    private BrokenSyntax(int line, Throwable cause) {
        super("the parser fails at line " + line, cause);
        this.line = line;
    }

    /** Returns what a text says, its errors included. */
    // Whatever the parser throws is about the text, its own assertions included: nothing else went in.
    static TomlParseResult parse(String text) throws BrokenSyntax {
        try {
            return Toml.parse(text);
        } catch (RuntimeException | StackOverflowError | AssertionError e) {
            throw new BrokenSyntax(firstBadLine(text.lines().toList()), e);
        }
    }

    /** Returns by which line, from 1, the parser fails. */
    int line() {
        return line;
    }

    /** Returns the number of the last line without which the parser would not fail, by halving. */
    private static int firstBadLine(List<String> lines) {
        int good = 0;
        int bad = lines.size();
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (isParsed(String.join("\n", lines.subList(0, middle)))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return bad;
    }

    private static boolean isParsed(String text) {
        try {
            return Toml.parse(text) != null;
        } catch (RuntimeException | StackOverflowError | AssertionError e) {
            return false;
        }
    }
}
