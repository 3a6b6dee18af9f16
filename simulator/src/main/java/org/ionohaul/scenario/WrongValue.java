package org.ionohaul.scenario;

/** Says why a value can't be read and what would be right; turned into a {@link Problem} where the place is known. */
public final class WrongValue extends Exception {
    private static final long serialVersionUID = 1;

    private final String remedy;

    /**
     * Makes a refusal.
     *
     * @param message what is wrong
     * @param remedy what would be right; may be empty
     */
    public WrongValue(String message, String remedy) {
        super(message, null, false, false);
        this.remedy = remedy;
    }

    /** Returns what is wrong. */
    public String message() {
        return String.valueOf(getMessage());
    }

    /** Returns what would be right; may be empty. */
    public String remedy() {
        return remedy;
    }
}
