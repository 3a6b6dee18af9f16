package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ionohaul.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

final class ModeCommandTest {
    private static final String MODES = "../scenarios/modes";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void withoutANameEveryModeIsListed() {
        assertEquals(0, run("mode", "--modes", MODES));
        for (String name : ScenarioReader.modeNames(Path.of(MODES))) {
            assertTrue(out.toString().contains(name + ": "), name);
        }
    }

    @Test
    void aModeByNameShowsItsSheetAndWritesItsCurves() throws IOException {
        assertEquals(0, run("mode", "steady-wagon", "--modes", MODES, "--out", folder.toString()), err.toString());
        assertTrue(out.toString().startsWith("Steady wagon\n============\n"), out.toString());
        Path results = folder.resolve("mode-steady-wagon");
        assertTrue(out.toString().startsWith(Files.readString(results.resolve("card.txt"))));
        List<String> curve = Files.readAllLines(results.resolve("loss.csv"));
        assertEquals("mode,data_rate,path,snr_db,frame_loss", curve.get(0));
        assertTrue(curve.get(1).startsWith("steady-wagon,1,flat,-"), curve.get(1));
        assertTrue(Files.readString(results.resolve("card.html")).contains("Frames lost, path: "));
    }

    @Test
    void aModeThatIsNotThereIsBadInput() {
        assertEquals(2, run("mode", "fast-lane", "--modes", MODES));
        assertTrue(err.toString().contains("fast-lane"), err.toString());
    }

    @Test
    void aFolderWithoutModesIsBadInput() {
        assertEquals(2, run("mode", "--modes", folder.resolve("none").toString()));
        assertTrue(err.toString().contains("There are no mode files in "), err.toString());
    }

    private int run(String... arguments) {
        CommandLine program = Main.commandLine(
                scenario -> trial -> {
                    throw new IllegalStateException("nothing to run here");
                },
                Interruption.never());
        program.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        return program.execute(arguments);
    }
}
