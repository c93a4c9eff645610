package org.riseandgel.core.quantity;

/** An amount of money in the school's own currency, zero or more; which currency that is stands nowhere. */
public record Money(double amount) implements Quantity {
    public Money {
        Checks.notNegative("amount of money", amount);
    }

    /** From a plain number. */
    public static Money of(double value) {
        return new Money(value);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.MONEY;
    }

    @Override
    public double inBase() {
        return amount;
    }
}
