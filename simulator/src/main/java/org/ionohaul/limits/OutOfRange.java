package org.ionohaul.limits;

/**
 * Thrown by a rule record that refuses one of its values. Whoever reads the values from a file can tell it to the user as
 * a problem of the key behind the component; any other {@link IllegalArgumentException} is a fault of the program.
 */
public final class OutOfRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final String component;
    private final String demand;

    private OutOfRange(String component, String demand, Object value) {
        super(component + " " + demand + ": " + value);
        this.component = component;
        this.demand = demand;
    }

    /**
     * Throws unless a value is in range. Say the range positively: a comparison with NaN never holds.
     *
     * @param isInRange whether it is
     * @param component name of the record's component
     * @param demand what is demanded of it, such as {@code must be at least 1}; may name other components
     * @param value the value
     */
    public static void unless(boolean isInRange, String component, String demand, Object value) {
        if (!isInRange) {
            throw new OutOfRange(component, demand, value);
        }
    }

    /** Returns the name of the component whose value is refused. */
    public String component() {
        return component;
    }

    /** Returns what is demanded of the value. */
    public String demand() {
        return demand;
    }
}
