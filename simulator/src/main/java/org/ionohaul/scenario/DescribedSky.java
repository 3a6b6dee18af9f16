package org.ionohaul.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyConditions;

/**
 * The sky as read from a scenario file.
 *
 * @param description the sky up to its draws
 * @param levels the levels at the ends where they are stated, up to the draws
 * @param readings what was read at the ends
 * @param uncertainKeys the keys it draws for, in alphabetical order
 */
record DescribedSky(
        Described<SkyConditions> description,
        Map<End, Described<Levels>> levels,
        Map<End, ReadSeries> readings,
        List<String> uncertainKeys)
        implements SkyDescription {
    DescribedSky {
        levels = Map.copyOf(levels);
        readings = Map.copyOf(readings);
        uncertainKeys = List.copyOf(uncertainKeys);
    }

    @Override
    public SkyConditions conditions(Draws draws) {
        return description.in(draws);
    }

    @Override
    public Optional<ReadSeries> readings(End end) {
        return Optional.ofNullable(readings.get(end));
    }

    @Override
    public Optional<Levels> levels(End end, Draws draws) {
        return Optional.ofNullable(levels.get(end)).map(it -> it.in(draws));
    }
}
