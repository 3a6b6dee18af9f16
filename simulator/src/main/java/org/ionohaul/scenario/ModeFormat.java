package org.ionohaul.scenario;

import java.util.List;
import org.ionohaul.link.ArqRules.AnswerToSilence;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Equaliser;
import org.ionohaul.waveform.Excision;
import org.ionohaul.waveform.FrameCheck;
import org.ionohaul.waveform.ImpulseDefence;
import org.ionohaul.waveform.MeasuredFrame.Measurement;
import org.ionohaul.waveform.Modulation;

/** The keys of a mode file: what the reader accepts and the manual lists. */
final class ModeFormat {
    static final Key<String> TITLE = Key.of("title", "title", Kind.text(), "Fieldpost", "What people call the mode.");
    static final Key<String> ABOUT = Key.of(
            "about",
            "about",
            Kind.text(),
            "Short notes over a quiet path.",
            "One or two sentences on what it is made for.");

    static final Key<Double> BANDWIDTH = Key.of(
                    "bandwidth",
                    "bandwidthHz",
                    Kind.quantity(Dimension.FREQUENCY),
                    "2.2 kHz",
                    "Occupied bandwidth, above 0.")
            .usually("10 Hz", "48 kHz");
    static final Key<Double> CREST_FACTOR = Key.of(
                    "crest-factor",
                    "crestFactorDb",
                    Kind.quantity(Dimension.RATIO),
                    "3 dB",
                    "Peak over mean power, 0 or more: a transmitter limited by its peak power puts out so much less.")
            .usually("0 dB", "15 dB");
    static final Group EMISSION =
            Group.of("emission", "What all signals of the mode have in common on the air.", BANDWIDTH, CREST_FACTOR);

    static final Key<Modulation> MODULATION = Key.of(
            "modulation",
            "modulation",
            Kind.choice(Modulation.class),
            "qpsk",
            "What a symbol carries; N-fsk is detected by energy unless it says coherent.");
    static final Key<Integer> CARRIERS = Key.of(
                    "carriers",
                    "carriers",
                    Kind.count(),
                    48L,
                    "Over how many carriers side by side the symbols are spread; 1 for one carrier or one tone at a time.")
            .otherwise(1L);
    static final Key<Double> SYMBOL_RATE = Key.of(
                    "symbol-rate",
                    "symbolRateBd",
                    Kind.quantity(Dimension.SYMBOL_RATE),
                    "1800 Bd",
                    "Symbols a second over all carriers together, known symbols counted, guard intervals not (see known-share); above 0.")
            .usually("1 Bd", "40000 Bd");
    static final Key<Double> KNOWN_SHARE = Key.of(
            "known-share",
            "knownShare",
            Kind.share(),
            "20 %",
            "Share of the airtime without data (known symbols, pilots, guard intervals), from 0 to below 1.");
    static final Key<Double> CODE_RATE = Key.of(
            "code-rate",
            "codeRate",
            Kind.share(),
            "1/2",
            "Information bits a code bit, above 0; 1 means uncoded, where one wrong bit loses the frame.");
    static final Key<Integer> PAYLOAD = Key.of(
                    "payload",
                    "payloadBytes",
                    Kind.bytes(),
                    "90 B",
                    "User bytes a frame; \"0 B\" for control bursts, which carry just their overhead.")
            .usually("0 B", "64 kB");
    static final Key<Integer> OVERHEAD = Key.of(
                    "overhead", "overheadBytes", Kind.bytes(), "7 B", "Header and check bytes a frame, 0 or more.")
            .usually("0 B", "1000 B");
    static final Key<Integer> FRAME_BITS = Key.of(
            "frame-bits",
            "informationBits",
            Kind.count(),
            848L,
            "Bits of a frame before coding, where they are no whole bytes; takes the place of overhead.");
    static final Key<Double> AIRTIME = Key.of(
                    "airtime",
                    "airtimeSeconds",
                    Kind.quantity(Dimension.TIME),
                    "1.2 s",
                    "How long a frame is on the air, where it does not follow from bits, code rate, symbol rate and known share.")
            .usually("1 ms", "10 min");
    static final Key<FrameCheck> CHECK = Key.of(
                    "check",
                    "check",
                    Kind.choice(FrameCheck.class),
                    "whole-frame",
                    "How a wrong frame is found out: by a check sum of so many bits over all of it, which passes one wrong"
                            + " frame in 2^bits, or by four-of-seven characters; what passes wrongly is delivered wrong; of"
                            + " calls and control bursts, and of acknowledgements that tell what arrived, it is taken as"
                            + " right. control-signal (7 bits: one of those of ITU-R M.625) and one-of-four (2 bits without a"
                            + " check) are for acknowledgements of one word; a wrong one is acted upon."
                            + " whole-frame is a check sum whose failures are not counted. Not for measured losses.")
            .otherwise("whole-frame");
    static final Key<List<Measurement>> MEASURED_LOSS = Key.of(
            "measured-loss",
            "losses",
            Kind.list(measurement()),
            List.of("2 dB: 80 %", "4 dB: 10 %"),
            "Share of frames lost at some SNR in 3 kHz on a steady path, measured on your equipment: takes the place of"
                    + " modulation, code and receiver. Needs airtime.");
    static final Key<Double> INTERLEAVER = Key.of(
                    "interleaver",
                    "interleaverSeconds",
                    Kind.quantity(Dimension.TIME),
                    "2 s",
                    "Time over which a frame's bits are spread; bursts are filled up to a whole number of it. 0 for just the"
                            + " frame's own airtime.")
            .otherwise("0 s")
            .usually("0 s", "2 min");
    static final Key<Double> DELAY_TOLERANCE = Key.of(
                    "delay-tolerance",
                    "delayToleranceSeconds",
                    Kind.quantity(Dimension.TIME),
                    "5 ms",
                    "Longest delay spread that the guard interval or the equaliser absorbs, 0 or more.")
            .usually("0 s", "100 ms");
    static final Key<Double> TRACKING = Key.of(
                    "tracking",
                    "trackingSeconds",
                    Kind.quantity(Dimension.TIME),
                    "20 ms",
                    "Time between known symbols, by which the receiver follows a channel that changes; the length of a symbol"
                            + " where tones are detected by energy. 0 or more.")
            .usually("0 s", "10 s");
    static final Key<Double> GAP = Key.of(
                    "gap",
                    "gapDb",
                    Kind.quantity(Dimension.RATIO),
                    "1.5 dB",
                    "How much more SNR the real receiver needs than an ideal one.")
            .usually("0 dB", "20 dB");
    static final Key<Double> CEILING = Key.of(
                    "ceiling",
                    "ceilingDb",
                    Kind.quantity(Dimension.RATIO),
                    "26 dB",
                    "The receiver's own residual distortion: it never sees a better SINR than this, even on a path at rest.")
            .usually("5 dB", "60 dB");
    static final Key<Double> FREQUENCY_TOLERANCE = Key.of(
                    "frequency-tolerance",
                    "frequencyToleranceHz",
                    Kind.quantity(Dimension.FREQUENCY),
                    "40 Hz",
                    "By how much the stations' frequencies may differ before anything is lost: up to there the receiver finds"
                            + " and follows the other's by itself. MIL-STD-188-110 asks for 75 Hz of its serial tone (from"
                            + " memory); filters for narrow tones take less.")
            .otherwise("75 Hz")
            .usually("0 Hz", "500 Hz");
    static final Key<Equaliser> EQUALISER = Key.of(
                    "equaliser",
                    "equaliser",
                    Kind.choice(Equaliser.class),
                    "linear",
                    "How the receiver undoes echoes in symbols that fill the band, those of one carrier: by-parts (each part of"
                            + " the band counts by its own SNR, as if it were a carrier of its own; for what is not known),"
                            + " decision-feedback (an upper bound: what was decided is taken off without fault), linear (a filter"
                            + " alone, which raises the noise where the path is faint, so that echoes cost dense constellations"
                            + " several dB). Without effect on several carriers and on tones.")
            .otherwise("by-parts");
    static final Key<Double> PREAMBLE = Key.of(
                    "preamble",
                    "preambleSeconds",
                    Kind.quantity(Dimension.TIME),
                    "300 ms",
                    "Length of what comes before the frames so that the receiver finds them, 0 or more.")
            .usually("0 s", "20 s");
    static final Key<Double> DETECTION = Key.of(
                    "detection",
                    "detectionSnrDb",
                    Kind.quantity(Dimension.RATIO),
                    "-4 dB",
                    "SNR in 3 kHz at which half of the preambles are found on a steady path.")
            .usually("-80 dB", "30 dB");
    static final Key<Excision> EXCISION = Key.of(
            "excision",
            "excision",
            Kind.choice(Excision.class),
            "notch",
            "What the receiver does about a narrow signal in its band, for preamble and data alike: none (a carrier on the"
                    + " channel counts with all its strength), weighting (each carrier counts by its own noise, but a strong"
                    + " signal leaks into the others), notch (a filter takes it out with its part of the band). Left out:"
                    + " weighting with several carriers, none with one.");
    static final Key<ImpulseDefence> IMPULSE_DEFENCE = Key.of(
                    "impulse-defence",
                    "impulseDefence",
                    Kind.choice(ImpulseDefence.class),
                    "blanker",
                    "What the receiver does about clicks and crashes louder than its limit: none, limiter (cuts them down),"
                            + " blanker (leaves them out). No standard demands any.")
            .otherwise("none");
    static final Key<Double> IMPULSE_LIMIT = Key.of(
                    "impulse-limit",
                    "impulseLimitDb",
                    Kind.quantity(Dimension.RATIO),
                    "10 dB",
                    "How far over the mean power of all it hears a sample must stand for that, 0 or more. Clicks that are no"
                            + " louder than signal and limit together pass.")
            .otherwise("10 dB")
            .usually("3 dB", "30 dB");
    static final Group WAVEFORM = burst(
            "waveform",
            "What holds for every burst below that does not say otherwise itself; may be left out, as may any key in it.");
    static final Group RATE = burst(
            "rate", "A data rate, repeated: the overs that carry files; data rate 1, the most robust, comes first.");
    static final Group ACKNOWLEDGEMENT = burst("acknowledgement", "The burst that says which frames arrived.");
    static final Group CALL = burst("call", "The burst that dials, and its answer.");
    static final Group CONTROL = burst("control", "The burst of introductions, offers, polls and hang-up.");

    static final Key<ArqScheme> SCHEME = Key.of(
            "scheme",
            "scheme",
            Kind.choice(ArqScheme.class),
            "selective-repeat",
            "Which frames go out again. With asked-repeat and alternating each over, one frame, is answered by go on or"
                    + " repeat, whatever was decoded, and an answer taken for the other is acted upon; with alternating"
                    + " frames carry no numbers, so that nobody notices one that is taken in twice or never.");
    static final Key<Integer> WINDOW =
            Key.of("window", "windowFrames", Kind.count(), 12L, "Most frames unacknowledged at once, 1 or more.");
    static final Key<Integer> SHORT_OVER = Key.of(
            "short-over",
            "shortOverFrames",
            Kind.count(),
            3L,
            "Most frames an over carries while the queue is short or frames get lost, 1 or more.");
    static final Key<Integer> LONG_OVER = Key.of(
            "long-over",
            "longOverFrames",
            Kind.count(),
            9L,
            "Most frames an over carries when more than a short over waits and the last one came through whole.");
    static final Key<Long> LONGEST_OVER = Key.of(
                    "longest-over",
                    "longestOverNanos",
                    Kind.nanos(),
                    "25 s",
                    "No over lasts longer unless one frame alone does; above 0.")
            .usually("100 ms", "10 min");
    static final Key<Combining> COMBINING = Key.of(
            "combining",
            "combining",
            Kind.choice(Combining.class),
            "chase",
            "What the receiver does with a frame that failed when it comes again.");
    static final Key<Integer> STORE = Key.of(
                    "store",
                    "storeFrames",
                    Kind.count(),
                    8L,
                    "How many failed frames the receiver keeps for combining, 0 or more.")
            .otherwise(0L);
    static final Key<AnswerToSilence> ANSWER_TO_SILENCE = Key.of(
            "answer-to-silence",
            "answerToSilence",
            Kind.choice(AnswerToSilence.class),
            "repeat",
            "What the sender does when no acknowledgement comes: repeat the over, or poll for the acknowledgement.");
    static final Key<Integer> SILENCES_TO_LOST = Key.of(
            "silences-to-lost",
            "silencesToLost",
            Kind.count(),
            7L,
            "After how many overs in a row without acknowledgement the link is lost, 1 or more.");
    static final Key<Boolean> LISTENS_FIRST = Key.of(
            "listens-first",
            "listensFirst",
            Kind.flag(),
            true,
            "Whether a station waits for a clear channel before it begins an over.");
    static final Key<Long> MARGIN = Key.of(
                    "margin",
                    "marginNanos",
                    Kind.nanos(),
                    "150 ms",
                    "How long the sender waits beyond the latest instant an acknowledgement could end, 0 or more.")
            .usually("0 s", "30 s");
    static final Key<Long> CYCLE = Key.of(
                    "cycle",
                    "cycleNanos",
                    Kind.nanos(),
                    "600 ms",
                    "Where stations keep a rhythm: an over leaves so long after the one before, and an acknowledgement that"
                            + " is not there by then is missed (a scenario whose path is too long for it is warned of). 0 where each over waits for its acknowledgement.")
            .otherwise("0 s")
            .usually("0 s", "10 min");
    static final Key<Double> PROCESSING = Key.of(
                    "processing",
                    "processingSeconds",
                    Kind.quantity(Dimension.TIME),
                    "60 ms",
                    "How long the equipment thinks before it answers, 0 or more.")
            .usually("0 s", "10 s");
    static final Group ARQ = Group.of(
            "arq",
            "How frames move.",
            SCHEME,
            WINDOW,
            SHORT_OVER,
            LONG_OVER,
            LONGEST_OVER,
            COMBINING,
            STORE,
            ANSWER_TO_SILENCE,
            SILENCES_TO_LOST,
            LISTENS_FIRST,
            MARGIN,
            CYCLE,
            PROCESSING);

    static final Key<Integer> CALL_ATTEMPTS = Key.of(
            "call-attempts", "callAttempts", Kind.count(), 5L, "Calls before it pauses and dials anew, 1 or more.");
    static final Key<Long> CALL_PAUSE = Key.of(
                    "call-pause", "callPauseNanos", Kind.nanos(), "2 s", "Pause after an unanswered call, 0 or more.")
            .usually("0 s", "10 min");
    static final Key<Integer> INTRODUCTIONS = Key.of(
            "introductions",
            "introductions",
            Kind.count(),
            2L,
            "Control exchanges it takes to get to know each other, 0 or more.");
    static final Key<Integer> CONTROL_ATTEMPTS = Key.of(
            "control-attempts",
            "controlAttempts",
            Kind.count(),
            6L,
            "How often a control burst is tried before giving up, 1 or more.");
    static final Key<Boolean> RESUMES = Key.of(
            "resumes",
            "resumes",
            Kind.flag(),
            true,
            "Whether a transfer goes on where it stopped after a lost link; else it begins anew.");
    static final Key<Integer> REDIALS = Key.of(
            "redials",
            "redials",
            Kind.count(),
            3L,
            "How many times a lost link or unanswered dialling is tried anew, 0 or more.");
    static final Key<Boolean> PROGRESS_RENEWS_REDIALS = Key.of(
                    "progress-renews-redials",
                    "progressRenewsRedials",
                    Kind.flag(),
                    true,
                    "Whether the redials are counted from the last link that got further with the files than any before it, so"
                            + " that only time, or an operator's patience, ends a transfer that gets on; else over the whole"
                            + " session.")
            .otherwise(true);
    static final Key<Long> REDIAL_PAUSE = Key.of(
                    "redial-pause", "redialPauseNanos", Kind.nanos(), "20 s", "Pause before dialling anew, 0 or more.")
            .usually("0 s", "30 min");
    static final Group SESSION = Group.of(
            "session",
            "How links open and close.",
            CALL_ATTEMPTS,
            CALL_PAUSE,
            INTRODUCTIONS,
            CONTROL_ATTEMPTS,
            RESUMES,
            REDIALS,
            PROGRESS_RENEWS_REDIALS,
            REDIAL_PAUSE);

    static final Group TOP = Group.of("", "The top of the file.", TITLE, ABOUT)
            .with(EMISSION, WAVEFORM, RATE, ACKNOWLEDGEMENT, CALL, CONTROL, ARQ, RatePolicyFormat.ANY, SESSION);

    private ModeFormat() {}

    private static Group burst(String name, String meaning) {
        return Group.of(
                name,
                meaning,
                MODULATION,
                CARRIERS,
                SYMBOL_RATE,
                KNOWN_SHARE,
                CODE_RATE,
                PAYLOAD,
                OVERHEAD,
                FRAME_BITS,
                AIRTIME,
                CHECK,
                INTERLEAVER,
                DELAY_TOLERANCE,
                TRACKING,
                GAP,
                CEILING,
                FREQUENCY_TOLERANCE,
                EQUALISER,
                MEASURED_LOSS,
                PREAMBLE,
                DETECTION,
                EXCISION,
                IMPULSE_DEFENCE,
                IMPULSE_LIMIT);
    }

    private static Kind<Measurement> measurement() {
        return new Kind<>("an SNR and a loss", value -> {
            String[] parts = String.valueOf(value).split(":", 2);
            if (parts.length < 2) {
                throw new WrongValue(Kind.shown(value) + " is no measurement", "write it as \"3 dB: 20 %\"");
            }
            double snrDb = Kind.quantity(Dimension.RATIO).read(parts[0]);
            double loss = Kind.share().read(parts[1]);
            if (!(loss > 0 && loss < 1)) {
                throw new WrongValue(
                        Kind.shown(value) + " is no measurement",
                        "the share lost must be above 0 % and below 100 %: leave points out where all or none were lost");
            }
            return new Measurement(snrDb, loss);
        });
    }
}
