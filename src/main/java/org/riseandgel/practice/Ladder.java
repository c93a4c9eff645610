package org.riseandgel.practice;

/**
 * The rung at which the next draw of a skill is offered.
 *
 * <p>Whole draws count, not their single parts: a draw is right when every part of it was right without a hint, and wrong
 * when a part of it was wrong. Two right in a row on a rung lead to the rung above it, two wrong in a row to the rung below
 * it; below the steps stands the worked example. Whoever begins bare and is right twice goes on to whole jobs and never has
 * to see an example.
 *
 * @param offered the rung that is offered
 * @param rung the rung of the draws that the run is made of
 * @param run how many draws in a row were right, or wrong where it is negative, since the offer last changed
 */
public record Ladder(Rung offered, Rung rung, int run) {
    /** Where everybody begins: at the worked example. */
    public static final Ladder FOOT = new Ladder(Rung.EXAMPLE, Rung.STEPS, 0);

    private static final int IN_A_ROW = 2;

    /** The level of the exercises that are offered. */
    public int level() {
        return offered.level();
    }

    /** After a draw whose parts were all right without a hint: at least this rung is offered again. */
    public Ladder afterRight(Rung drawn) {
        int row = drawn == rung && run > 0 ? run + 1 : 1;
        return row < IN_A_ROW
                ? new Ladder(Rung.higher(offered, drawn), drawn, row)
                : new Ladder(Rung.higher(offered, drawn.above()), drawn, 0);
    }

    /** After a draw with a wrong part. Who was walking through the steps goes on with them until the second miss. */
    public Ladder afterWrong(Rung drawn) {
        int row = drawn == rung && run < 0 ? run - 1 : -1;
        if (row > -IN_A_ROW) {
            return new Ladder(drawn == Rung.STEPS ? Rung.higher(offered, drawn) : offered, drawn, row);
        }
        return new Ladder(Rung.lower(offered, drawn.below()), drawn, 0);
    }

    /** After a draw that was right with the help of a hint or of an example: neither row goes on. */
    public Ladder afterHelp(Rung drawn) {
        return new Ladder(Rung.higher(offered, Rung.STEPS), drawn, 0);
    }
}
