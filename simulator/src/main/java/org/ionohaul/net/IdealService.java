package org.ionohaul.net;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.engine.Engine;

/** Conversations that always succeed and take as long as their messages, one after the other: a server of queueing theory. */
public final class IdealService implements Conversations {
    private final Engine engine;
    private final double bytesPerSecond;
    private boolean isTaken;

    /** Makes a service of a speed in bytes a second, positive. */
    public IdealService(Engine engine, double bytesPerSecond) {
        this.engine = engine;
        this.bytesPerSecond = bytesPerSecond;
    }

    @Override
    public boolean isFree(int station, int channel) {
        return !isTaken;
    }

    @Override
    public boolean isBusy(int station, int channel, long sinceNanos) {
        return isTaken;
    }

    @Override
    public void begin(Call call, Ending ending) {
        isTaken = true;
        List<Letter> letters = new ArrayList<>(call.fromCaller());
        letters.addAll(call.fromCalled());
        next(letters, 0, ending);
    }

    private void next(List<Letter> letters, int at, Ending ending) {
        if (at == letters.size()) {
            isTaken = false;
            ending.onEnded(true);
            return;
        }
        Letter letter = letters.get(at);
        letter.called();
        letter.begin(engine.nowNanos());
        engine.schedule(Math.round(1e9 * letter.bytes() / bytesPerSecond), () -> {
            letter.deliver(engine.nowNanos());
            next(letters, at + 1, ending);
        });
    }
}
