package org.ionohaul.scenario;

import java.util.List;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyConditions;

/** The sky as the scenario describes it: known up to the inputs that are distributions. */
@FunctionalInterface
public interface SkyDescription {
    /**
     * Returns the conditions of one trial.
     *
     * @param draws where the uncertain inputs' chance comes from
     */
    SkyConditions conditions(Draws draws);

    /**
     * Returns the levels at an end, in one trial; empty if the scenario states just their ratio.
     *
     * @param draws where the uncertain inputs' chance comes from
     */
    default Optional<Levels> levels(End end, Draws draws) {
        return Optional.empty();
    }

    /** Returns what was read at an end over a while; empty if its level is stated. */
    default Optional<ReadSeries> readings(End end) {
        return Optional.empty();
    }

    /** Returns the keys whose values are distributions, in alphabetical order; none if everything is known. */
    default List<String> uncertainKeys() {
        return List.of();
    }
}
