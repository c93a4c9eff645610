package org.riseandgel.bench;

/** The work that a calculation belongs to; the bench shows them in this order. */
public enum Task {
    WEIGHING_OUT("Weighing out"),
    MOLD("The mold and its foam"),
    WHIPPING("Whipping"),
    GELLING("Gelling and filling"),
    DRYING("Baking and drying"),
    YIELD("Size and cost"),
    SALT("The salt and the air"),
    UNITS("Units");

    private final String heading;

    Task(String heading) {
        this.heading = heading;
    }

    /** What the bench calls it. */
    public String getHeading() {
        return heading;
    }
}
