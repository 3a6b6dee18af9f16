package org.ionohaul.sheet;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.trial.ModeCard;

/** A mode's frame loss against SNR as a table: a point a line. */
public record LossCsv(ModeCard card) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "loss.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord("mode", "data_rate", "path", "snr_db", "frame_loss");
        for (ModeCard.DataRate dataRate : card.dataRates()) {
            for (ModeCard.OnPath path : dataRate.paths()) {
                for (ModeCard.LossPoint point : path.curve()) {
                    csv.printRecord(
                            card.mode().name(),
                            dataRate.number(),
                            path.path().key(),
                            String.format(Locale.ROOT, "%.0f", point.snrDb()),
                            String.format(Locale.ROOT, "%.5f", point.loss()));
                }
            }
        }
    }
}
