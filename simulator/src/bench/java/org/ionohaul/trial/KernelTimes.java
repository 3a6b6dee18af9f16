package org.ionohaul.trial;

import java.io.File;
import java.lang.management.ManagementFactory;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

/**
 * Prints what kernels cost in two versions of the program, by turns in one run: processor time, which a busy machine disturbs
 * less than time by the clock. Argument: the folder of the other version's classes.
 */
public final class KernelTimes {
    private static final int ROUNDS = 7;
    private static final long LEAST_NANOS = 300_000_000L;

    private KernelTimes() {}

    /** Compares this version with the one whose classes lie in a folder. */
    public static void main(String[] arguments) throws Exception {
        List<URL> now = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            now.add(Path.of(entry).toUri().toURL());
        }
        List<URL> before = new ArrayList<>(now);
        before.add(0, Path.of(arguments[0]).toUri().toURL());
        Map<String, Callable<Object>> kernelsNow = kernels(now);
        Map<String, Callable<Object>> kernelsBefore = kernels(before);
        System.out.println("kernel,processor us before,processor us now,now over before,lowest of rounds,highest");
        for (String name : kernelsNow.keySet()) {
            double[] nows = new double[ROUNDS];
            double[] befores = new double[ROUNDS];
            double[] ratios = new double[ROUNDS];
            for (int round = -2; round < ROUNDS; round++) {
                double old = micros(kernelsBefore.get(name));
                double fresh = micros(kernelsNow.get(name));
                if (round >= 0) {
                    befores[round] = old;
                    nows[round] = fresh;
                    ratios[round] = fresh / old;
                }
            }
            Arrays.sort(ratios);
            System.out.println(String.format(
                    Locale.ROOT,
                    "\"%s\",%.4g,%.4g,%.2f,%.2f,%.2f",
                    name,
                    median(befores),
                    median(nows),
                    median(ratios),
                    ratios[0],
                    ratios[ROUNDS - 1]));
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Callable<Object>> kernels(List<URL> classes) throws ReflectiveOperationException {
        ClassLoader loader = new URLClassLoader(classes.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
        Supplier<Map<String, Callable<Object>>> kernels = (Supplier<Map<String, Callable<Object>>>)
                loader.loadClass(Kernels.class.getName()).getConstructor().newInstance();
        return kernels.get();
    }

    private static double micros(Callable<Object> kernel) throws Exception {
        long began = processorNanos();
        long runs = 0;
        while (processorNanos() - began < LEAST_NANOS) {
            for (int i = 0; i < 8; i++) {
                kernel.call();
            }
            runs += 8;
        }
        return (processorNanos() - began) / 1000.0 / runs;
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
