package org.ionohaul.scenario;

import java.util.List;
import org.ionohaul.channel.SkyConditions;

/**
 * The sky as read from a scenario file.
 *
 * @param description the sky up to its draws
 * @param uncertainKeys the keys it draws for, in alphabetical order
 */
record DescribedSky(Described<SkyConditions> description, List<String> uncertainKeys) implements SkyDescription {
    DescribedSky {
        uncertainKeys = List.copyOf(uncertainKeys);
    }

    @Override
    public SkyConditions conditions(Draws draws) {
        return description.in(draws);
    }
}
