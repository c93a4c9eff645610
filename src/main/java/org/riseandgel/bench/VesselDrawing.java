package org.riseandgel.bench;

/** placeholder */
final class VesselDrawing {
    VesselDrawing(Given given, Outcome outcome, QuantityText text) {}

    String svg() {
        return "";
    }
}
