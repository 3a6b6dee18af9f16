package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ionohaul.waveform.BurstShape;

/** Turns what a scenario says of files and deadlines into transfers. */
final class TransferReader {
    private static final double LEAST_USUAL_SECONDS = 5;

    private final double sendClockSeconds;
    private final double horizonSeconds;
    private boolean usesClock;

    /**
     * Makes a reader.
     *
     * @param sendClockSeconds time of day when send is pressed, in seconds since midnight
     * @param horizonSeconds how long a trial is watched: nothing can be said of deadlines beyond
     */
    TransferReader(double sendClockSeconds, double horizonSeconds) {
        this.sendClockSeconds = sendClockSeconds;
        this.horizonSeconds = horizonSeconds;
    }

    /** Returns the transfers; worthless if the document had a problem. */
    List<Transfer> transfers(List<Section> sections) {
        List<Transfer> transfers = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Section section : sections) {
            Transfer transfer = transfer(section);
            if (!names.add(transfer.name())) {
                section.problem(
                        ScenarioFormat.TRANSFER_NAME,
                        "\"" + transfer.name() + "\" is the name of an earlier transfer",
                        "give each transfer its own name");
            }
            transfers.add(transfer);
        }
        return transfers;
    }

    private Transfer transfer(Section section) {
        List<PayloadFile> files = section.someParts(ScenarioFormat.FILE).stream()
                .map(TransferReader::payloadFile)
                .toList();
        Transfer transfer = section.build(() -> new Transfer(
                section.get(ScenarioFormat.TRANSFER_NAME),
                files,
                section.get(ScenarioFormat.DIRECTIONS),
                deadlinesSeconds(section),
                section.get(ScenarioFormat.ACCEPT_ERRORS)));
        refuseDeadlinesBeyondTheHorizon(section, transfer);
        if (files.size() > Transfer.MOST_FILES) {
            section.problem(
                    "has " + files.size() + " files; a transfer has at most " + Transfer.MOST_FILES,
                    "put several into one, or make more than one transfer of them");
        }
        return transfer;
    }

    /** Returns whether a deadline is a time of day. */
    boolean usesClock() {
        return usesClock;
    }

    /** Warns of what would take longer than a trial is watched even at each mode's highest data rate without a loss. */
    void warnOfHopeless(List<Section> sections, List<Transfer> transfers, List<Mode> modes) {
        double bytesPerSecond = modes.stream()
                .flatMap(mode -> mode.dataRates().stream())
                .map(BurstShape::frame)
                .mapToDouble(frame -> frame.payloadBytes() / frame.airtimeSeconds())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        for (int i = 0; i < transfers.size(); i++) {
            if (transfers.get(i).totalBytes() > bytesPerSecond * horizonSeconds) {
                sections.get(i)
                        .warn(
                                ScenarioFormat.TRANSFER_NAME,
                                "can't be through within the horizon, not even at the highest data rate of any mode");
            }
        }
    }

    private List<Double> deadlinesSeconds(Section section) {
        List<Deadline> deadlines = section.find(ScenarioFormat.DEADLINES).orElse(List.of());
        usesClock |= deadlines.stream().anyMatch(Deadline::isClock);
        if (deadlines.stream().anyMatch(it -> !it.isClock() && it.seconds() < LEAST_USUAL_SECONDS)) {
            section.warn(ScenarioFormat.DEADLINES, "is unusual: hardly any link is open within 5 s");
        }
        return deadlines.stream()
                .map(deadline -> deadline.afterSend(sendClockSeconds))
                .toList();
    }

    private void refuseDeadlinesBeyondTheHorizon(Section section, Transfer transfer) {
        for (int i = 0; i < transfer.deadlinesSeconds().size(); i++) {
            if (horizonSeconds > 0 && transfer.deadlinesSeconds().get(i) > horizonSeconds) {
                section.problemOfEntry(
                        ScenarioFormat.DEADLINES,
                        i,
                        "lies beyond the horizon: by then no trial is watched any more",
                        "raise the horizon or take the deadline out");
            }
        }
    }

    private static PayloadFile payloadFile(Section section) {
        return section.build(() -> PayloadFile.compressed(
                section.get(ScenarioFormat.FILE_NAME),
                section.get(ScenarioFormat.SIZE),
                section.get(ScenarioFormat.COMPRESSION)));
    }
}
