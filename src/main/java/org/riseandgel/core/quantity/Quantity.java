package org.riseandgel.core.quantity;

/** A measured thing: a number that knows its unit, so that grams are never added to millilitres. */
public sealed interface Quantity
        permits Mass,
                Length,
                Area,
                Volume,
                Density,
                Temperature,
                TemperatureDifference,
                TimeSpan,
                Ratio,
                Php,
                Concentration,
                Flow,
                Energy,
                Substance,
                Rate,
                Money {

    /** What is measured. */
    QuantityKind kind();

    /** The value in the base unit of its kind. */
    double inBase();

    /** The value in a unit of the same kind; a unit of another kind is refused. */
    default double in(Unit unit) {
        if (unit.kind() != kind()) {
            throw new IllegalArgumentException("%s is a unit of %s, but this is a %s"
                    .formatted(unit.code(), unit.kind().words(), kind().words()));
        }
        return unit.fromBase(inBase());
    }

    /** A quantity of the unit's own kind. */
    static Quantity of(double value, Unit unit) {
        return ofBase(unit.kind(), unit.toBase(value));
    }

    /** A quantity from its value in the base unit of the kind. */
    static Quantity ofBase(QuantityKind kind, double base) {
        return switch (kind) {
            case MASS -> new Mass(base);
            case LENGTH -> new Length(base);
            case AREA -> new Area(base);
            case VOLUME -> new Volume(base);
            case DENSITY -> new Density(base);
            case TEMPERATURE -> new Temperature(base);
            case TEMPERATURE_DIFFERENCE -> new TemperatureDifference(base);
            case DURATION -> new TimeSpan(base);
            case RATIO -> new Ratio(base);
            case PHP -> new Php(base);
            case CONCENTRATION -> new Concentration(base);
            case FLOW -> new Flow(base);
            case ENERGY -> new Energy(base);
            case SUBSTANCE -> new Substance(base);
            case RATE -> new Rate(base);
            case MONEY -> new Money(base);
        };
    }
}
