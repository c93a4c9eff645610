package org.riseandgel.practice;

/**
 * The rungs of the ladder of a skill, from a full example to a whole job. Their order is that of the ladder; their numbers
 * are stored and stay.
 *
 * <p>The full worked example is read, not answered; the other rungs are draws. Exercises of level 1 walk through the steps
 * with some of them blank, those of level 2 are asked with the plan of the working at first and bare later, those of level
 * 3 are whole jobs.
 */
public enum Rung {
    EXAMPLE(1, "worked example", "Read how it is done, every step solved."),
    STEPS(1, "step by step", "Find the steps one after the other."),
    PLAN(2, "with the plan", "The plan says what to find; the rest is yours."),
    BARE(2, "on your own", "Nothing but the question."),
    JOB(3, "a whole job", "Several things together, as at the bench.");

    private final int level;
    private final String words;
    private final String about;

    Rung(int level, String words, String about) {
        this.level = level;
        this.words = words;
        this.about = about;
    }

    /** The level of the exercises on it; for the worked example, of the exercise that is worked. */
    public int level() {
        return level;
    }

    /** What a page says. */
    public String words() {
        return words;
    }

    /** What one does on it, in a sentence. */
    public String about() {
        return about;
    }

    /** The number that is stored, from 0 at the foot. */
    public int number() {
        return ordinal();
    }

    /** The rung above; the top one for the top one. */
    public Rung above() {
        return values()[Math.min(ordinal() + 1, values().length - 1)];
    }

    /** The rung below; the foot for the foot. */
    public Rung below() {
        return values()[Math.max(ordinal() - 1, 0)];
    }

    /** The rung with that number. */
    static Rung of(int number) {
        return values()[number];
    }

    /** The rung of a draw of that level, with or without its plan. */
    static Rung ofDraw(int level, boolean withPlan) {
        return switch (level) {
            case 1 -> STEPS;
            case 2 -> withPlan ? PLAN : BARE;
            default -> JOB;
        };
    }

    static Rung higher(Rung one, Rung other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    static Rung lower(Rung one, Rung other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
