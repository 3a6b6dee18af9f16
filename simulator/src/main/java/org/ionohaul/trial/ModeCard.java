package org.ionohaul.trial;

import java.util.List;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.scenario.Mode;

/**
 * A mode's data sheet, worked out by the program's own machinery and not taken from the mode's file.
 *
 * @param mode the mode
 * @param answerSeconds what each turnaround leaves between the last symbol heard and the first one sent, in seconds
 * @param acknowledgementSeconds airtime of the acknowledgement, in seconds
 * @param callSeconds airtime of the call, in seconds
 * @param mistakenReplies on the last path, where data rate 1 loses a frame in ten: of the answers of one word that are understood,
 *     the share that is taken for the other word; zero where answers tell what is held
 * @param dataRates its data rates, data rate 1 first
 * @param errorFree how long undisturbed transfers take
 */
public record ModeCard(
        Mode mode,
        double answerSeconds,
        double acknowledgementSeconds,
        double callSeconds,
        double mistakenReplies,
        List<DataRate> dataRates,
        List<ErrorFree> errorFree) {
    /** Copies the lists. */
    public ModeCard {
        dataRates = List.copyOf(dataRates);
        errorFree = List.copyOf(errorFree);
    }

    /**
     * A data rate.
     *
     * @param number 1 for the most robust
     * @param payloadBytes user bytes a frame
     * @param frameSeconds airtime of a lone frame's burst, preamble and fill included, in seconds
     * @param overFrames most frames of an over
     * @param overSeconds airtime of such an over, in seconds
     * @param netBitsPerSecond user bits a second when such overs and their acknowledgements follow each other undisturbed
     * @param carrierNeedDb what it needs on a steady path, see {@link SteadyNeed}
     * @param unnoticedErrors on the steady path at which a frame in ten is lost: of the frames delivered, the share that
     *     is wrong because no check noticed
     * @param paths how it fares on each path
     */
    public record DataRate(
            int number,
            int payloadBytes,
            double frameSeconds,
            int overFrames,
            double overSeconds,
            double netBitsPerSecond,
            double carrierNeedDb,
            double unnoticedErrors,
            List<OnPath> paths) {
        /** Copies the list. */
        public DataRate {
            paths = List.copyOf(paths);
        }
    }

    /**
     * How a data rate fares on a path. SNR is that of the signal itself, in 3 kHz: its mean power, not the peak power that
     * the transmitter is limited by.
     *
     * @param path the path
     * @param halfLostDb SNR in dB at which half of the frames are lost; infinite if more are at any SNR
     * @param tenthLostDb SNR in dB at which one frame in ten is lost; infinite if more are at any SNR
     * @param hundredthLostDb SNR in dB at which one frame in a hundred is lost; infinite if more are at any SNR
     * @param curve frame loss by SNR
     */
    public record OnPath(
            FadingCondition path,
            double halfLostDb,
            double tenthLostDb,
            double hundredthLostDb,
            List<LossPoint> curve) {
        /** Copies the list. */
        public OnPath {
            curve = List.copyOf(curve);
        }
    }

    /**
     * A point of a curve.
     *
     * @param snrDb mean SNR of the signal in 3 kHz, in dB
     * @param loss share of frames lost, from 0 to 1
     */
    public record LossPoint(double snrDb, double loss) {}

    /**
     * An undisturbed transfer, from pressing send.
     *
     * @param bytes size of the file
     * @param deliveredSeconds when the receiver holds it, in seconds; infinite if not within a day
     * @param closedSeconds when both ends have hung up, in seconds; infinite if not within a day
     */
    public record ErrorFree(long bytes, double deliveredSeconds, double closedSeconds) {}
}
