package org.riseandgel.account.password;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A password that the school hands out and that must be changed at once: five groups of four from 31 letters and
 * digits that no hand mixes up, which is 20 × log2 31 = 99 random bits.
 */
public final class OneTimePassword {
    /** How long it can be used. */
    public static final Duration LASTS = Duration.ofDays(14);

    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int GROUPS = 5;
    private static final int GROUP_LENGTH = 4;
    private static final SecureRandom RANDOM = new SecureRandom();

    private OneTimePassword() {}

    /** A new one, never given out before. */
    public static String make() {
        return IntStream.range(0, GROUPS).mapToObj(i -> group()).collect(Collectors.joining("-"));
    }

    private static String group() {
        return RANDOM.ints(GROUP_LENGTH, 0, LETTERS.length())
                .mapToObj(i -> "" + LETTERS.charAt(i))
                .collect(Collectors.joining());
    }
}
