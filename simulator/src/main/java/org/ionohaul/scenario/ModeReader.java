package org.ionohaul.scenario;

import static org.ionohaul.scenario.ModeFormat.*;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.link.ArqRules;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.session.SessionRules;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.Excision;
import org.ionohaul.waveform.FrameShape;
import org.ionohaul.waveform.FrontEnd;
import org.ionohaul.waveform.MeasuredFrame;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Receiver;

/** Turns a mode file into a mode. */
final class ModeReader {
    private ModeReader() {}

    /** Returns the mode; worthless if the document had a problem. */
    static Mode read(String name, Document document) {
        Section top = document.top(TOP);
        Section waveform = top.partOrEmpty(WAVEFORM);
        List<BurstShape> dataRates = dataRates(top.someParts(RATE), waveform);
        Section arq = top.part(ARQ);
        return arq.build(() -> new Mode(
                name,
                top.get(TITLE),
                top.get(ABOUT),
                emission(top.part(EMISSION)),
                dataRates,
                burst(top.part(ACKNOWLEDGEMENT).inheriting(waveform)),
                burst(top.part(CALL).inheriting(waveform)),
                burst(top.part(CONTROL).inheriting(waveform)),
                arq(arq),
                ratePolicy(top.part(RatePolicyFormat.ANY), dataRates.size()),
                session(top.part(SESSION)),
                arq.get(PROCESSING)));
    }

    private static List<BurstShape> dataRates(List<Section> sections, Section waveform) {
        List<BurstShape> dataRates = new ArrayList<>();
        double slower = 0;
        for (Section section : sections) {
            BurstShape dataRate = burst(section.inheriting(waveform));
            double bytesPerSecond =
                    dataRate.frame().payloadBytes() / dataRate.frame().airtimeSeconds();
            if (dataRate.frame().payloadBytes() == 0) {
                section.problem(PAYLOAD, "must be above 0 in a data rate", "");
            } else if (!(bytesPerSecond > slower)) {
                section.problem(
                        "carries no more bytes a second than the data rate before",
                        "put the data rates in order, the most robust and slowest first");
            }
            slower = bytesPerSecond;
            dataRates.add(dataRate);
        }
        if (sections.size() > Mode.MOST_DATA_RATES) {
            sections.get(Mode.MOST_DATA_RATES)
                    .problem("is one too many", "a mode has at most " + Mode.MOST_DATA_RATES + " data rates");
        }
        return dataRates;
    }

    private static Emission emission(Section section) {
        return section.build(() -> new Emission(section.get(BANDWIDTH), section.get(CREST_FACTOR)));
    }

    private static BurstShape burst(Section section) {
        return section.build(
                () -> new BurstShape(section.get(PREAMBLE), section.get(DETECTION), frontEnd(section), frame(section)));
    }

    /** Soft decisions on several carriers need the noise of each; one carrier tells nothing of its noise in parts. */
    private static FrontEnd frontEnd(Section section) {
        Excision excision =
                section.find(EXCISION).orElseGet(() -> hasCarriers(section) ? Excision.WEIGHTING : Excision.NONE);
        return new FrontEnd(excision, section.get(IMPULSE_DEFENCE), section.get(IMPULSE_LIMIT));
    }

    private static boolean hasCarriers(Section section) {
        return !section.has(MEASURED_LOSS) && section.get(CARRIERS) > 1;
    }

    private static FrameShape frame(Section section) {
        return section.has(MEASURED_LOSS) ? measured(section) : modelled(section);
    }

    private static FrameShape measured(Section section) {
        return new MeasuredFrame(
                section.get(PAYLOAD), section.get(AIRTIME), section.get(INTERLEAVER), section.get(MEASURED_LOSS));
    }

    private static FrameShape modelled(Section section) {
        Coding coding = new Coding(
                section.get(MODULATION), section.get(CARRIERS), section.get(SYMBOL_RATE), section.get(CODE_RATE));
        Receiver receiver = new Receiver(
                section.get(DELAY_TOLERANCE),
                section.get(TRACKING),
                section.get(GAP),
                section.get(CEILING),
                section.get(FREQUENCY_TOLERANCE),
                section.get(EQUALISER));
        int payloadBytes = section.get(PAYLOAD);
        int bits = section.find(FRAME_BITS).orElseGet(() -> bitsOfBytes(payloadBytes, section.get(OVERHEAD)));
        double interleaver = section.get(INTERLEAVER);
        double airtime = section.find(AIRTIME)
                .orElseGet(() -> coding.airtimeSeconds(bits, section.get(KNOWN_SHARE), interleaver));
        return new ModelledFrame(coding, receiver, payloadBytes, bits, section.get(CHECK), airtime, interleaver);
    }

    private static int bitsOfBytes(int payloadBytes, int overheadBytes) {
        requireFrameBytes("payloadBytes", payloadBytes);
        requireFrameBytes("overheadBytes", overheadBytes);
        OutOfRange.unless(payloadBytes + overheadBytes > 0, "payloadBytes", "must not be 0 without overhead", 0);
        return 8 * (payloadBytes + overheadBytes);
    }

    private static void requireFrameBytes(String name, int bytes) {
        OutOfRange.unless(bytes <= 1_000_000, name, "must be at most 1 MB", bytes);
    }

    private static ArqRules arq(Section section) {
        return section.build(() -> new ArqRules(
                section.get(SCHEME),
                section.get(WINDOW),
                section.get(SHORT_OVER),
                section.get(LONG_OVER),
                section.get(LONGEST_OVER),
                section.get(COMBINING),
                section.get(STORE),
                section.get(ANSWER_TO_SILENCE),
                section.get(SILENCES_TO_LOST),
                section.get(LISTENS_FIRST),
                section.get(MARGIN),
                section.get(CYCLE)));
    }

    private static RatePolicyRules ratePolicy(Section any, int dataRates) {
        RatePolicyFormat.Policy policy = any.get(RatePolicyFormat.POLICY);
        Section section = any.as(policy.group());
        RatePolicyRules rules = section.build(() -> policy.reading().rules(section));
        if (rules.startDataRate() < 1 || rules.startDataRate() > dataRates) {
            section.problem(
                    RatePolicyFormat.START_RATE,
                    "there is no data rate " + rules.startDataRate(),
                    "this mode has data rates 1 to " + dataRates);
        }
        return rules;
    }

    private static SessionRules session(Section section) {
        return section.build(() -> new SessionRules(
                section.get(CALL_ATTEMPTS),
                section.get(CALL_PAUSE),
                section.get(INTRODUCTIONS),
                section.get(CONTROL_ATTEMPTS),
                section.get(RESUMES),
                section.get(REDIALS),
                section.get(PROGRESS_RENEWS_REDIALS),
                section.get(REDIAL_PAUSE)));
    }
}
