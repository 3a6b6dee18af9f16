package org.ionohaul.scenario;

import java.util.List;
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

    /** Returns the keys whose values are distributions, in alphabetical order; none if everything is known. */
    default List<String> uncertainKeys() {
        return List.of();
    }
}
