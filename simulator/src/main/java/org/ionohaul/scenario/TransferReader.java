package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Turns what a scenario says of files and deadlines into transfers. */
final class TransferReader {
    private final double horizonSeconds;

    /**
     * Makes a reader.
     *
     * @param horizonSeconds how long a trial is watched: nothing can be said of deadlines beyond
     */
    TransferReader(double horizonSeconds) {
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
                section.find(ScenarioFormat.DEADLINES).orElse(List.of())));
        refuseDeadlinesBeyondTheHorizon(section, transfer);
        return transfer;
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
