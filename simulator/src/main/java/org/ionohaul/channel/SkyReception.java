package org.ionohaul.channel;

/** How one end of a sky hears the other through one passband. */
final class SkyReception implements Reception {
    /**
     * Steady time as a share of the reciprocal of the Doppler spread. Over it the correlation of a path's gain falls to
     * exp(-pi^2 / 128) = 0.93. Tried on frames of 0.5 to 10 s in one sub-band: the mean capacity sampled so differs from
     * the true one by 1 % of its scatter from frame to frame at 5 dB and by 4 % at 15 dB; where only the deepest fades
     * count (capped at 4 bits, 25 dB) by 40 %, and a waveform that lives there must look more often.
     */
    private static final double STEADY_SHARE = 1.0 / 8;

    private final double snr;
    private final SkyConditions conditions;
    private final SkyWaveLevel level;
    private final double groundRatio;
    private final NoiseAtEnd noise;
    private final GainAtEnd gain;
    private final PathGain[] paths;
    private final Passband passband;
    private final double widestSpreadHz;
    private final double dopplerSpreadHz;
    private final PowerDelays delays;
    private final FrequencyResponse response;
    private final double[] gains;
    private final double[] interference;
    private long meanNanos = -1;
    private double meanSignal;
    private long spanStartNanos;
    private long spanEndNanos;

    /**
     * Hears what the sky lets through.
     *
     * @param conditions those of the sky
     * @param snrDb mean SNR in 3 kHz at the end that listens, in dB
     * @param level what becomes of the sky wave's level over time
     * @param noise what disturbs this end
     * @param gainControl what its receiver can hear at once
     * @param paths gain of each path as they arrive
     * @param passband through which it listens
     */
    SkyReception(
            SkyConditions conditions,
            double snrDb,
            SkyWaveLevel level,
            NoiseAtEnd noise,
            GainControl gainControl,
            PathGain[] paths,
            Passband passband) {
        this.snr = Decibels.toRatio(snrDb);
        this.conditions = conditions;
        this.level = level;
        this.groundRatio = conditions.groundWave().map(GroundWave::ratio).orElse(0.0);
        this.noise = noise;
        this.gain = new GainAtEnd(gainControl, noise);
        this.paths = paths;
        this.passband = passband;
        this.widestSpreadHz = conditions.widestDopplerSpreadHz();
        this.dopplerSpreadHz = conditions.dopplerSpreadHz();
        this.delays = new PowerDelays(conditions.arrivals());
        this.response = new FrequencyResponse(conditions.arrivals(), passband);
        this.gains = new double[2 * paths.length];
        this.interference = new double[passband.subBands()];
    }

    @Override
    public int subBands() {
        return interference.length;
    }

    @Override
    public void powers(long atNanos, double[] signal, double[] disturbance) {
        if (atNanos < spanStartNanos || atNanos >= spanEndNanos) {
            moveTo(atNanos);
        }
        transfer(atNanos, signal);
        double mean = meanSignal(atNanos);
        double noisePower = noise.between(atNanos);
        if (gain.isLimited()) {
            noisePower += gain.ownNoise(atNanos, mean * transferred(signal));
        }
        for (int band = 0; band < interference.length; band++) {
            // In the deepest notch rounding can leave the transfer a hair below zero.
            signal[band] = mean * Math.abs(signal[band]);
            disturbance[band] = noisePower + interference[band];
        }
    }

    @Override
    public long steadyNanos() {
        double spreadHz = Math.max(widestSpreadHz, dopplerSpreadHz);
        return spreadHz > 0 ? Math.round(1e9 * STEADY_SHARE / spreadHz) : Long.MAX_VALUE;
    }

    @Override
    public void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
        bursts.clear();
        noise.bursts(fromNanos, toNanos, bursts);
        gain.overruns(fromNanos, toNanos, bursts);
    }

    @Override
    public double frequencyErrorHz(long atNanos) {
        return conditions.frequencyErrorHz(atNanos);
    }

    @Override
    public double dopplerSpreadHz() {
        return dopplerSpreadHz;
    }

    @Override
    public double meanSignal(long atNanos) {
        if (atNanos != meanNanos) {
            meanNanos = atNanos;
            meanSignal = snr * (level.ratio(atNanos) + groundRatio);
        }
        return meanSignal;
    }

    @Override
    public double shareBeyond(double reachSeconds, double symbolSeconds) {
        return delays.shareBeyond(reachSeconds, symbolSeconds);
    }

    /** Writes the power transfer |H|^2 of each sub-band at an instant, of mean 1; zero or more up to rounding. */
    void transfer(long atNanos, double[] transfer) {
        for (int path = 0; path < paths.length; path++) {
            paths[path].at(atNanos, gains, path);
        }
        if (groundRatio > 0) {
            weigh(level.ratio(atNanos));
        }
        response.write(gains, transfer);
    }

    /** Returns the mean power transfer of the band. */
    private double transferred(double[] transfer) {
        double sum = 0;
        for (double power : transfer) {
            sum += power;
        }
        return sum / transfer.length;
    }

    /** Gives ground wave and sky wave the shares of the mean power that they have at the sky wave's level of the moment. */
    private void weigh(double skyRatio) {
        double ground = Math.sqrt((1 + groundRatio) / (skyRatio + groundRatio));
        double sky = ground * Math.sqrt(skyRatio);
        for (int i = 0; i < gains.length; i++) {
            gains[i] *= i < 2 ? ground : sky;
        }
    }

    private void moveTo(long atNanos) {
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
}
