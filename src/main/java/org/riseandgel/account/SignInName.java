package org.riseandgel.account;

import java.util.Locale;
import java.util.regex.Pattern;

/** The name that a person types to sign in: 2 to 40 small letters a to z, digits, dots, dashes and underscores. */
public final class SignInName {
    /** What is said of a name that has another shape. */
    public static final String RULE =
            "A sign-in name has 2 to 40 letters a to z, digits, dots, dashes or underscores, and begins with a letter or"
                    + " digit. For example: mara.lind";

    private static final Pattern SHAPE = Pattern.compile("[a-z0-9][a-z0-9._-]{1,39}");

    private SignInName() {}

    /** The name as it is stored: without outer spaces, in small letters. */
    public static String normal(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT);
    }

    /** Whether a normal name has the right shape. */
    public static boolean isPossible(String normal) {
        return SHAPE.matcher(normal).matches();
    }
}
