package org.riseandgel.core.drying;

import java.util.Map;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;

/** The water in a batch: Σ mass of ingredient × (1 − its dry share). All of it has to leave the piece. */
public final class BatchWater {
    private BatchWater() {}

    /**
     * The water in all of a batch.
     *
     * @param dryShares for each ingredient of the formula by name, the share of it that stays when dried, 0 to 100 %
     * @throws OutOfRangeException when an ingredient has none
     */
    public static Mass in(Batch batch, Map<String, Concentration> dryShares) {
        return Mass.ofGrams(batch.portions().stream()
                .mapToDouble(portion -> waterIn(portion, dryShares))
                .sum());
    }

    /** The water in a piece that took a share of the batch: water × piece ÷ batch, by mass. */
    public static Mass inPiece(Mass waterInBatch, Mass batch, Mass piece) {
        if (piece.inGrams() > batch.inGrams()) {
            throw OutOfRangeException.because(
                    "piece",
                    "the piece is %s g, must be at most the batch's %s g".formatted(piece.inGrams(), batch.inGrams()));
        }
        return piece.inGrams() == 0
                ? Mass.ofGrams(0)
                : Mass.ofGrams(waterInBatch.inGrams() * piece.inGrams() / batch.inGrams());
    }

    private static double waterIn(Batch.Portion portion, Map<String, Concentration> dryShares) {
        String name = portion.row().ingredient();
        Concentration dry = dryShares.get(name);
        if (dry == null) {
            throw OutOfRangeException.because(
                    "dry share", "%s has no dry share, must have one from 0 to 100 %%".formatted(name));
        }
        return portion.mass().inGrams() * (1 - dry.asFraction());
    }
}
