package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.TrialPick;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.trace.SkyGauge;
import org.ionohaul.trace.StoryPage;
import org.ionohaul.trace.TraceCsv;
import org.ionohaul.trace.TraceJsonLines;
import org.ionohaul.trace.TraceRecorder;
import org.ionohaul.trace.TraceStory;
import org.ionohaul.trace.TraceText;
import org.ionohaul.trial.Trials;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells the story of one trial. */
@Command(
        name = "trace",
        description = {
            "Tells the story of one trial: every burst and what became of it, every change of data rate and why, where"
                    + " the time went.",
            "",
            "Prints the story as text and writes a folder with it as a page (story.html), as story.txt, story.csv and"
                    + " story.jsonl. Watching changes no result.",
            ""
        },
        mixinStandardHelpOptions = true)
final class TraceCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Option(names = "--mode", paramLabel = "MODE", description = "Which mode; the file's first if not given.")
    private Optional<String> mode = Optional.empty();

    @Mixin
    private final CaseChoice sent = new CaseChoice();

    @Option(names = "--trial", paramLabel = "N", description = "Which trial, from 0.", converter = WholeConverter.class)
    private Optional<Long> trial = Optional.empty();

    @Option(
            names = "--pick",
            paramLabel = "KIND",
            description =
                    "Instead of --trial: looks through the scenario's trials for a telling one. median: the one in the"
                            + " middle; slowest: the last to deliver; lost: one that lost its link. By the way it failed:"
                            + " never-linked (no call was answered), gave-up (the link was lost and all redials used up),"
                            + " out-of-patience (an operator broke off), horizon (still sending when watching ended).")
    private Optional<String> pick = Optional.empty();

    @Mixin
    private ResultsPlace out = new ResultsPlace();

    @Override
    public Integer call() throws ScenarioProblems, NotWritten {
        if (trial.isPresent() && pick.isPresent()) {
            throw wrong("--trial and --pick exclude each other");
        }
        Scenario scenario = choice.read();
        Mode itsMode = NamedChoice.of(spec, "--mode", mode, scenario.modes(), Mode::name);
        Transfer itsTransfer = sent.transfer(scenario);
        Direction itsDirection = sent.direction(itsTransfer);
        TraceStory story = story(scenario, itsTransfer, itsDirection, itsMode);
        show(story, folder(story));
        return ExitCode.DONE;
    }

    private TraceStory story(Scenario scenario, Transfer itsTransfer, Direction itsDirection, Mode itsMode) {
        Trials trials = new Trials(scenario);
        LongFunction<SessionResult> unwatched =
                number -> trials.run(itsTransfer, itsDirection, itsMode, number, SessionTrace.NONE);
        long number = pick.isPresent() ? picked(scenario, unwatched) : trial.orElse(0L);
        if (number < 0) {
            throw wrong("--trial must not be negative: " + number);
        }
        TraceRecorder recorder = new TraceRecorder(new SkyGauge(trials.skies().sky(number), itsMode.emission()));
        SessionResult result = trials.run(itsTransfer, itsDirection, itsMode, number, recorder);
        long wrongRateNanos = trials.wrongRateNanos(itsTransfer, itsDirection, itsMode, number);
        return new TraceStory(scenario, itsTransfer, itsDirection, itsMode, number, recorder, result, wrongRateNanos);
    }

    private long picked(Scenario scenario, LongFunction<SessionResult> unwatched) {
        String kind = pick.orElseThrow();
        TrialPick telling = NamedChoice.of(spec, "--pick", pick, List.of(TrialPick.values()), NamedChoice::word);
        List<TrialPick.Candidate> candidates = LongStream.range(0, scenario.trials())
                .mapToObj(number -> new TrialPick.Candidate(number, unwatched.apply(number)))
                .toList();
        return telling.among(candidates)
                .orElseThrow(() -> wrong("none of the " + candidates.size() + " trials is one to --pick as " + kind
                        + "; there are: "
                        + Stream.of(TrialPick.values())
                                .filter(it -> it.among(candidates).isPresent())
                                .map(NamedChoice::word)
                                .collect(Collectors.joining(", "))))
                .trial();
    }

    private ResultFolder folder(TraceStory story) {
        return out.folder(choice.folderName(
                story.scenario(),
                "trace",
                story.transfer().name(),
                NamedChoice.word(story.direction()),
                story.mode().name(),
                story.trial()));
    }

    private void show(TraceStory story, ResultFolder folder) throws NotWritten {
        TraceText text = new TraceText(story);
        PrintWriter terminal = spec.commandLine().getOut();
        text.lines().forEach(terminal::println);
        terminal.flush();
        List<ResultFolder.Text> files = List.of(
                StoryPage.of(story, Provenance.programVersion()), text, new TraceCsv(story), new TraceJsonLines(story));
        NotWritten.write(folder, files);
        terminal.println();
        terminal.println("Written to " + folder.path() + ": " + ResultFolder.names(files));
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
