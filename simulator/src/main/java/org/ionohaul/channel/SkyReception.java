package org.ionohaul.channel;

import java.util.List;

/** How one end of a sky hears the other through one passband. */
final class SkyReception implements Reception {
    /**
     * Steady time as a share of the reciprocal of the Doppler spread. Over it the correlation of a path's gain falls to
     * exp(-pi^2 / 128) = 0.93, and the power spectrum of its envelope is sampled up to 5.7 times its standard deviation.
     */
    private static final double STEADY_SHARE = 1.0 / 8;

    private final Sky sky;
    private final double snrDb;
    private final NoiseAtEnd noise;
    private final PathGain[] paths;
    private final Passband passband;
    private final double dopplerSpreadHz;
    private final double delaySpreadSeconds;
    private final double[] rotations;
    private final double[] gains;
    private final double[] interference;
    private long spanStartNanos;
    private long spanEndNanos;

    SkyReception(Sky sky, End receiver, Passband passband) {
        this.sky = sky;
        this.snrDb = sky.conditions().at(receiver).snrDb();
        this.noise = sky.noise(receiver);
        this.paths = sky.gains();
        this.passband = passband;
        this.dopplerSpreadHz = sky.conditions().dopplerSpreadHz();
        this.delaySpreadSeconds = sky.conditions().delaySpreadSeconds();
        this.rotations = rotations(sky.conditions().paths(), passband);
        this.gains = new double[2 * paths.length];
        this.interference = new double[passband.subBands()];
    }

    @Override
    public int subBands() {
        return interference.length;
    }

    @Override
    public void sinr(long atNanos, double[] sinr) {
        if (atNanos < spanStartNanos || atNanos >= spanEndNanos) {
            moveTo(atNanos);
        }
        for (int path = 0; path < paths.length; path++) {
            paths[path].at(atNanos, gains, path);
        }
        double signal = Decibels.toRatio(snrDb + sky.levelDb(atNanos));
        double noisePower = noise.noise(atNanos);
        for (int band = 0; band < interference.length; band++) {
            sinr[band] = signal * transfer(band) / (noisePower + interference[band]);
        }
    }

    @Override
    public long steadyNanos() {
        return dopplerSpreadHz > 0 ? Math.round(1e9 * STEADY_SHARE / dopplerSpreadHz) : Long.MAX_VALUE;
    }

    @Override
    public double dopplerSpreadHz() {
        return dopplerSpreadHz;
    }

    @Override
    public double delaySpreadSeconds() {
        return delaySpreadSeconds;
    }

    /** Returns the power transfer |H|^2 at the centre of a sub-band. */
    private double transfer(int band) {
        double real = 0;
        double imaginary = 0;
        int at = band * gains.length;
        for (int i = 0; i < gains.length; i += 2) {
            real += gains[i] * rotations[at + i] - gains[i + 1] * rotations[at + i + 1];
            imaginary += gains[i] * rotations[at + i + 1] + gains[i + 1] * rotations[at + i];
        }
        return real * real + imaginary * imaginary;
    }

    private void moveTo(long atNanos) {
        if (atNanos < 0) {
            throw new IllegalArgumentException("atNanos must not be negative: " + atNanos);
        }
        Occupancy occupancy = noise.occupancy();
        int span = occupancy.spanAt(atNanos);
        spanStartNanos = occupancy.startNanos(span);
        spanEndNanos = occupancy.endNanos(span);
        double halfHz = passband.widthHz() / passband.subBands() / 2;
        for (int band = 0; band < interference.length; band++) {
            double centreHz = passband.centreHz(band);
            interference[band] = 0;
            for (Over over : occupancy.on(span)) {
                interference[band] += over.density(centreHz - halfHz, centreHz + halfHz);
            }
        }
    }

    /** Returns for each sub-band, for each path, the complex factor that its amplitude and delay make there. */
    private static double[] rotations(List<PropagationPath> paths, Passband passband) {
        double totalPower = 0;
        for (PropagationPath path : paths) {
            totalPower += Decibels.toRatio(path.powerDb());
        }
        double[] rotations = new double[2 * paths.size() * passband.subBands()];
        for (int i = 0; i < rotations.length; i += 2) {
            PropagationPath path = paths.get(i / 2 % paths.size());
            double amplitude = Math.sqrt(Decibels.toRatio(path.powerDb()) / totalPower);
            double phase = -2 * Math.PI * passband.centreHz(i / 2 / paths.size()) * path.delaySeconds();
            rotations[i] = amplitude * Math.cos(phase);
            rotations[i + 1] = amplitude * Math.sin(phase);
        }
        return rotations;
    }
}
