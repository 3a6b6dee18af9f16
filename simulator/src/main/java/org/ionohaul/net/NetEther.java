package org.ionohaul.net;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.Ether;
import org.ionohaul.link.Transmissions;

/**
 * A channel on which the stations' own transmissions disturb each other by their power, through the receivers that take any
 * interferer, so that the stronger of two may be heard. Whom a station hears is a matter of level, so that some are hidden from
 * others. A station's own partner does not occupy the channel for it.
 *
 * @param audibility how well they hear each other
 * @param audibleRatio from which power over the floor on a station is heard by one who listens for a clear channel
 * @param densityRatio power density of a burst in its band over that of a steady carrier of full power spread over 3 kHz
 */
public record NetEther(Audibility audibility, double audibleRatio, double densityRatio) implements Ether {
    @Override
    public boolean reaches(int from, int at) {
        return true;
    }

    @Override
    public long propagationNanos(int from, int at) {
        return audibility.propagationNanos(from, at);
    }

    @Override
    public Reception reception(int from, int at, Transmissions onAir) {
        Reception undisturbed = audibility.reception(from, at);
        int heard = onAir.size() - 1;
        while (onAir.sender(heard) != from) {
            heard--;
        }
        long fromNanos = arrivalNanos(onAir, heard, at);
        long untilNanos = endNanos(onAir, heard, at);
        List<DisturbedReception.Disturber> others = new ArrayList<>();
        for (int one = 0; one < onAir.size(); one++) {
            int sender = onAir.sender(one);
            if (sender != from
                    && sender != at
                    && arrivalNanos(onAir, one, at) < untilNanos
                    && fromNanos < endNanos(onAir, one, at)) {
                others.add(disturber(sender, at, arrivalNanos(onAir, one, at), endNanos(onAir, one, at)));
            }
        }
        return others.isEmpty() ? undisturbed : new DisturbedReception(undisturbed, others, densityRatio);
    }

    /** One that is heard by the gateway, or is it, fades as it does for its partner; between two others a level must do. */
    private DisturbedReception.Disturber disturber(int sender, int at, long fromNanos, long untilNanos) {
        boolean isFading = sender == Net.GATEWAY || at == Net.GATEWAY;
        return isFading
                ? DisturbedReception.Disturber.fading(fromNanos, untilNanos, audibility.reception(sender, at))
                : DisturbedReception.Disturber.steady(
                        fromNanos, untilNanos, audibility.meanSignal(sender, at, fromNanos));
    }

    @Override
    public boolean isOccupied(int at, long fromNanos, long untilNanos, Transmissions onAir) {
        return isOccupiedByNet(at, fromNanos, untilNanos, onAir)
                || audibility.isOccupiedByOthers(at, fromNanos, untilNanos);
    }

    /** Goes back in time from burst to burst as long as there is one without a gap. */
    private boolean isOccupiedByNet(int at, long fromNanos, long untilNanos, Transmissions onAir) {
        long sinceNanos = untilNanos + 1;
        boolean isOlder = true;
        while (sinceNanos > fromNanos && isOlder) {
            isOlder = false;
            for (int one = 0; one < onAir.size(); one++) {
                long arrivalNanos = arrivalNanos(onAir, one, at);
                if (arrivalNanos < sinceNanos
                        && sinceNanos <= endNanos(onAir, one, at)
                        && onAir.receiver(one) != at
                        && isAudible(onAir.sender(one), at, arrivalNanos)) {
                    sinceNanos = arrivalNanos;
                    isOlder = true;
                }
            }
        }
        return sinceNanos <= fromNanos;
    }

    /** Returns whether a station that listens hears another when it sends. */
    public boolean isAudible(int from, int at, long atNanos) {
        return from != at && audibility.meanSignal(from, at, atNanos) > audibleRatio;
    }

    private long arrivalNanos(Transmissions onAir, int one, int at) {
        int sender = onAir.sender(one);
        return onAir.startNanos(one) + (sender == at ? 0 : propagationNanos(sender, at));
    }

    private long endNanos(Transmissions onAir, int one, int at) {
        return arrivalNanos(onAir, one, at) + onAir.endNanos(one) - onAir.startNanos(one);
    }
}
