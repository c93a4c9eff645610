package org.riseandgel.core.yield;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.statistics.Interval;
import org.riseandgel.core.statistics.Wilson;

/**
 * What a good piece costs when some are scrap. Money is a plain number in the school's currency, from 0 to a million
 * million.
 */
public final class PieceCost {
    private static final double MOST_SCRAP = 99;

    private PieceCost() {}

    /**
     * Cost of a good piece = cost of a piece made ÷ (1 − scrap rate): the good ones pay for the bad.
     *
     * @param made what making one piece costs, good or bad, zero or more
     * @param scrap the share of pieces made that are no good, 0 to 99 %
     * @throws OutOfRangeException outside these
     */
    public static double ofGood(double made, Concentration scrap) {
        Checks.inRange("scrap rate in %", scrap.inPercent(), 0, MOST_SCRAP);
        return Checks.notNegative("cost of a piece", made) / (1 - scrap.asFraction());
    }

    /** Pieces to make for some good ones: good ÷ (1 − scrap rate), rounded up. */
    public static long toMake(int good, Concentration scrap) {
        return roundedUp(toMakeExactly(good, scrap));
    }

    /** Pieces to make for some good ones before they are rounded up: good ÷ (1 − scrap rate). */
    public static double toMakeExactly(double good, Concentration scrap) {
        Checks.inRange("scrap rate in %", scrap.inPercent(), 0, MOST_SCRAP);
        return Checks.inRange("good pieces", good, 0, 1e9) / (1 - scrap.asFraction());
    }

    /** Whole pieces, rounded up: 21 ÷ 0.7 comes out a hair above 30, and still makes 30 pieces. */
    public static long roundedUp(double pieces) {
        return (long) Math.ceil(Checks.notNegative("pieces", pieces) * (1 - 1e-12));
    }

    /**
     * The scrap rate that some pieces tell, with how little that is: Wilson's interval of the share, in percent.
     *
     * @param scrap how many were no good, from 0 to made
     * @param made how many were made, 1 or more
     */
    public static Interval scrapPercent(int scrap, int made, double probability) {
        Interval share = Wilson.interval(scrap, made, probability);
        return new Interval(100 * share.low(), 100 * share.high(), probability);
    }
}
