package org.ionohaul.scenario;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a record says when it refuses a value, {@code "windowFrames must be at least 1: 0"}, in parts.
 *
 * @param component the component that it is about; empty if it does not say
 * @param reason what is demanded of it
 */
record Complaint(String component, String reason) {
    private static final Pattern OF_ONE_COMPONENT = Pattern.compile("(\\w+) (.*): [^:]*");

    static Complaint of(IllegalArgumentException refusal) {
        String message = String.valueOf(refusal.getMessage());
        Matcher parts = OF_ONE_COMPONENT.matcher(message);
        return parts.matches() ? new Complaint(parts.group(1), parts.group(2)) : new Complaint("", message);
    }

    /** Returns the key of a group that fills the component. */
    Optional<Key<?>> keyIn(Group group) {
        return group.keys().stream()
                .filter(key -> key.component().equals(component))
                .findFirst();
    }

    /** Returns what is demanded, in the words of a group's keys. */
    String reasonIn(Group group) {
        String words = component.isEmpty() || keyIn(group).isPresent() ? reason : component + " " + reason;
        for (Key<?> key : group.keys()) {
            words = words.replaceAll("\\b" + key.component() + "\\b", Matcher.quoteReplacement(key.name()));
        }
        return words;
    }
}
