package org.ionohaul.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.cli.NewScenario.Question;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a new scenario file from a few answers. */
@Command(
        name = "new",
        description = {
            "Writes a scenario file of your own link, with remarks: what you answer, and for everything else a default with"
                    + " its source beside it. The file is checked before it is written; nothing is replaced.",
            "",
            "Asks eleven questions; with any of the options below it asks none and takes defaults for the rest.",
            ""
        },
        modelTransformer = NewCommand.QuestionOptions.class,
        mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {
    private static final String MODES = "modes";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "FILE",
            description =
                    "The file to write, such as scenarios/my-link.toml; the modes to compare are those in the folder"
                            + " modes beside it.")
    private Path file = Path.of("");

    /** Gives the command an option for each question. */
    static final class QuestionOptions implements CommandLine.IModelTransformer {
        @Override
        public CommandSpec transform(CommandSpec spec) {
            for (Question question : Question.values()) {
                spec.addOption(OptionSpec.builder("--" + question.option())
                        .paramLabel("TEXT")
                        .type(String.class)
                        .description(question.asks() + "? " + question.standsIn() + " if not given.")
                        .build());
            }
            return spec;
        }
    }

    @Override
    public Integer call() throws NotWritten, WrongValue {
        if (Files.exists(file)) {
            throw new ParameterException(
                    spec.commandLine(),
                    file + " is there already; name another file, or change that one in an editor.");
        }
        NewScenario blank = new NewScenario(file, modes(), Map.of());
        Map<Question, String> given = given();
        write((given.isEmpty() ? asked(blank) : answered(blank, given)).text());
        print("Written to " + file + ". Next:");
        print("    ionohaul check " + file + "    says what the program understood");
        print("    ionohaul study " + file + "    says how long the file takes, how surely");
        return ExitCode.DONE;
    }

    private List<String> modes() {
        Path folder = file.resolveSibling(MODES);
        List<String> names = ScenarioReader.modeNames(folder);
        if (names.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "There are no mode files in " + folder + "; put the scenario beside a folder of modes, such as"
                            + " scenarios/my-link.toml.");
        }
        return names;
    }

    private Map<Question, String> given() {
        Map<Question, String> given = new EnumMap<>(Question.class);
        for (Question question : Question.values()) {
            Optional.ofNullable(spec.findOption("--" + question.option()).<String>getValue())
                    .ifPresent(it -> given.put(question, it));
        }
        return given;
    }

    private NewScenario answered(NewScenario blank, Map<Question, String> given) {
        NewScenario scenario = blank;
        for (Map.Entry<Question, String> answer : given.entrySet()) {
            scenario = scenario.answered(answer.getKey(), answer.getValue());
            problem(scenario).ifPresent(it -> {
                throw new ParameterException(
                        spec.commandLine(), "--" + answer.getKey().option() + ": " + it);
            });
        }
        return scenario;
    }

    /** Asks on the terminal, each question until its answer makes sense; an empty line takes the default. */
    private NewScenario asked(NewScenario blank) {
        BufferedReader answers = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
        print("Eleven questions; Enter takes what stands in brackets.");
        NewScenario scenario = blank;
        for (Question question : Question.values()) {
            scenario = asked(question, scenario, answers);
        }
        return scenario;
    }

    private NewScenario asked(Question question, NewScenario before, BufferedReader answers) {
        while (true) {
            print(question.asks() + "? [" + question.standsIn() + "]");
            String answer = line(answers)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(), "The answers ended before the last question; nothing was written."));
            if (answer.isBlank()) {
                return before;
            }
            NewScenario after = before.answered(question, answer.strip());
            Optional<String> problem = problem(after);
            if (problem.isEmpty()) {
                return after;
            }
            print("    " + problem.get());
        }
    }

    private static Optional<String> line(BufferedReader answers) {
        try {
            return Optional.ofNullable(answers.readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns what is wrong with a scenario, in words for the one who answered; empty if nothing is. */
    private Optional<String> problem(NewScenario scenario) {
        try {
            ScenarioReader.read(SourceFiles.DISK.with(file, scenario.text()), file, Map.of());
            return Optional.empty();
        } catch (WrongValue e) {
            return Optional.of(sentence(e.message(), e.remedy()));
        } catch (ScenarioProblems e) {
            Problem first = e.problems().get(0);
            return Optional.of(sentence(first.message(), first.remedy()));
        }
    }

    private static String sentence(String message, String remedy) {
        return remedy.isEmpty() ? message : message + "; " + remedy;
    }

    private void write(String text) throws NotWritten {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new NotWritten(file, e);
        }
    }

    private void print(String line) {
        PrintWriter terminal = spec.commandLine().getOut();
        terminal.println(line);
        terminal.flush();
    }
}
