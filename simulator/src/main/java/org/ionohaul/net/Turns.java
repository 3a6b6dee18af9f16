package org.ionohaul.net;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The gateway gives the word: to the station whose message goes first, one on each of its radios at a time. */
final class Turns {
    private final Net net;
    private final boolean[] isTaken;

    Turns(Net net, int radios) {
        this.net = net;
        isTaken = new boolean[radios];
    }

    /** Gives the word to as many as can be served now. */
    void give() {
        for (int channel = 0; channel < isTaken.length; channel++) {
            if (!isTaken[channel]) {
                giveOn(channel);
            }
        }
    }

    private void giveOn(int channel) {
        List<Integer> ready = IntStream.rangeClosed(1, net.stations())
                .filter(it -> net.mail().waitsFor(it) && net.operator(it).isReady(channel))
                .boxed()
                .toList();
        Optional<Letter> first = net.mail().firstOf(ready);
        if (first.isPresent()) {
            isTaken[channel] = true;
            net.operator(first.get().station()).call(first.get().station(), channel, () -> isTaken[channel] = false);
        }
    }
}
