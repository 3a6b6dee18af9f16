package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;

final class NetCommandTest {
    private static final String VALLEY = "../scenarios/nets/bridge-valley.toml";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... more) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(
                        Stream.concat(Stream.of("net", VALLEY), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void oneAndThreeThreadsPrintTheSame() {
        assertEquals(ExitCode.DONE, run("--trials", "30", "--threads", "1"), err::toString);
        String one = out.toString();
        out.getBuffer().setLength(0);
        assertEquals(ExitCode.DONE, run("--trials", "30", "--threads", "3"), err::toString);
        assertEquals(one, out.toString());
        assertTrue(one.contains("14 stations, 1 gateway, 1 channel, mode Patient climber"), one);
        assertTrue(one.lines().allMatch(it -> it.length() <= 80), one);
    }

    @Test
    void whatIsWrongInTheFileIsTold() {
        assertEquals(ExitCode.BAD_INPUT, run("--set", "discipline.access=rooster"));
        assertTrue(err.toString().contains("did you mean \"roster\"?"), err::toString);
    }
}
