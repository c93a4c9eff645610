package org.riseandgel.exercise;

import org.riseandgel.core.quantity.QuantityKind;

/** Kinds of quantity as a sentence needs them. */
final class KindWords {
    private KindWords() {}

    /** "a length", "an area", "a plain number". */
    static String one(QuantityKind kind) {
        return switch (kind) {
            case AREA -> "an area";
            case RATIO -> "a plain number";
            case MONEY -> "an amount of money";
            case PHP -> "a number of parts per hundred of base";
            default -> "a " + kind.words();
        };
    }
}
