package org.ionohaul.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.nextrun.NextCsv;
import org.ionohaul.nextrun.NextJson;
import org.ionohaul.nextrun.NextPage;
import org.ionohaul.nextrun.NextQuestion;
import org.ionohaul.nextrun.NextRun;
import org.ionohaul.nextrun.NextText;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says which run to make next. */
@Command(
        name = "next",
        description = {
            "Says which run on the air to make next, before a mode is chosen for a file and its deadline: which run, or which reading"
                    + " of a meter, lowers the chance of a wrong choice most for each minute on the air.",
            "",
            "Takes what is believed of the scenario's uncertain inputs, with --log after learning from it, simulates"
                    + " what each candidate would come to and what would be chosen after it, and counts how often that is"
                    + " wrong. Says so where nothing that fits into the time would change the choice. Where the scenario states"
                    + " signal and noise, a meter may show either; elsewhere it shows the SNR. Prints a summary and writes"
                    + " next.html (with pictures), next.csv and next.json.",
            ""
        },
        mixinStandardHelpOptions = true)
final class NextCommand implements Callable<Integer> {
    /** Draws that are simulated under, unless asked for others. */
    private static final int USUAL_TRIALS = 1000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Mixin
    private final Simulation simulation;

    @Mixin
    private final LogLearning learning = new LogLearning();

    @Option(
            names = "--log",
            paramLabel = "CSV",
            description =
                    "What was run so far: a table as a spreadsheet writes it, a line a run. Nothing if not given.")
    private Optional<Path> log = Optional.empty();

    @Mixin
    private final CaseChoice sent = new CaseChoice();

    @Option(
            names = "--by",
            paramLabel = "TIME",
            description = "The deadline after pressing send; the transfer's first if not given.",
            converter = MinutesConverter.class)
    private Optional<Double> deadlineSeconds = Optional.empty();

    @Option(
            names = "--worth",
            paramLabel = "SHARE",
            description =
                    "From which difference on a mode is a wrong choice: another one keeps the deadline on so many more"
                            + " trials; ${DEFAULT-VALUE} if not given.",
            converter = ShareConverter.class,
            defaultValue = "5 %")
    private double worthIt = 0.05;

    @Option(
            names = "--within",
            paramLabel = "M",
            description =
                    "How long you are willing to be on the air, in minutes or with a unit; ${DEFAULT-VALUE} if not"
                            + " given. A run that takes longer is broken off.",
            converter = MinutesConverter.class,
            defaultValue = "1 h")
    private double limitSeconds = 3600;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description =
                    "How much to send, such as \"4 kB\"; may be repeated. All of the transfer, and a quarter of it, if"
                            + " not given.",
            converter = BytesConverter.class)
    private List<Long> sizes = new ArrayList<>();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description =
                    "A time of day at which to send, such as \"18:30\"; may be repeated. The scenario's clock if not"
                            + " given.")
    private List<String> starts = new ArrayList<>();

    @Option(
            names = "--meter",
            paramLabel = "DB",
            description = "How far a meter may be off, its standard deviation; ${DEFAULT-VALUE} if not given.",
            defaultValue = "3 dB")
    private String meter = "3 dB";

    @Mixin
    private final ResultsPlace out = new ResultsPlace();

    NextCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        NextQuestion question = question(choice.understand(changes()));
        ResultFolder folder = folder(question);
        NotWritten.probe(folder);
        Optional<NextRun> next = simulation.inPool("Simulating", question.sets(), question::answer);
        if (next.isEmpty()) {
            spec.commandLine().getErr().println("Interrupted; nothing can be told from a part.");
            return ExitCode.PARTIAL;
        }
        PrintWriter terminal = spec.commandLine().getOut();
        new NextText(next.get()).lines().forEach(terminal::println);
        terminal.flush();
        if (!next.get().isFitted()) {
            return ExitCode.NOT_WRITTEN;
        }
        Provenance provenance = log.isPresent() ? choice.provenance(log.get()) : choice.provenance();
        NotWritten.write(
                folder,
                List.of(
                        NextPage.of(next.get(), provenance),
                        new NextCsv(next.get()),
                        new NextJson(next.get(), provenance)));
        terminal.println();
        terminal.println("Written to " + folder.path() + ": next.html, next.csv, next.json");
        return ExitCode.DONE;
    }

    /** What is not the scenario's is part of the question, and so of the folder's name. */
    private ResultFolder folder(NextQuestion question) {
        List<Object> names =
                new ArrayList<>(List.of("next", question.transfer().name(), NamedChoice.word(question.direction())));
        question.log().ifPresent(it -> names.add(it.name()));
        names.addAll(learning.names());
        return out.folder(choice.folderName(question.understood().scenario(), names.toArray()));
    }

    /** The file's trials are for a study; so many draws tell candidates apart in a minute or two. */
    private Map<String, String> changes() {
        Map<String, String> changes = new LinkedHashMap<>(simulation.changes());
        changes.putIfAbsent("trials", Integer.toString(USUAL_TRIALS));
        return changes;
    }

    private NextQuestion question(Understood understood) throws ScenarioProblems {
        Scenario scenario = understood.scenario();
        require(scenario.modes().size() > 1, "there is just one mode, so there is nothing to choose");
        Transfer chosen = sent.transfer(scenario);
        double deadline = deadlineSeconds.orElseGet(
                () -> chosen.deadlinesSeconds().stream().findFirst().orElse(0.0));
        require(deadline > 0, "the transfer has no deadline to choose a mode by; name one with --by");
        require(
                deadline <= scenario.horizonSeconds(),
                "--by lies beyond the scenario's horizon; watch longer with --set horizon=\"...\"");
        require(limitSeconds > 0, "--within must be above zero");
        List<String> modes = scenario.modes().stream().map(Mode::name).toList();
        Optional<FieldLog> runs = log.isPresent()
                ? Optional.of(FieldLogReader.read(SourceFiles.DISK, log.get(), modes))
                : Optional.empty();
        return new NextQuestion(
                understood,
                LogLearning.text(choice),
                runs,
                learning.daily(understood),
                learning.gapDb(),
                chosen,
                sent.direction(chosen),
                deadline,
                worthIt,
                limitSeconds,
                sizes,
                starts.stream().map(this::time).toList(),
                meterDb());
    }

    private LocalTime time(String text) {
        try {
            return LocalTime.ofSecondOfDay(Math.round(Quantity.clockSeconds(text)));
        } catch (WrongValue e) {
            throw new ParameterException(spec.commandLine(), "--at: " + e.message() + "\n    " + e.remedy(), e);
        }
    }

    private double meterDb() {
        try {
            double meterDb = Quantity.decibels(meter);
            require(meterDb > 0 && meterDb <= 30, "--meter must be above 0 and at most 30 dB");
            return meterDb;
        } catch (WrongValue e) {
            throw new ParameterException(spec.commandLine(), "--meter: " + e.message() + "\n    " + e.remedy(), e);
        }
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
