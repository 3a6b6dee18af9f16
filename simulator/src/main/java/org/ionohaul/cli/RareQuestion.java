package org.ionohaul.cli;

import java.util.List;
import java.util.Optional;
import org.ionohaul.rare.RareMiss;
import org.ionohaul.study.StudyResult;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Whether and how hard to look for rare misses. */
final class RareQuestion {
    private static final String USUAL = "1000";
    private static final int FEWEST = 100;

    @Option(
            names = "--rare",
            paramLabel = "N",
            arity = "0..1",
            fallbackValue = USUAL,
            description =
                    "Tells how seldom a deadline is missed where that is too seldom to be counted (at most 1 in 20 trials): from N"
                            + " trials, " + USUAL
                            + " if no number is given, those that come near a miss are tried on from there. Takes some twenty"
                            + " times N trials a deadline and mode. Four times as many halve the uncertainty.",
            converter = CountConverter.class)
    private Optional<Integer> trees = Optional.empty();

    /**
     * What came of it.
     *
     * @param misses what was looked at to its end
     * @param isCutShort whether an interruption came before every deadline was looked at
     */
    record Look(List<RareMiss> misses, boolean isCutShort) {}

    /** Returns whether it is asked. */
    boolean isAsked() {
        return trees.isPresent();
    }

    /** Refuses too small a number. */
    void require(CommandSpec spec) {
        if (trees.isPresent() && trees.get() < FEWEST) {
            throw new ParameterException(spec.commandLine(), "--rare must be at least " + FEWEST + ": " + trees.get());
        }
    }

    /** Returns what is found of a study's deadlines; nothing if it is not asked. */
    Look look(StudyResult result, Simulation simulation) {
        return trees.map(it -> simulation.inPool("Rare misses", it, pool -> {
                    List<RareMiss> misses = RareMiss.of(result, it, pool);
                    return new Look(misses, pool.isCancelled().getAsBoolean());
                }))
                .orElse(new Look(List.of(), false));
    }
}
