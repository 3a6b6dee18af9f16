package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.SessionResult;

/** Which of many trials is picked to be told. */
public enum TrialPick {
    /** The one in the middle, by time of delivery. */
    MEDIAN {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            List<Candidate> inOrder = new ArrayList<>(candidates);
            inOrder.sort(Comparator.comparingLong(Candidate::deliveredNanos).thenComparingLong(Candidate::trial));
            return Optional.of(inOrder.get((inOrder.size() - 1) / 2));
        }
    },
    /** The last one to deliver. */
    SLOWEST {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            return candidates.stream()
                    .filter(it -> it.result().deliveredNanos().isPresent())
                    .max(Comparator.comparingLong(Candidate::deliveredNanos));
        }
    },
    /** One that lost its link: the one that got through in spite of most losses, else the one that held most. */
    LOST {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            return lost(candidates)
                    .filter(it -> it.result().outcome() == Outcome.CLOSED)
                    .max(Comparator.comparingInt(it -> it.result().linksLost()))
                    .or(() -> lost(candidates).max(Comparator.comparingLong(Candidate::heldBytes)));
        }
    },
    /** One whose calls were never answered: the first. */
    NEVER_LINKED {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            return candidates.stream()
                    .filter(it -> it.result().ending().isWithoutLink())
                    .findFirst();
        }
    },
    /** One that gave up after it lost its link: the one that held most. */
    GAVE_UP {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            return failed(candidates, Ending.LINK_LOST);
        }
    },
    /** One that an operator broke off: the one that held most. */
    OUT_OF_PATIENCE {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            return failed(candidates, Ending.OUT_OF_PATIENCE);
        }
    },
    /** One that was still at it at the horizon: the one that held most. */
    HORIZON {
        @Override
        public Optional<Candidate> among(List<Candidate> candidates) {
            return failed(candidates, Ending.AT_HORIZON);
        }
    };

    /**
     * A trial to choose from.
     *
     * @param trial its number
     * @param result what its session came to
     */
    public record Candidate(long trial, SessionResult result) {
        long deliveredNanos() {
            return result.deliveredNanos().orElse(Long.MAX_VALUE);
        }

        long heldBytes() {
            int rises = result.progress().size();
            return rises == 0 ? 0 : result.progress().heldBytes(rises - 1);
        }
    }

    /**
     * Chooses a trial.
     *
     * @param candidates trials in order of their number, at least one
     * @return the trial; empty if none is of the kind
     */
    public abstract Optional<Candidate> among(List<Candidate> candidates);

    private static Optional<Candidate> failed(List<Candidate> candidates, Ending way) {
        return candidates.stream()
                .filter(it ->
                        it.result().deliveredNanos().isEmpty() && it.result().ending() == way)
                .max(Comparator.comparingLong(Candidate::heldBytes));
    }

    private static Stream<Candidate> lost(List<Candidate> candidates) {
        return candidates.stream().filter(it -> it.result().linksLost() > 0);
    }
}
