package org.ionohaul.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.ionohaul.channel.SkyBenchmark;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.waveform.WaveformBenchmark;

/** The benchmarks of what a trial is made of, by name; loaded once for each version that {@link KernelTimes} compares. */
public final class Kernels implements Supplier<Map<String, Callable<Object>>> {
    @Override
    public Map<String, Callable<Object>> get() {
        SkyBenchmark sky = new SkyBenchmark();
        WaveformBenchmark waveform = new WaveformBenchmark();
        Map<String, Callable<Object>> kernels = new LinkedHashMap<>();
        kernels.put("draws and look-ups of two paths' gains, an hour", sky::fadingBareDrawsAndLookUps);
        kernels.put("two paths' gains, an hour", sky::fading);
        kernels.put("sky that only fades, an hour", sky::quietSky);
        kernels.put("sky with everything, an hour", sky::everything);
        kernels.put("frame on a steady path", waveform::steadyFrame);
        kernels.put("frame on a disturbed path", waveform::fadingFrame);
        kernels.put("SNR of a burst, measured", waveform::fadingBurstMeasured);
        for (String mode : new String[] {"brisk-comb", "patient-climber", "slow-whistle", "steady-wagon"}) {
            TrialBenchmark trial = new TrialBenchmark();
            trial.mode = mode;
            try {
                trial.read();
            } catch (ScenarioProblems problems) {
                throw new IllegalStateException(problems);
            }
            kernels.put("trial of the demo, " + mode, trial::trial);
        }
        return kernels;
    }
}
