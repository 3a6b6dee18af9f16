package org.ionohaul.cli;

import java.util.List;
import java.util.Optional;
import org.ionohaul.rendering.StyledLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How the terminal looks that a command prints on. */
final class Screen {
    private static final int NARROWEST = 60;
    private static final int USUAL = 80;
    private static final int WIDEST = 200;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--width",
            paramLabel = "N",
            description = "How many characters a line may have, 60 to 200; if not given, what the environment variable"
                    + " COLUMNS says, else what the terminal has, else 80.",
            converter = CountConverter.class)
    private Optional<Integer> width = Optional.empty();

    @Option(
            names = "--plain",
            description = "Prints without colours, as when the environment variable NO_COLOR is set or nobody watches.")
    private boolean isPlain;

    /** Returns how many characters a line may have. */
    int width() {
        width.filter(it -> it < NARROWEST || it > WIDEST).ifPresent(it -> {
            throw new ParameterException(
                    spec.commandLine(), "--width must be from " + NARROWEST + " to " + WIDEST + ": " + it);
        });
        return width.orElseGet(() -> width(
                System.getenv().getOrDefault("COLUMNS", ""), Watched.OUTPUT.isTerminal() ? terminalWidth() : USUAL));
    }

    /** Returns the width that a variable of the environment or, where that says nothing, the terminal has. */
    static int width(String columns, int ofTerminal) {
        int found = columns.matches("[1-9][0-9]{0,4}") ? Integer.parseInt(columns) : ofTerminal;
        return Math.max(NARROWEST, Math.min(WIDEST, found));
    }

    /** Asks the operating system, in the library's way. */
    private static int terminalWidth() {
        return new UsageMessageSpec().autoWidth(true).width();
    }

    /** Prints lines, in colours where there are any. */
    void print(List<StyledLine> lines) {
        boolean isColoured = !isPlain && Ansi.AUTO.enabled();
        if (spec.commandLine().getOut() instanceof PlainPrinter printer) {
            lines.forEach(it -> printer.print(it, isColoured));
        } else {
            throw new IllegalStateException("commands print on a PlainPrinter");
        }
    }
}
