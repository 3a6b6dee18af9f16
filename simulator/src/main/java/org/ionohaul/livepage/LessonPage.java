package org.ionohaul.livepage;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.foresight.AnswerReader;
import org.ionohaul.foresight.Calibration;
import org.ionohaul.foresight.CalibrationText;
import org.ionohaul.foresight.Guess;
import org.ionohaul.foresight.Lesson;
import org.ionohaul.foresight.Played;
import org.ionohaul.foresight.Race;
import org.ionohaul.foresight.RacePicture;
import org.ionohaul.foresight.RaceText;
import org.ionohaul.foresight.Situation;
import org.ionohaul.livepage.LessonView.Filled;
import org.ionohaul.livepage.PageServer.Answer;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.JarText;
import org.ionohaul.rendering.PageScript;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.WrongValue;

/**
 * Serves the rounds of a lesson as pages, on this machine alone: a question is a form, its answer stands in the address. Only the
 * first answer to a round counts, so that a page can be reloaded.
 */
public final class LessonPage implements ServedPage {
    private static final int LAST_ROUND = 1_000_000;

    private final Lesson lesson;
    private final PageServer server;

    private LessonPage(Lesson lesson, PageServer server) {
        this.lesson = lesson;
        this.server = server;
    }

    /**
     * Begins to serve.
     *
     * @param lesson the rounds
     * @param port where to listen; 0 for any free port
     * @throws IOException if nobody can listen there
     */
    public static LessonPage serve(Lesson lesson, int port) throws IOException {
        PageServer server = PageServer.on(port);
        LessonPage page = new LessonPage(lesson, server);
        server.answer("/", page::page, false);
        server.answer("/lesson.js", it -> PageServer.script(JarText.beside(LessonPage.class, "lesson.js")), false);
        server.answer("/pictures.js", it -> PageServer.script(PageScript.pictures()), false);
        server.start();
        return page;
    }

    /** Returns the address of the first page. */
    @Override
    public URI address() {
        return server.address();
    }

    @Override
    public void close() {
        server.close();
    }

    /** One at a time: a round is simulated by all threads there are, and written down. */
    private synchronized Answer page(HttpExchange exchange) throws IOException, ScenarioProblems {
        Map<String, String> asked = Question.pairs(
                Objects.requireNonNullElse(exchange.getRequestURI().getRawQuery(), ""));
        try {
            Situation situation = lesson.situation(round(asked));
            boolean isAnswer = server.rules().isToken(asked.getOrDefault("token", ""));
            Filled filled = isAnswer ? filled(asked, situation) : blank(situation);
            return isAnswer && filled.isRight() ? played(situation, filled) : shown(view(situation, filled));
        } catch (WrongValue e) {
            return new Answer(400, PageServer.PLAIN, e.message() + "; " + e.remedy());
        }
    }

    private int round(Map<String, String> asked) throws IOException, ScenarioProblems, WrongValue {
        String round = asked.getOrDefault("round", "");
        return round.matches("[1-9]\\d{0,5}") ? Math.min(LAST_ROUND, Integer.parseInt(round)) : lesson.next();
    }

    private static Filled blank(Situation situation) {
        int modes = situation.modes().size();
        return new Filled("", "", Collections.nCopies(modes, ""), Collections.nCopies(modes + 1, ""));
    }

    private static Filled filled(Map<String, String> asked, Situation situation) {
        String winner = asked.getOrDefault("winner", "");
        String sureness = asked.getOrDefault("sureness", "");
        List<String> spans = IntStream.rangeClosed(1, situation.modes().size())
                .mapToObj(it -> asked.getOrDefault("span" + it, ""))
                .toList();
        List<String> problems = new ArrayList<>();
        problems.add(problem(() -> AnswerReader.winner(winner + " " + sureness, situation.modes())));
        spans.forEach(it -> problems.add(problem(() -> AnswerReader.span(it))));
        return new Filled(winner, sureness, spans, problems);
    }

    /** What is read of a field. */
    private interface Reading {
        Object read() throws WrongValue;
    }

    private static String problem(Reading reading) {
        try {
            reading.read();
            return "";
        } catch (WrongValue e) {
            return e.message() + "; " + e.remedy();
        }
    }

    private Answer played(Situation situation, Filled filled) throws IOException, WrongValue {
        Optional<Race> race = lesson.race(situation);
        if (race.isEmpty()) {
            return new Answer(503, PageServer.PLAIN, "The program is being ended.");
        }
        List<Guess.Span> spans = new ArrayList<>();
        for (String span : filled.spans()) {
            spans.add(AnswerReader.span(span));
        }
        AnswerReader.Winner winner = AnswerReader.winner(filled.winner() + " " + filled.sureness(), situation.modes());
        Played played = lesson.played(race.get(), new Guess(winner.mode(), winner.sureness(), spans));
        List<String> verdict = new ArrayList<>(RaceText.verdict(race.get(), played));
        if (!lesson.keep(played)) {
            verdict.add("You played this round before, so that it does not count.");
        }
        return shown(new LessonView(
                situation.round(),
                situation.sentences(),
                names(situation),
                server.rules().token(),
                filled,
                verdict,
                List.of(chart(race.get(), spans, verdict)),
                score()));
    }

    private static Chart chart(Race race, List<Guess.Span> spans, List<String> verdict) {
        return new Chart(
                "race",
                "The race",
                "What the receiver holds over time. Below, what you said of each mode, and a dot where it was through.",
                "A line that rises in steps, one a mode. " + String.join(" ", verdict),
                new RacePicture(race, spans),
                Table.NONE);
    }

    private LessonView view(Situation situation, Filled filled) throws IOException {
        return new LessonView(
                situation.round(),
                situation.sentences(),
                names(situation),
                server.rules().token(),
                filled,
                List.of(),
                List.of(),
                score());
    }

    private static List<String> names(Situation situation) {
        return situation.modes().stream().map(Mode::title).toList();
    }

    private List<String> score() throws IOException {
        List<Played> all = lesson.all();
        return all.isEmpty() ? List.of() : new CalibrationText(new Calibration(all)).sentences();
    }

    private static Answer shown(LessonView view) {
        return new Answer(200, PageServer.HTML, PageServer.rendered("lesson.jte", view));
    }
}
