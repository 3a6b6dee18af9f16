package org.ionohaul.fuzz;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Starts the fuzzer that is guided by coverage; profile {@code fuzz} has it on its class path. */
final class CoverageGuided {
    private CoverageGuided() {}

    /**
     * Runs the fuzzer, which ends the Java machine.
     *
     * @param arguments folder for what it finds and learns; how many seconds to run
     */
    public static void main(String[] arguments) throws IOException, ReflectiveOperationException {
        Path folder = Path.of(arguments[0]);
        Path seeds = Files.createDirectories(folder.resolve("seeds"));
        Path corpus = Files.createDirectories(folder.resolve("corpus"));
        List<String> texts = WrittenInput.seeds();
        for (int i = 0; i < texts.size(); i++) {
            Files.writeString(seeds.resolve("seed-" + i), texts.get(i));
        }
        String[] options = {
            "--target_class=" + ScenarioFuzzer.class.getName(),
            "--instrumentation_includes=org.ionohaul.**:org.tomlj.**",
            "-max_total_time=" + arguments[1],
            // The first input waits until classes are instrumented, on a busy machine more than a minute.
            "-timeout=300",
            "-max_len=20000",
            "-artifact_prefix=" + folder + "/",
            corpus.toString(),
            seeds.toString()
        };
        fuzz(options);
    }

    /** By its name, so that the tests compile without it. */
    private static void fuzz(String[] options) throws ReflectiveOperationException {
        try {
            Class.forName("com.code_intelligence.jazzer.Jazzer")
                    .getMethod("main", String[].class)
                    .invoke(null, (Object) options);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the fuzzer failed", e.getCause());
        }
    }
}
