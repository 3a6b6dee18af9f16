package org.ionohaul.livepage;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.report.StudyWords;

/**
 * The page with its controls, as its template wants it.
 *
 * @param scenario what it is about
 * @param question what is asked
 * @param token what the page has to know to be answered
 * @param version of the program
 */
public record PageView(ScenarioOnPage scenario, Question question, String token, String version) {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    /**
     * A control in one of the settings.
     *
     * @param name what stands before its value in the address
     * @param label what it is called by those who only hear the page
     * @param written what stands in the file
     * @param value what is asked
     * @param choices which values there are; empty if it is typed
     * @param chosen those that are taken
     * @param isList whether several are taken at once
     * @param isSecond whether it belongs to the second setting
     */
    public record Field(
            String name,
            String label,
            String written,
            String value,
            List<String> choices,
            List<String> chosen,
            boolean isList,
            boolean isSecond) {
        /** Copies the lists. */
        public Field {
            choices = List.copyOf(choices);
            chosen = List.copyOf(chosen);
        }

        /** Returns whether it holds one number, which can go up and down. */
        public boolean hasSteps() {
            return NUMBER.matcher(written).results().count() == 1;
        }
    }

    /**
     * A quantity, with a field for each setting.
     *
     * @param key its full key
     * @param label what people call it
     * @param meaning what the manual says of it
     * @param fields one, or two if the settings may differ in it
     */
    public record Row(String key, String label, String meaning, List<Field> fields) {
        /** Copies the list. */
        public Row {
            fields = List.copyOf(fields);
        }
    }

    /** Quantities that stand together. */
    public record Part(String heading, List<Row> rows) {
        /** Copies the list. */
        public Part {
            rows = List.copyOf(rows);
        }
    }

    /** One of several things that can be shown. */
    public record Case(int number, String name, boolean isShown) {}

    /** Returns the title of the scenario. */
    public String title() {
        return scenario.scenario().title();
    }

    /** Returns the name of the scenario's file. */
    public String fileName() {
        return String.valueOf(scenario.file().getFileName());
    }

    /** Returns whether two settings are compared. */
    public boolean isComparing() {
        return question.isComparing();
    }

    /** Returns what must be said. */
    public String caution() {
        return StudyWords.CAUTION;
    }

    /** Returns what can be shown as a race. */
    public List<Case> cases() {
        return IntStream.range(0, scenario.cases().size())
                .mapToObj(i -> new Case(i + 1, scenario.cases().get(i), i == question.place()))
                .toList();
    }

    /** Returns the controls. */
    public List<Part> parts() {
        return scenario.controls().groups().stream()
                .map(group -> new Part(
                        group.heading(),
                        group.controls().stream().map(this::row).toList()))
                .toList();
    }

    private Row row(Control control) {
        return new Row(
                control.key(),
                control.label(),
                control.meaning(),
                Stream.of(false, true)
                        .filter(isSecond -> !isSecond || !control.isShared())
                        .map(isSecond -> field(control, isSecond))
                        .toList());
    }

    private Field field(Control control, boolean isSecond) {
        List<Map<String, String>> settings = question.settings();
        String value = settings.get(isSecond ? settings.size() - 1 : 0).getOrDefault(control.key(), control.written());
        return new Field(
                (isSecond ? Question.SECOND : "") + control.key(),
                control.label() + (isSecond ? ", second setting" : ""),
                control.isList() ? listed(Control.names(control.written())) : control.written(),
                value,
                control.choices(),
                control.isList() ? Control.names(value) : List.of(value.replace(' ', '-')),
                control.isList(),
                isSecond);
    }

    private static String listed(List<String> names) {
        return names.stream().sorted().toList().toString();
    }
}
