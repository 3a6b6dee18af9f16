package org.ionohaul.whatif;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ionohaul.rendering.ChartRecord;

/**
 * Two keys at a time: the first key's values down, the second's across, every cell labelled.
 *
 * @param down the first key
 * @param across the second key
 * @param cells row by row; fewer than combinations when it was interrupted
 */
record SweepMap(Side down, Side across, List<Place> cells) implements ChartRecord {
    /**
     * One of the keys.
     *
     * @param key its name
     * @param values its values
     */
    record Side(String key, List<String> values) {}

    /**
     * What stands in a cell.
     *
     * @param label its lettering
     * @param says what it says when pointed at
     * @param mode place among the colours of the mode that it is about, if it is about one
     * @param value how much it is, if it can be told
     */
    record Place(String label, String says, OptionalInt mode, OptionalDouble value) {}
}
