package org.ionohaul.rate;

import java.util.Locale;

/**
 * Looks the SNR that the receiver reports up in what each data rate needs. A correction learns the difference between the
 * mode's bench table and the path: it sinks a step with each over that loses more than the target and rises by the part
 * of a step that balances it at the target (outer-loop link adaptation, F. Blanquez-Casado et al. 2016,
 * 10.1186/s13638-016-0518-3). An over that met silence brings no report: until the next one it goes one data rate lower.
 */
public final class SnrLookupPolicy implements RatePolicy {
    private final RatePolicyRules.SnrLookup rules;
    private final double[] needsDb;
    private int dataRate;
    private double reportedDb = Double.NaN;
    private double correctionDb;
    private int overdueReports;

    /** Begins at the start data rate of a mode with such curves. */
    public SnrLookupPolicy(RatePolicyRules.SnrLookup rules, LossCurves curves) {
        this.rules = rules;
        dataRate = rules.startDataRate();
        needsDb = new double[curves.dataRateCount()];
        for (int at = 0; at < needsDb.length; at++) {
            needsDb[at] = curves.needDb(at + 1, rules.targetLoss());
        }
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        if (overdueReports > 0) {
            dataRate = Math.max(1, dataRate - 1);
        } else if (!Double.isNaN(reportedDb)) {
            dataRate = lookUp(reportedDb + correctionDb);
        }
        return dataRate;
    }

    private int lookUp(double snrDb) {
        for (int candidate = needsDb.length; candidate > 1; candidate--) {
            double marginDb = candidate > dataRate ? rules.hysteresisDb() : 0;
            if (needsDb[candidate - 1] + marginDb <= snrDb) {
                return candidate;
            }
        }
        return 1;
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {
        overdueReports = 0;
        correct(framesLost > rules.targetLoss() * framesSent);
        if (!Double.isNaN(snrDb)) {
            reportedDb = snrDb;
        }
    }

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {
        overdueReports++;
        correct(true);
    }

    private void correct(boolean isLost) {
        double upShare = rules.targetLoss() / (1 - rules.targetLoss());
        correctionDb += rules.correctionStepDb() * (isLost ? -1 : upShare);
    }

    @Override
    public String reason() {
        if (overdueReports > 0) {
            return "no report for " + overdueReports + " overs";
        }
        return String.format(
                Locale.ROOT,
                "estimate %.1f dB, correction %+.1f dB, data rate needs %.1f dB",
                reportedDb,
                correctionDb,
                needsDb[dataRate - 1]);
    }
}
