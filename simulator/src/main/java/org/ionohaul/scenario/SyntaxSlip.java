package org.ionohaul.scenario;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlParseError;

/**
 * An error of syntax in the words of someone who never heard of the syntax.
 *
 * @param line the line, from 1
 * @param column the column, from 1
 * @param message what is wrong
 * @param remedy what would be right; may be empty
 */
record SyntaxSlip(int line, int column, String message, String remedy) {
    private static final Pattern CURLY = Pattern.compile("[“”„‟«»]");
    private static final Pattern UNQUOTED =
            Pattern.compile("(\\s*[\\w.-]+\\s*=\\s*)([^\\s\"'\\[{#][^\"'\\[{#]*?)\\s*(?:#.*)?");

    /**
     * Returns what is behind a parser's complaint.
     *
     * @param lines the lines of the file
     */
    static SyntaxSlip of(TomlParseError error, List<String> lines) {
        int number = error.position().line();
        String line = number <= lines.size() ? lines.get(number - 1) : "";
        Matcher curly = CURLY.matcher(line);
        if (curly.find()) {
            return new SyntaxSlip(
                    number,
                    curly.start() + 1,
                    "there are curly quotation marks, as word processors make them",
                    "write straight ones: " + CURLY.matcher(line.strip()).replaceAll("\""));
        }
        Matcher unquoted = UNQUOTED.matcher(line);
        if (unquoted.matches()) {
            String quoted = unquoted.group(1).strip() + " \"" + unquoted.group(2) + "\"";
            return new SyntaxSlip(
                    number,
                    unquoted.start(2) + 1,
                    unquoted.group(2) + " stands without quotation marks",
                    "write it as text or quantity: " + quoted);
        }
        String message = String.valueOf(error.getMessage());
        return new SyntaxSlip(
                number,
                error.position().column(),
                message,
                message.contains("expected \"") ? "is the quotation mark missing that ends the text?" : "");
    }
}
