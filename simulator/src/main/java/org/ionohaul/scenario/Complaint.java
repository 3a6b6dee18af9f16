package org.ionohaul.scenario;

import java.util.Optional;
import java.util.regex.Matcher;
import org.ionohaul.limits.OutOfRange;

/**
 * A record's refusal of a value, in the words of the keys that fill the record.
 *
 * @param refusal what the record says
 * @param group the keys
 */
record Complaint(OutOfRange refusal, Group group) {
    /** Returns the key that fills the refused component. */
    Optional<Key<?>> key() {
        return group.keys().stream()
                .filter(key -> key.component().equals(refusal.component()))
                .findFirst();
    }

    /** Returns what is demanded; of which component, where no key fills it. */
    String demand() {
        String words = key().isPresent() ? refusal.demand() : refusal.component() + " " + refusal.demand();
        for (Key<?> key : group.keys()) {
            words = words.replaceAll("\\b" + key.component() + "\\b", Matcher.quoteReplacement(key.name()));
        }
        return words;
    }
}
