package org.ionohaul.scenario;

/**
 * Where a value stands, for what is told of it.
 *
 * @param file the file as the user named it, or where else the value came from
 * @param line the line, from 1; 0 when the value stands in no file
 * @param column the column, from 1; 0 when the value stands in no file
 * @param key full name of the key
 */
public record Place(String file, int line, int column, String key) {
    /** Returns something wrong here. */
    Problem problem(String message, String remedy) {
        return new Problem(file, line, column, key, message, remedy);
    }

    /**
     * Returns something odd here.
     *
     * @param message what is odd
     * @param remedy what to do if it was not meant
     */
    public Warning warning(String message, String remedy) {
        return new Warning(problem(message, remedy));
    }
}
