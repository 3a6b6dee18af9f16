package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The power transfer against the plain complex sum over paths. */
final class FrequencyResponseTest {
    private static final List<PropagationPath> PATHS = List.of(
            new PropagationPath(0, 0, 0, 1),
            new PropagationPath(0.0013, -2, 0, 1),
            new PropagationPath(0.002, 3, 0, 1),
            new PropagationPath(0.006, -9, 0, 1));
    private static final double[] GAINS = {0.3, -0.2, 1.1, 0.4, -0.7, 0.9, 0.05, -1.6};

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void transferIsThatOfTheComplexSum(int pathCount) {
        List<PropagationPath> paths = PATHS.subList(0, pathCount);
        Passband passband = new Passband(2700, 7);
        double[] transfer = new double[7];
        double[] gains = Arrays.copyOf(GAINS, 2 * pathCount);
        new FrequencyResponse(paths, passband).write(gains, transfer);
        for (int band = 0; band < 7; band++) {
            double magnitude = sum(paths, passband.centreHz(band)).abs();
            assertEquals(magnitude * magnitude, transfer[band], 1e-12);
        }
    }

    private static Complex sum(List<PropagationPath> paths, double hertz) {
        double total = paths.stream()
                .mapToDouble(path -> Math.pow(10, path.powerDb() / 10))
                .sum();
        Complex sum = Complex.ZERO;
        for (int i = 0; i < paths.size(); i++) {
            double amplitude = Math.sqrt(Math.pow(10, paths.get(i).powerDb() / 10) / total);
            double phase = -2 * Math.PI * hertz * paths.get(i).delaySeconds();
            Complex gain = new Complex(GAINS[2 * i], GAINS[2 * i + 1]);
            sum = sum.add(gain.multiply(amplitude).multiply(new Complex(Math.cos(phase), Math.sin(phase))));
        }
        return sum;
    }
}
