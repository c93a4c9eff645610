package org.riseandgel.core.quantity;

/** What is measured. Two kinds never convert into each other, however alike their units look. */
public enum QuantityKind {
    MASS("mass"),
    LENGTH("length"),
    AREA("area"),
    VOLUME("volume"),
    DENSITY("density"),
    TEMPERATURE("temperature"),
    TEMPERATURE_DIFFERENCE("temperature difference"),
    DURATION("duration"),
    RATIO("ratio"),
    PHP("parts per hundred of base"),
    CONCENTRATION("share of the whole"),
    MONEY("amount of money");

    private final String words;

    QuantityKind(String words) {
        this.words = words;
    }

    /** The kind in plain words, for messages. */
    public String words() {
        return words;
    }

    /** The unit in which this kind is computed. */
    public Unit baseUnit() {
        return Unit.baseOf(this);
    }
}
