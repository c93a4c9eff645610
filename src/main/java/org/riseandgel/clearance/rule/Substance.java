package org.riseandgel.clearance.rule;

/**
 * A product as one supplier sells it.
 *
 * @param cas the CAS registry number; its last digit checks the others
 */
public record Substance(String name, String cas, String supplier) {
    private static final int TEN = 10;

    public Substance {
        Text.need("name of the substance", name);
        Text.need("supplier", supplier);
        if (!isCas(cas)) {
            throw new IllegalArgumentException(
                    "The CAS number is “%s”; write it like 16893-85-9, where the last digit checks the others."
                            .formatted(cas));
        }
    }

    /** Whether this is a CAS number: the digits before the last, counted from the right, weigh 1, 2, 3 and so on. */
    public static boolean isCas(String text) {
        if (text == null || !text.matches("[1-9][0-9]{1,6}-[0-9]{2}-[0-9]")) {
            return false;
        }
        String digits = text.replace("-", "");
        int sum = 0;
        for (int i = 0; i < digits.length() - 1; i++) {
            sum += (digits.length() - 1 - i) * (digits.charAt(i) - '0');
        }
        return sum % TEN == digits.charAt(digits.length() - 1) - '0';
    }
}
