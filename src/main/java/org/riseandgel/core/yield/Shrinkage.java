package org.riseandgel.core.yield;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * How much shorter a dried piece is than the sculpt it was molded from, along a line: s = (sculpt − piece) ÷ sculpt.
 *
 * <p>The percentage is of the sculpt. Taken of the piece it is larger, s′ = s ÷ (1 − s), and mixing the two up makes the next
 * sculpt too small: {@link #ofPiece} and {@link #asShareOfPiece} convert. The piece is taken to shrink alike in all
 * directions.
 *
 * @param ofSculpt s, from 0 to 90 %
 */
public record Shrinkage(Concentration ofSculpt) {
    private static final double MOST_PERCENT = 90;

    public Shrinkage {
        Checks.inRange("shrinkage in % of the sculpt", ofSculpt.inPercent(), 0, MOST_PERCENT);
    }

    /** From two measured lengths: (sculpt − piece) ÷ sculpt, the piece being no longer than the sculpt. */
    public static Shrinkage measured(Length sculpt, Length piece) {
        double whole = Checks.positive("sculpt in millimetres", sculpt.inMillimetres());
        double left = Checks.inRange("piece in millimetres", piece.inMillimetres(), 0, whole);
        return ofLoss(Length.ofMillimetres(whole - left), sculpt);
    }

    /** From what is lost along a length of the sculpt: lost ÷ sculpt, the sculpt being more than zero. */
    public static Shrinkage ofLoss(Length lost, Length sculpt) {
        return new Shrinkage(Concentration.ofPercent(
                100 * lost.inMillimetres() / Checks.positive("sculpt in millimetres", sculpt.inMillimetres())));
    }

    /** From the share of the length that is left, 10 to 100 %: s = 100 % − left. */
    public static Shrinkage leaving(Concentration left) {
        return new Shrinkage(Concentration.ofPercent(100 - left.inPercent()));
    }

    /**
     * From a percentage that was taken of the piece: s = s′ ÷ (1 + s′).
     *
     * @param percent s′, from 0 to 900
     * @throws OutOfRangeException outside
     */
    public static Shrinkage ofPiece(double percent) {
        double share = Checks.inRange("shrinkage in % of the piece", percent, 0, 900) / 100;
        return new Shrinkage(Concentration.ofPercent(100 * share / (1 + share)));
    }

    /** The piece that a sculpt gives: sculpt·(1 − s). */
    public Length pieceFrom(Length sculpt) {
        return Length.ofMillimetres(sculpt.inMillimetres() * left());
    }

    /** The sculpt that a piece asks for, the inverse: piece ÷ (1 − s). */
    public Length sculptFor(Length piece) {
        return Length.ofMillimetres(piece.inMillimetres() / left());
    }

    /** The same in percent of the piece: s′ = s ÷ (1 − s). */
    public double asShareOfPiece() {
        return ofSculpt.inPercent() / left();
    }

    /** What is left of a length: 1 − s. */
    public Concentration lengthLeft() {
        return Concentration.ofPercent(100 - ofSculpt.inPercent());
    }

    /** What is left of a volume, as a share: (1 − s)³. */
    public double volumeLeft() {
        return left() * left() * left();
    }

    private double left() {
        return 1 - ofSculpt.asFraction();
    }
}
