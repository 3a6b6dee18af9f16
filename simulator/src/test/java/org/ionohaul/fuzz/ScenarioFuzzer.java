package org.ionohaul.fuzz;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.analysis.Findings;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.grid.CaseTableReader;
import org.ionohaul.grid.GridQuestion;
import org.ionohaul.placing.LogPlacement;
import org.ionohaul.placing.PlacementText;
import org.ionohaul.report.ReportHtml;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.report.TextReport;
import org.ionohaul.report.TrialsCsv;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.ionohaul.study.TrialRow;
import org.ionohaul.traffic.NetCsv;
import org.ionohaul.traffic.NetFindings;
import org.ionohaul.traffic.NetJson;
import org.ionohaul.traffic.NetPage;
import org.ionohaul.traffic.NetPoint;
import org.ionohaul.traffic.NetSheet;
import org.ionohaul.traffic.NetText;
import org.ionohaul.trial.NetTrial;
import org.ionohaul.trial.NetTrials;
import org.ionohaul.trial.Trials;

/**
 * What must hold of any text that is given as scenario, modes, tables and settings: it is read, and then its trials run and can
 * be reported, logged runs placed and cases checked, a net run and reported, or its problems are told in lines of bounded length and number that a
 * terminal only shows. Anything else that is thrown is a fault.
 */
public final class ScenarioFuzzer {
    private static final int MOST_LINES = 21;
    private static final int LONGEST_PROBLEM = 2000;
    /** Nobody writes more, and a fuzzer that does learns nothing by it. */
    private static final int LONGEST_INPUT = 60_000;

    private static final double LONGEST_HORIZON_SECONDS = 60;
    /** Every so many accepted texts are run as a study and reported; the others are run for one trial. */
    private static final int STUDY_EVERY = 16;

    private ScenarioFuzzer() {}

    /** Tries one text; what the fuzzer calls. */
    public static void fuzzerTestOneInput(byte[] input) throws IOException {
        if (input.length <= LONGEST_INPUT) {
            isAccepted(new String(input, StandardCharsets.UTF_8));
        }
    }

    /** Tries one text and returns whether it was accepted. */
    static boolean isAccepted(String text) throws IOException {
        WrittenInput input = WrittenInput.of(text);
        SourceFiles files = SourceFiles.of(input.files());
        boolean isStudy = text.hashCode() % STUDY_EVERY == 0;
        if (NetReader.isNet(files, WrittenInput.SCENARIO)) {
            return isReadOrTold(() -> runNet(files, input.changes()));
        }
        return isReadOrTold(() -> {
            Understood understood = ScenarioReader.understand(files, WrittenInput.SCENARIO, input.changes());
            run(understood.scenario(), files, input.changes(), isStudy);
            for (Path table : input.tables()) {
                isReadOrTold(() -> place(table, files, understood, isStudy));
                isReadOrTold(() -> new GridQuestion(files, WrittenInput.SCENARIO, input.changes(), Optional.empty(), 2)
                        .check(CaseTableReader.read(files, table)));
            }
        });
    }

    /** What reads something and goes on with it. */
    private interface Reading {
        void read() throws IOException, ScenarioProblems;
    }

    private static boolean isReadOrTold(Reading reading) throws IOException {
        try {
            reading.read();
            return true;
        } catch (ScenarioProblems e) {
            e.told().forEach(ScenarioFuzzer::requireShowable);
            require(!e.problems().isEmpty() && e.told().size() <= MOST_LINES, "number of problems");
            return false;
        }
    }

    private static void place(Path table, SourceFiles files, Understood understood, boolean isSimulated)
            throws ScenarioProblems {
        FieldLog log = FieldLogReader.read(
                files,
                table,
                understood.scenario().modes().stream().map(Mode::name).toList());
        if (isSimulated) {
            Understood brief = new Understood(
                    understood.scenario().tried(2),
                    understood.sendClockSeconds(),
                    understood.distance(),
                    understood.warnings());
            LogPlacement placement =
                    LogPlacement.of(brief, log, TrialPool.of(1)).orElseThrow();
            new PlacementText(placement).lines().forEach(ScenarioFuzzer::requirePlain);
        }
    }

    private static void run(Scenario scenario, SourceFiles files, Map<String, String> changes, boolean isStudy)
            throws IOException {
        Scenario brief = scenario.tried(isStudy ? 3 : 1)
                .sending(scenario.transfers(), Math.min(scenario.horizonSeconds(), LONGEST_HORIZON_SECONDS));
        if (!isStudy) {
            new Trials(brief).run(0).forEach(result -> TrialRow.of(0, result));
            return;
        }
        StudyResult result = new StudyRunner(brief, new Trials(brief)::run, 1, (done, asked) -> {}, () -> false).run();
        Provenance provenance = ScenarioReader.provenance(files, WrittenInput.SCENARIO, changes);
        Findings findings = Findings.of(result, provenance);
        new TextReport(findings).lines().forEach(ScenarioFuzzer::requirePlain);
        for (var entry : List.of(new ReportHtml(findings), new SummaryJson(findings), new TrialsCsv(result))) {
            entry.writeTo(OutputStream.nullOutputStream());
        }
    }

    private static void runNet(SourceFiles files, Map<String, String> changes) throws IOException, ScenarioProblems {
        NetScenario read = NetReader.read(files, WrittenInput.SCENARIO, changes).scenario();
        double horizonSeconds = Math.min(read.horizonSeconds(), LONGEST_HORIZON_SECONDS);
        NetScenario net = new NetScenario(
                read.name(),
                read.title(),
                read.seed(),
                1,
                horizonSeconds,
                read.clockSeconds(),
                Math.min(read.warmUpSeconds(), horizonSeconds / 2),
                read.groups(),
                read.gateway(),
                read.gatewayOperator(),
                read.discipline(),
                read.audibility());
        new NetSheet(net).lines().forEach(ScenarioFuzzer::requirePlain);
        NetTrial trial = new NetTrials(net).run(0, true);
        NetFindings findings = NetFindings.of(net, List.of(trial));
        new NetText(findings).lines().forEach(ScenarioFuzzer::requirePlain);
        Provenance provenance = NetReader.provenance(files, WrittenInput.SCENARIO, changes);
        List<NetPoint> points = List.of(new NetPoint("", findings));
        for (var entry : List.of(
                NetPage.of(findings, trial, provenance),
                new NetCsv("", points),
                new NetJson("", points, provenance, net.trials()))) {
            entry.writeTo(Writer.nullWriter());
        }
    }

    private static void requireShowable(String problem) {
        require(problem.length() <= LONGEST_PROBLEM, "length of a problem");
        problem.lines().forEach(ScenarioFuzzer::requirePlain);
    }

    private static void requirePlain(String line) {
        require(
                line.chars().noneMatch(it -> it != '\t' && Character.isISOControl(it)),
                "a control character in: " + line);
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
