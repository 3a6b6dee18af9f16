package org.ionohaul.traffic;

import java.util.List;
import org.ionohaul.traffic.Backlog.Verdict;

/**
 * Where waiting grows beyond bounds, over a key by which a net gets busier.
 *
 * @param name what people call it
 * @param points what each of its values comes to, rising
 */
record Knee(String name, List<NetPoint> points) {
    /** Copies the list. */
    Knee {
        points = List.copyOf(points);
    }

    /** Returns between which values it lies, as far as each value's own verdict tells. */
    String sentence() {
        int keeping = firstThatIsNot(Verdict.KEEPS_UP) - 1;
        int piling = points.size();
        while (piling > 0 && verdict(piling - 1) == Verdict.PILES_UP) {
            piling--;
        }
        boolean isKeeping = keeping >= 0;
        boolean isPiling = piling < points.size();
        if (isKeeping && isPiling) {
            return "The knee lies between " + named(keeping) + ", where the net keeps up, and " + value(piling)
                    + ", where messages pile up"
                    + (piling - keeping > 1 ? "; the values between them leave it open." : ".");
        } else if (isPiling) {
            return "The knee lies below " + named(piling) + ": from there on messages pile up.";
        }
        return isKeeping
                ? "The knee lies above " + named(keeping) + ", up to which the net keeps up."
                : "Where the knee lies is open: more trials, a longer horizon or other values would tell.";
    }

    private int firstThatIsNot(Verdict verdict) {
        int first = 0;
        while (first < points.size() && verdict(first) == verdict) {
            first++;
        }
        return first;
    }

    private Verdict verdict(int point) {
        return points.get(point).findings().backlog().verdict();
    }

    private String named(int point) {
        return name + " = " + value(point);
    }

    private String value(int point) {
        return points.get(point).value();
    }
}
