package org.ionohaul.waveform;

/**
 * Numbers by what was asked: an instant, what about it, and a draw. Keeps up to {@value #MOST}, then takes in no more. A table
 * of open addresses (Knuth, The Art of Computer Programming, vol. 3, section 6.4, algorithm L), half empty at least.
 */
final class Answers {
    /** Enough for an hour of short frames both ways; 4 MB. */
    private static final int MOST = 1 << 16;

    private static final int FIRST_PLACES = 1 << 8;
    private static final int WIDTH = 4;

    /** Of each place when, what, draw and number, all as bits; what is zero where nothing is kept. */
    private long[] places = new long[WIDTH * FIRST_PLACES];

    private int kept;

    /**
     * Returns the number kept under a question, NaN if none is.
     *
     * @param what not zero
     */
    double find(long nanos, long what, double draw) {
        long number = places[place(places, nanos, what, Double.doubleToRawLongBits(draw)) + 3];
        return number == 0 ? Double.NaN : Double.longBitsToDouble(~number);
    }

    /** Keeps a number under a question that has none yet, if there is room. */
    void keep(long nanos, long what, double draw, double number) {
        if (kept == MOST) {
            return;
        }
        if (2 * kept >= places.length / WIDTH) {
            grow();
        }
        put(places, nanos, what, Double.doubleToRawLongBits(draw), ~Double.doubleToRawLongBits(number));
        kept++;
    }

    private void grow() {
        long[] more = new long[2 * places.length];
        for (int at = 0; at < places.length; at += WIDTH) {
            if (places[at + 1] != 0) {
                put(more, places[at], places[at + 1], places[at + 2], places[at + 3]);
            }
        }
        places = more;
    }

    private static void put(long[] places, long nanos, long what, long draw, long number) {
        int at = place(places, nanos, what, draw);
        places[at] = nanos;
        places[at + 1] = what;
        places[at + 2] = draw;
        places[at + 3] = number;
    }

    /** Returns where the question stands, or the empty place where it would. */
    private static int place(long[] places, long nanos, long what, long draw) {
        int last = places.length - WIDTH;
        long mixed = (nanos + 31 * what + draw) * 0x9E3779B97F4A7C15L;
        int at = WIDTH * (int) (mixed >>> 40) & last;
        while (places[at + 1] != 0 && (places[at] != nanos || places[at + 1] != what || places[at + 2] != draw)) {
            at = at + WIDTH & last;
        }
        return at;
    }
}
