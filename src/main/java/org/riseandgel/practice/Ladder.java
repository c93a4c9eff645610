package org.riseandgel.practice;

/**
 * The level at which the next draw of a skill is offered.
 *
 * <p>Whole draws count, not their single parts: a draw is right when every part of it was right without a hint, and wrong
 * when a part of it was wrong. Two right in a row at a level lead to the level above it, two wrong in a row to the level
 * below it. Whoever chooses level 2 and is right twice goes on to level 3 and never has to see level 1.
 *
 * @param level the level that is offered, 1 to 3
 * @param rung the level of the draws that the run is made of
 * @param run how many draws in a row were right, or wrong where it is negative, since the offer last changed
 */
public record Ladder(int level, int rung, int run) {
    /** Where everybody begins. */
    public static final Ladder FOOT = new Ladder(1, 1, 0);

    private static final int TOP = 3;
    private static final int IN_A_ROW = 2;

    public Ladder {
        if (level < 1 || level > TOP || rung < 1 || rung > TOP) {
            throw new IllegalArgumentException("level " + level + " and rung " + rung + ", must be within 1 to " + TOP);
        }
    }

    /** After a draw whose parts were all right without a hint. */
    public Ladder afterRight(int drawLevel) {
        int row = drawLevel == rung && run > 0 ? run + 1 : 1;
        return row < IN_A_ROW
                ? new Ladder(level, drawLevel, row)
                : at(Math.max(level, Math.min(TOP, drawLevel + 1)), drawLevel);
    }

    /** After a draw with a wrong part. */
    public Ladder afterWrong(int drawLevel) {
        int row = drawLevel == rung && run < 0 ? run - 1 : -1;
        return row > -IN_A_ROW
                ? new Ladder(level, drawLevel, row)
                : at(Math.min(level, Math.max(1, drawLevel - 1)), drawLevel);
    }

    /** After a draw that was right with the help of a hint: neither row goes on. */
    public Ladder afterHelp(int drawLevel) {
        return new Ladder(level, drawLevel, 0);
    }

    private static Ladder at(int level, int drawLevel) {
        return new Ladder(level, drawLevel, 0);
    }
}
