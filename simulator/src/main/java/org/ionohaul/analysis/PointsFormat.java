package org.ionohaul.analysis;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/**
 * The complete points of an interrupted variation as bytes, kept so that it can go on to the same bytes as one that was
 * never interrupted.
 *
 * <p>Not for people nor for other programs: it changes with the program. A fingerprint of everything that results depend
 * on guards against going on with points of another variation.
 */
public final class PointsFormat {
    private static final String FORMAT = "ionohaul points 2";

    private PointsFormat() {}

    /** Writes a value. */
    @FunctionalInterface
    private interface Writing<T> {
        void write(T value, DataOutputStream out) throws IOException;
    }

    /** Reads what {@link Writing} wrote. */
    @FunctionalInterface
    private interface Reading<T> {
        T read(DataInputStream in) throws IOException;
    }

    /**
     * Writes the points.
     *
     * @param fingerprint all that they depend on
     * @throws IOException if the stream refuses
     */
    public static void write(PointsDone done, String fingerprint, OutputStream stream) throws IOException {
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(new GZIPOutputStream(stream)))) {
            out.writeUTF(FORMAT);
            out.writeUTF(fingerprint);
            write(done.reference().cases(), PointsFormat::write, out);
            write(done.points(), PointsFormat::write, out);
        }
    }

    /**
     * Reads the points.
     *
     * @param fingerprint all that points depend on, as it is now
     * @return what was done; empty if it is of another variation or another version of the program
     * @throws IOException if the stream breaks off or is no such file
     */
    public static Optional<PointsDone> read(String fingerprint, InputStream stream) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(new GZIPInputStream(stream)))) {
            if (!in.readUTF().equals(FORMAT) || !in.readUTF().equals(fingerprint)) {
                return Optional.empty();
            }
            CompletionTimes reference = new CompletionTimes(list(in, PointsFormat::times));
            return Optional.of(new PointsDone(reference, list(in, PointsFormat::point)));
        }
    }

    private static <T> void write(List<T> values, Writing<T> writing, DataOutputStream out) throws IOException {
        out.writeInt(values.size());
        for (T value : values) {
            writing.write(value, out);
        }
    }

    private static <T> List<T> list(DataInputStream in, Reading<T> reading) throws IOException {
        List<T> values = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            values.add(reading.read(in));
        }
        return values;
    }

    private static void write(CompletionTimes.OfCase times, DataOutputStream out) throws IOException {
        write(times.deadlinesSeconds(), (it, to) -> to.writeDouble(it), out);
        write(times.seconds(), PointsFormat::write, out);
    }

    private static CompletionTimes.OfCase times(DataInputStream in) throws IOException {
        return new CompletionTimes.OfCase(list(in, DataInputStream::readDouble), list(in, PointsFormat::seconds));
    }

    private static void write(double[] seconds, DataOutputStream out) throws IOException {
        out.writeInt(seconds.length);
        for (double each : seconds) {
            out.writeDouble(each);
        }
    }

    private static double[] seconds(DataInputStream in) throws IOException {
        double[] seconds = new double[in.readInt()];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = in.readDouble();
        }
        return seconds;
    }

    private static void write(VariationPoint point, DataOutputStream out) throws IOException {
        write(point.values(), (it, to) -> to.writeUTF(it), out);
        write(point.cases(), PointsFormat::write, out);
    }

    private static VariationPoint point(DataInputStream in) throws IOException {
        return new VariationPoint(list(in, it -> it.readUTF()), list(in, PointsFormat::casePoint));
    }

    private static void write(CasePoint point, DataOutputStream out) throws IOException {
        write(point.modes(), PointsFormat::write, out);
        write(point.leaders(), out);
        write(point.margin().stream().toList(), PointsFormat::write, out);
    }

    private static CasePoint casePoint(DataInputStream in) throws IOException {
        return new CasePoint(
                list(in, PointsFormat::modePoint),
                leaders(in),
                list(in, PointsFormat::margin).stream().findFirst());
    }

    private static void write(Leaders leaders, DataOutputStream out) throws IOException {
        write(leaders.modes(), (it, to) -> to.writeInt(it), out);
        write(leaders.alike().stream().toList(), PointsFormat::write, out);
    }

    private static Leaders leaders(DataInputStream in) throws IOException {
        return new Leaders(
                list(in, DataInputStream::readInt),
                list(in, PointsFormat::alike).stream().findFirst());
    }

    private static void write(Alike alike, DataOutputStream out) throws IOException {
        out.writeDouble(alike.share());
        out.writeDouble(alike.seconds());
    }

    private static Alike alike(DataInputStream in) throws IOException {
        return new Alike(in.readDouble(), in.readDouble());
    }

    private static void write(ModePoint mode, DataOutputStream out) throws IOException {
        write(mode.delivered(), out);
        write(mode.medianSeconds(), out);
        write(mode.ninthSeconds(), out);
        write(mode.deadlines(), PointsFormat::write, out);
        write(mode.effect(), out);
    }

    private static ModePoint modePoint(DataInputStream in) throws IOException {
        return new ModePoint(estimate(in), estimate(in), estimate(in), list(in, PointsFormat::deadline), effect(in));
    }

    private static void write(DeadlineChance deadline, DataOutputStream out) throws IOException {
        out.writeDouble(deadline.deadlineSeconds());
        out.writeInt(deadline.count().hits());
        out.writeInt(deadline.count().total());
        write(deadline.chance(), out);
    }

    private static DeadlineChance deadline(DataInputStream in) throws IOException {
        return new DeadlineChance(in.readDouble(), new Proportion(in.readInt(), in.readInt()), estimate(in));
    }

    private static void write(PairedEffect effect, DataOutputStream out) throws IOException {
        write(effect.medianChangeSeconds(), out);
        out.writeInt(effect.quickerTrials());
        out.writeInt(effect.slowerTrials());
        out.writeDouble(effect.pValue());
        write(effect.deadlineChanges(), PointsFormat::write, out);
        out.writeDouble(effect.varianceRatio());
    }

    private static PairedEffect effect(DataInputStream in) throws IOException {
        return new PairedEffect(
                estimate(in),
                in.readInt(),
                in.readInt(),
                in.readDouble(),
                list(in, PointsFormat::estimate),
                in.readDouble());
    }

    private static void write(Margin margin, DataOutputStream out) throws IOException {
        out.writeInt(margin.next());
        out.writeUTF(margin.standing().name());
        write(margin.bestBefore(), out);
        write(margin.nextBefore(), out);
        write(margin.medianLeadSeconds(), out);
        write(margin.deadlineLeads(), PointsFormat::write, out);
    }

    private static Margin margin(DataInputStream in) throws IOException {
        return new Margin(
                in.readInt(),
                Verdict.Standing.valueOf(in.readUTF()),
                estimate(in),
                estimate(in),
                estimate(in),
                list(in, PointsFormat::estimate));
    }

    private static void write(Estimate estimate, DataOutputStream out) throws IOException {
        out.writeDouble(estimate.value());
        out.writeDouble(estimate.low());
        out.writeDouble(estimate.high());
    }

    private static Estimate estimate(DataInputStream in) throws IOException {
        return new Estimate(in.readDouble(), in.readDouble(), in.readDouble());
    }
}
