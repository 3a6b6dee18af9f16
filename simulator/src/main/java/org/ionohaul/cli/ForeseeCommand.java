package org.ionohaul.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.foresight.AnswerReader;
import org.ionohaul.foresight.Calibration;
import org.ionohaul.foresight.CalibrationText;
import org.ionohaul.foresight.Guess;
import org.ionohaul.foresight.Lesson;
import org.ionohaul.foresight.Played;
import org.ionohaul.foresight.Race;
import org.ionohaul.foresight.RaceText;
import org.ionohaul.foresight.RoundsFile;
import org.ionohaul.foresight.Situation;
import org.ionohaul.livepage.LessonPage;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Teaches by prediction: shows a sky and a file, asks, plays the race, and keeps the score. */
@Command(
        name = "foresee",
        description = {
            "Teaches by prediction: shows a sky and a file, asks which mode is through first and how long each takes, plays the"
                    + " race, and tells over rounds how well your forecasts hold.",
            "",
            "Situations are invented, or those of a scenario file. What you foretell is remembered in foreseen.jsonl, each"
                    + " round as soon as it is over; only the first time that a round is played counts. Same file and seed, same"
                    + " rounds. An empty line or Ctrl-D ends; Ctrl-C too, and the next start tells the score. With --page"
                    + " it is asked and played in the browser, with the same rounds and the same score.",
            ""
        },
        mixinStandardHelpOptions = true)
final class ForeseeCommand implements Callable<Integer>, Lesson {
    private static final String INVENTED = "invented";
    private static final String MODES = "modes";

    /** Trials of each situation, unless asked for others. */
    private static final int USUAL_TRIALS = 50;

    private static final int MOST_ROUNDS = 1000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description =
                    "A scenario file: each round has one of its transfers and two of its modes under a sky of its own;"
                            + " situations are invented if not given.")
    private Optional<Path> file = Optional.empty();

    @Mixin
    private final Simulation simulation;

    @Mixin
    private final Screen screen = new Screen();

    @Option(
            names = "--rounds",
            paramLabel = "N",
            description = "How many rounds to play; ${DEFAULT-VALUE} if not given.",
            converter = CountConverter.class,
            defaultValue = "5")
    private int rounds = 5;

    @Option(
            names = "--from",
            paramLabel = "N",
            description = "Number of the first round, from 1; the first that was not played yet if not given.",
            converter = CountConverter.class)
    private Optional<Integer> from = Optional.empty();

    @Option(
            names = "--beside",
            paramLabel = "DIR",
            description = "The folder whose modes race in invented situations; ${DEFAULT-VALUE} if not given.",
            defaultValue = "scenarios")
    private Path beside = Path.of("scenarios");

    @Option(
            names = "--mode",
            paramLabel = "MODE",
            description = "A mode to draw from; repeat it for each, two or more. All if not given.")
    private List<String> modes = new ArrayList<>();

    @Option(names = "--step", description = "Waits for Enter at each step of a race.")
    private boolean isStepped;

    @Option(
            names = "--page",
            description =
                    "Asks and plays in the browser instead, on a page served on this machine alone; Ctrl-C ends it.")
    private boolean isOnPage;

    @Mixin
    private final PagePlace place = new PagePlace();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the rounds are remembered; ${DEFAULT-VALUE} if not given.",
            defaultValue = "results")
    private Path out = Path.of("results");

    ForeseeCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems, NotWritten, WrongValue, IOException {
        require(rounds >= 1 && rounds <= MOST_ROUNDS, "--rounds must be from 1 to " + MOST_ROUNDS + ": " + rounds);
        require(from.orElse(1) >= 1, "--from must be at least 1");
        if (isOnPage) {
            return place.serve(port -> LessonPage.serve(this, port), simulation::awaitInterruption);
        }
        try {
            return play();
        } catch (IOException e) {
            throw new NotWritten(remembered().path(), e);
        }
    }

    private int play() throws IOException, ScenarioProblems, WrongValue {
        Answers answers = simulation.answers(System.in);
        int first = from.isPresent() ? from.get() : next();
        List<Played> now = new ArrayList<>();
        for (int round = first; round < first + rounds; round++) {
            Optional<Played> played = played(round, answers);
            if (played.isEmpty()) {
                break;
            }
            if (keep(played.get())) {
                now.add(played.get());
            } else {
                print("  You played this round before, so that it does not count.");
            }
        }
        tell(now, all());
        return ExitCode.DONE;
    }

    private RoundsFile remembered() {
        return new RoundsFile(out.resolve("foreseen.jsonl"));
    }

    @Override
    public List<Played> all() throws IOException {
        return remembered().all();
    }

    @Override
    public boolean keep(Played played) throws IOException {
        boolean isNew = isNew(all(), played);
        if (isNew) {
            remembered().add(played);
        }
        return isNew;
    }

    @Override
    public int next() throws IOException, ScenarioProblems, WrongValue {
        return nextRound(all(), situation(1).scenario().seed());
    }

    @Override
    public Optional<Race> race(Situation situation) {
        return simulation.inPool("Racing", situation.scenario().trials(), pool -> Race.of(situation, pool));
    }

    @Override
    public Played played(Race race, Guess guess) {
        return Played.of(source(), race.situation().scenario().seed(), race, guess);
    }

    private Optional<Played> played(int round, Answers answers) throws ScenarioProblems, WrongValue {
        Situation situation = situation(round);
        print("");
        TextWrap.lines(
                        "Round " + round + " (" + source() + ", seed "
                                + situation.scenario().seed() + ")",
                        "",
                        screen.width())
                .forEach(this::print);
        situation.sentences().forEach(this::wrap);
        for (int mode = 0; mode < situation.modes().size(); mode++) {
            print("  " + (mode + 1) + "  " + situation.modes().get(mode).title());
        }
        Optional<Guess> guess = guess(situation, answers);
        if (guess.isEmpty()) {
            return Optional.empty();
        }
        Optional<Race> race = race(situation);
        if (race.isEmpty()) {
            return Optional.empty();
        }
        RaceText text = new RaceText(race.get(), screen.width());
        for (List<String> step : text.steps()) {
            step.forEach(this::print);
            if (isStepped) {
                answers.next();
            }
        }
        Played played = played(race.get(), guess.get());
        text.verdict(played).forEach(this::print);
        return Optional.of(played);
    }

    private Optional<Guess> guess(Situation situation, Answers answers) {
        Optional<AnswerReader.Winner> winner = asked(
                "Which is through first, and how sure are you? A number and 50 to 100 %, such as \"1 80\".",
                answers, it -> AnswerReader.winner(it, situation.modes()));
        if (winner.isEmpty()) {
            return Optional.empty();
        }
        List<Guess.Span> spans = new ArrayList<>();
        for (Mode mode : situation.modes()) {
            Optional<Guess.Span> span = asked(
                    "How many minutes does " + mode.title()
                            + " take? A range that would hold 8 of 10 times, such as \"4 9\" or" + " \"20 never\".",
                    answers,
                    AnswerReader::span);
            if (span.isEmpty()) {
                return Optional.empty();
            }
            spans.add(span.get());
        }
        return Optional.of(new Guess(winner.get().mode(), winner.get().sureness(), spans));
    }

    /** What a learner typed, understood. */
    private interface Understanding<T> {
        T of(String text) throws WrongValue;
    }

    /** Asks until the answer makes sense; an empty line, or none, ends. */
    private <T> Optional<T> asked(String question, Answers answers, Understanding<T> understanding) {
        wrap(question);
        while (true) {
            Optional<String> answer = answers.next().filter(it -> !it.isBlank());
            if (answer.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(understanding.of(answer.get()));
            } catch (WrongValue e) {
                wrap(e.message() + "; " + e.remedy());
            }
        }
    }

    /** Returns what situations are drawn from: others are other rounds. */
    private String source() {
        String whole = file.map(it -> String.valueOf(it.getFileName()).replaceFirst("\\.toml$", ""))
                .orElse(INVENTED);
        return modes.isEmpty() ? whole : whole + " with " + String.join(", ", new TreeSet<>(modes));
    }

    @Override
    public Situation situation(int round) throws ScenarioProblems, WrongValue {
        Map<String, String> changes = new LinkedHashMap<>(Map.of("trials", Integer.toString(USUAL_TRIALS)));
        changes.putAll(simulation.changes());
        if (file.isPresent()) {
            return ofFile(ScenarioReader.understand(SourceFiles.DISK, file.get(), changes), round);
        }
        List<String> names = drawnFrom(ScenarioReader.modeNames(beside.resolve(MODES)), it -> it);
        long seed = Long.parseLong(changes.getOrDefault("seed", "1"));
        InventedLink link = InventedLink.of(seed, round, names);
        Path place = beside.resolve("invented.toml");
        changes.putAll(link.changes(seed, Integer.parseInt(changes.getOrDefault("trials", "" + USUAL_TRIALS))));
        Understood understood = ScenarioReader.understand(
                SourceFiles.DISK.with(place, new NewScenario(place, names, link.answers()).text()), place, changes);
        return new Situation(
                asked(
                        understood.scenario(),
                        understood.scenario().transfers().get(0),
                        link.isUpload() ? Direction.UPLOAD : Direction.DOWNLOAD,
                        understood.scenario().modes()),
                understood.sendClockSeconds(),
                round);
    }

    /** Draws one of the file's transfers, ways and pairs of modes. */
    private Situation ofFile(Understood understood, int round) {
        Scenario scenario = understood.scenario();
        UniformRandomProvider random = new TrialStreams(scenario.seed(), round).open(Purpose.SITUATIONS, 0);
        Transfer transfer =
                scenario.transfers().get(random.nextInt(scenario.transfers().size()));
        Direction direction =
                transfer.directions().get(random.nextInt(transfer.directions().size()));
        List<Mode> left = new ArrayList<>(drawnFrom(scenario.modes(), Mode::name));
        while (left.size() > 2) {
            left.remove(random.nextInt(left.size()));
        }
        return new Situation(asked(scenario, transfer, direction, left), understood.sendClockSeconds(), round);
    }

    private <T> List<T> drawnFrom(List<T> all, Function<T, String> nameOf) {
        List<T> some = modes.isEmpty()
                ? all
                : new TreeSet<>(modes)
                        .stream()
                                .map(it -> NamedChoice.of(spec, "--mode", Optional.of(it), all, nameOf))
                                .toList();
        require(
                some.size() >= 2,
                "a race takes two modes; name more with --mode, or with --beside a folder that has them");
        return some;
    }

    private static Scenario asked(Scenario scenario, Transfer transfer, Direction direction, List<Mode> modes) {
        Transfer one = new Transfer(
                transfer.name(),
                transfer.files(),
                List.of(direction),
                transfer.deadlinesSeconds(),
                transfer.acceptsErrors());
        return scenario.sending(List.of(one), scenario.horizonSeconds()).racing(modes);
    }

    private int nextRound(List<Played> all, long seed) {
        return 1
                + all.stream()
                        .filter(it -> it.source().equals(source()) && it.seed() == seed)
                        .mapToInt(Played::round)
                        .max()
                        .orElse(0);
    }

    private static boolean isNew(List<Played> all, Played played) {
        return all.stream()
                .noneMatch(it -> it.source().equals(played.source())
                        && it.seed() == played.seed()
                        && it.round() == played.round());
    }

    private void tell(List<Played> now, List<Played> all) {
        print("");
        if (all.isEmpty()) {
            print("No round was played.");
            return;
        }
        if (!now.isEmpty() && now.size() < all.size()) {
            print(now.size() == 1 ? "This round:" : "These " + now.size() + " rounds:");
            new CalibrationText(new Calibration(now)).lines(screen.width()).forEach(this::print);
            print("");
        }
        print(all.size() == 1 ? "One round so far:" : "All " + all.size() + " rounds so far:");
        new CalibrationText(new Calibration(all)).lines(screen.width()).forEach(this::print);
    }

    private void wrap(String text) {
        TextWrap.lines(text, "  ", screen.width()).forEach(this::print);
    }

    private void print(String line) {
        PrintWriter terminal = spec.commandLine().getOut();
        terminal.println(line);
        terminal.flush();
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
