package org.riseandgel.core.statistics;

/** What a fit of y = b₀ + b₁·(1 − e^(−b₂·x)) came to: the curve, or why there is none. */
public sealed interface ApproachFit permits FittedApproach, ApproachFit.CannotTell {

    /** Why the readings do not determine a curve. */
    enum Doubt {
        /** Fewer readings at different places than the curve has unknowns, or nothing that tells their scatter. */
        TOO_FEW("There are too few readings at different times."),
        /** The readings do not change at all. */
        NO_CHANGE("The readings do not change, so they tell no rate."),
        /** A straight line does as well, or the readings bend the other way: the level ahead may be anywhere. */
        STRAIGHT("A straight line fits the readings as well as a curve, so they do not tell where it will level off."
                + " Go on reading until the steps get smaller."),
        /** Level from the first reading on: the rate may be anything that is fast enough. */
        LEVEL("The readings are level from the first one on, so they do not tell how fast it went. Read earlier.");

        private final String words;

        Doubt(String words) {
            this.words = words;
        }

        /** What it means and what would help, in plain words. */
        public String words() {
            return words;
        }
    }

    /** The readings do not determine the curve. */
    record CannotTell(Doubt doubt) implements ApproachFit {}
}
