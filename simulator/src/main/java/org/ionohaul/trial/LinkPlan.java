package org.ionohaul.trial;

import java.util.List;
import java.util.function.Function;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.Radio;
import org.ionohaul.link.Signals;
import org.ionohaul.link.StationTimes;
import org.ionohaul.link.Timing;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.WaveformPlan;
import org.ionohaul.waveform.Waveforms;

/** What the two stations of a scenario bring to a link in one mode: bursts, rules, times. Shared by all threads. */
final class LinkPlan {
    private final Scenario scenario;
    private final Mode mode;
    private final List<WaveformPlan> dataRates;
    private final WaveformPlan acknowledgement;
    private final WaveformPlan call;
    private final WaveformPlan control;

    LinkPlan(Scenario scenario, Mode mode) {
        this.scenario = scenario;
        this.mode = mode;
        this.dataRates = mode.dataRates().stream()
                .map(dataRate ->
                        Waveforms.plan(dataRate, mode.emission(), mode.arq().combining()))
                .toList();
        this.acknowledgement = control(mode.acknowledgement());
        this.call = control(mode.call());
        this.control = control(mode.control());
    }

    private WaveformPlan control(BurstShape burst) {
        return Waveforms.plan(burst, mode.emission(), Combining.NONE);
    }

    /** Returns what both stations of a link work, with bursts of its own: they belong to one thread. */
    ModeSpec spec() {
        return spec(Waveforms::of);
    }

    /** Returns the same with bursts that remember what they said of two receptions. */
    ModeSpec remembering(Reception first, Reception second) {
        return spec(it -> Waveforms.remembering(Waveforms.of(it), first, second));
    }

    /** Bursts are made anew at each call: they have working memory, for one thread. */
    private ModeSpec spec(Function<WaveformPlan, Waveform> made) {
        Signals signals = new Signals(
                dataRates.stream().map(made).toList(),
                made.apply(acknowledgement),
                made.apply(call),
                made.apply(control));
        return new ModeSpec(signals, mode.arq(), mode.ratePolicy());
    }

    Timing timing(ModeSpec spec) {
        return new Timing(spec, times(End.NEAR), times(End.FAR), scenario.propagationNanos());
    }

    Radio radio(End end) {
        Radio own = scenario.station(end).radio();
        return new Radio(times(end), own.foldBack(), own.busyDetectionNanos());
    }

    private StationTimes times(End end) {
        return mode.times(scenario.station(end).radio().times());
    }
}
