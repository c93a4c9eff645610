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
    FLOW("flow"),
    ENERGY("energy"),
    SUBSTANCE("amount of substance"),
    RATE("rate"),
    MONEY("amount of money");

    private final String words;

    QuantityKind(String words) {
        this.words = words;
    }

    /** The kind in plain words, for messages. */
    public String words() {
        return words;
    }

    /** One of the kind, as a sentence needs it: "a length", "an area", "a plain number". */
    public String one() {
        return switch (this) {
            case RATIO -> "a plain number";
            case PHP -> "a number of parts per hundred of base";
            case AREA, ENERGY, SUBSTANCE, MONEY -> "an " + words;
            default -> "a " + words;
        };
    }

    /** The unit in which this kind is computed. */
    public Unit baseUnit() {
        return Unit.baseOf(this);
    }
}
