package org.ionohaul.sheet;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.trial.SkyView;

/** One trial's sky, a line a sample and end; same conventions as that of trials. */
public record SkyCsv(SkyView view) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "sky.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180);
        csv.printRecord("end", "time_s", "signal_db", "disturbance_db", "sinr_db", "occupied");
        for (End end : End.values()) {
            SkyWatch watch = view.at(end);
            for (int i = 0; i < watch.samples(); i++) {
                csv.printRecord(
                        end.name().toLowerCase(Locale.ROOT),
                        decimal(SkyView.seconds(i * watch.stepNanos()), 3),
                        decimal(watch.signalDb(i), 2),
                        decimal(watch.disturbanceDb(i), 2),
                        decimal(watch.sinrDb(i), 2),
                        watch.isOccupied(i) ? 1 : 0);
            }
        }
    }

    private static String decimal(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}
