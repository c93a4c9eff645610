package org.riseandgel.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;

/** The same amount in another unit. */
public final class ConvertUnit implements Calculation {
    static final String AMOUNT = "amount";
    static final String TO = "toUnit";
    static final String CONVERTED = "converted";

    private static final Map<Unit, Unit> NEIGHBOURS =
            Map.of(Unit.OUNCE, Unit.POUND, Unit.POUND, Unit.OUNCE, Unit.INCH, Unit.FOOT, Unit.FOOT, Unit.INCH);

    @Override
    public String id() {
        return "unit-conversion";
    }

    @Override
    public String title() {
        return "Units";
    }

    @Override
    public String purpose() {
        return "The same amount in another unit.";
    }

    @Override
    public Task task() {
        return Task.UNITS;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Anything(
                        AMOUNT, "Amount", "A number with its unit: 4 oz, 1 1/2 in, 110 °F, 0.25 g/mL.", 4, Unit.OUNCE),
                new Input.Choice(
                        TO,
                        "Into",
                        "A unit of the same kind. Grams never become millilitres without a density.",
                        Arrays.stream(Unit.values())
                                .filter(unit -> !unit.symbol().isEmpty())
                                .filter(unit -> unit.kind() != QuantityKind.TEMPERATURE_DIFFERENCE)
                                .map(unit -> new Input.Option(unit.code(), unit.symbol()))
                                .toList()));
    }

    @Override
    public List<Result> results() {
        return List.of(new Result(CONVERTED, "That is", null, 0));
    }

    @Override
    public String inputAt(String what) {
        return TO;
    }

    @Override
    public void work(Given given, Work work) {
        Quantity amount = given.get(AMOUNT, Quantity.class);
        Unit from = given.unit(AMOUNT);
        Unit to = Unit.byCode(given.choice(TO))
                .orElseThrow(() -> new IllegalArgumentException("no unit " + given.choice(TO)));
        if (to.kind() != from.kind()) {
            throw OutOfRangeException.because(
                    "Amount",
                    "%s measures %s, and %s measures %s: choose a unit of %s"
                            .formatted(
                                    from.symbol(),
                                    from.kind().words(),
                                    to.symbol(),
                                    to.kind().words(),
                                    from.kind().words()));
        }
        Quantity converted = from.kind() == QuantityKind.TEMPERATURE
                ? new TemperatureConversion(amount, from, to, work).write()
                : scaled(amount, from, to, work);
        work.result(CONVERTED, converted, to);
    }

    /** The unit that stands one row further in a table of factors, whose factor is taken by mistake. */
    private static Optional<Unit> neighbour(Unit from, Unit to) {
        return Optional.ofNullable(NEIGHBOURS.get(from)).filter(other -> other != to);
    }

    private static Quantity scaled(Quantity amount, Unit from, Unit to, Work work) {
        Unit base = from.kind().baseUnit();
        boolean overBase = from != base && to != base;
        Quantity inBase =
                overBase ? Conversions.scaled("inBase", "In " + base.symbol(), amount, from, base, work) : amount;
        double factor = from.factor().dividedBy(to.factor()).toDouble();
        work.slip(
                Slip.CONVERTED_BACKWARDS,
                CONVERTED,
                () -> Quantity.of(amount.in(from) / factor, to),
                "Multiplied where the factor divides, or divided where it multiplies.");
        neighbour(from, to)
                .ifPresent(other -> work.slip(
                        Slip.FACTOR_OF_ANOTHER_UNIT,
                        CONVERTED,
                        () -> Quantity.of(amount.in(from), other),
                        "%s was worked with the factor of %s.".formatted(from.symbol(), other.symbol())));
        return Conversions.scaled(CONVERTED, "In " + to.symbol(), inBase, overBase ? base : from, to, work);
    }
}
