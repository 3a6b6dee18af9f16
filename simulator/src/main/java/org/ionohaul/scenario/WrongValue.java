package org.ionohaul.scenario;

/** Says why a value can't be read and what would be right; turned into a {@link Problem} where the place is known. */
final class WrongValue extends Exception {
    private static final long serialVersionUID = 1;

    private final String remedy;

    WrongValue(String message, String remedy) {
        super(message, null, false, false);
        this.remedy = remedy;
    }

    String message() {
        return String.valueOf(getMessage());
    }

    String remedy() {
        return remedy;
    }
}
