package org.ionohaul.livepage;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a page asks, as its address says it.
 *
 * @param settings the setting or the two settings: what is changed in each, by key
 * @param place of the case whose race is shown, among the scenario's
 * @param unknown names that are those of no control
 */
record Question(List<Map<String, String>> settings, int place, Set<String> unknown) {
    /** Stands before the keys of the second setting. */
    static final String SECOND = "second.";

    static final String COMPARE = "compare";
    static final String CASE = "case";

    Question {
        settings = List.copyOf(settings);
        unknown = Set.copyOf(unknown);
    }

    /**
     * Reads the query of an address.
     *
     * @param query as it was sent; may be empty
     */
    static Question of(String query, Controls controls) {
        Map<String, Control> known = controls.byKey();
        Map<String, String> first = new TreeMap<>();
        Map<String, String> second = new TreeMap<>();
        Set<String> unknown = new TreeSet<>();
        int place = 0;
        boolean isComparing = false;
        for (Map.Entry<String, String> each : pairs(query).entrySet()) {
            String name = each.getKey();
            boolean isSecond = name.startsWith(SECOND);
            Control control = known.get(isSecond ? name.substring(SECOND.length()) : name);
            if (name.equals(COMPARE)) {
                isComparing = true;
            } else if (name.equals(CASE)) {
                place = place(each.getValue(), controls.cases().size());
            } else if (control == null || (isSecond && control.isShared()) || !control.allows(each.getValue())) {
                unknown.add(name);
            } else if (!each.getValue().strip().equals(control.written())) {
                (isSecond ? second : first).put(control.key(), each.getValue().strip());
            }
        }
        controls.shared().filter(first::containsKey).forEach(key -> second.put(key, first.getOrDefault(key, "")));
        return new Question(
                Stream.of(first, second)
                        .limit(isComparing ? 2 : 1)
                        .map(Collections::unmodifiableMap)
                        .toList(),
                place,
                unknown);
    }

    private static int place(String number, int cases) {
        return number.matches("[1-9]\\d{0,2}") ? Math.min(cases, Integer.parseInt(number)) - 1 : 0;
    }

    /** Returns a query's names and values, of equal names the last. */
    static Map<String, String> pairs(String query) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : query.split("&", -1)) {
            if (!pair.isEmpty()) {
                int equals = pair.indexOf('=');
                pairs.put(
                        decoded(equals < 0 ? pair : pair.substring(0, equals)),
                        equals < 0 ? "" : decoded(pair.substring(equals + 1)));
            }
        }
        return pairs;
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            // Half an escape is told as what it is: a value that nothing understands.
            return text;
        }
    }

    /** Returns whether two settings are asked for. */
    boolean isComparing() {
        return settings.size() > 1;
    }

    /** Returns the keys in which the two settings differ. */
    Set<String> keysThatDiffer() {
        Map<String, String> first = settings.get(0);
        Map<String, String> second = settings.get(settings.size() - 1);
        return Stream.concat(first.keySet().stream(), second.keySet().stream())
                .filter(key -> !first.getOrDefault(key, "").equals(second.getOrDefault(key, "")))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
