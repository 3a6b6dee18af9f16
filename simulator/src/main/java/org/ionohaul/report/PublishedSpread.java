package org.ionohaul.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.statistics.Estimate;

/** Luck against ignorance for one mode, as {@code summary.json} has it. */
record PublishedSpread(String mode, Estimate restShare, List<Input> unknownInputs, List<String> worthMeasuring) {
    /** An input given as a range or distribution. */
    record Input(String key, Estimate spreadShare, double pValue, List<Swing> deadlines) {
        static Input of(SpreadSplit.InputShare input, List<DeadlineChance> deadlines) {
            return new Input(
                    input.key(),
                    input.share(),
                    input.pValue(),
                    IntStream.range(0, input.swings().size())
                            .mapToObj(i -> new Swing(
                                    deadlines.get(i).deadlineSeconds(),
                                    input.swings().get(i)))
                            .toList());
        }
    }

    /** How far an input moves the chance of a deadline. */
    record Swing(double deadlineSeconds, Estimate chanceSwing) {}

    static List<PublishedSpread> all(CaseSummary summary, List<Optional<SpreadSplit>> spreads) {
        return IntStream.range(0, spreads.size())
                .boxed()
                .flatMap(i -> spreads.get(i).map(split -> of(summary.modes().get(i), split)).stream())
                .toList();
    }

    private static PublishedSpread of(ModeSummary mode, SpreadSplit split) {
        return new PublishedSpread(
                mode.mode().name(),
                split.rest(),
                split.inputs().stream()
                        .map(it -> Input.of(it, mode.deadlines()))
                        .toList(),
                split.worthMeasuring());
    }
}
