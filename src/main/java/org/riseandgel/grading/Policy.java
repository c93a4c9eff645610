package org.riseandgel.grading;

/** When an apprentice is told how an answer was judged. */
public enum Policy {
    /** At once; so an answer is final when it is handed in. */
    EACH("After each answer", "You see how each answer was judged as soon as you hand it in; it is final then."),
    /** Once the set has closed for everybody; until then an answer can be changed. */
    CLOSING(
            "After the set has closed",
            "You can change your answers until you hand the set in. How they were judged shows when the set has closed"
                    + " for everybody.");

    private final String title;
    private final String words;

    Policy(String title, String words) {
        this.title = title;
        this.words = words;
    }

    public String title() {
        return title;
    }

    /** What it means for whoever works the set. */
    public String words() {
        return words;
    }
}
