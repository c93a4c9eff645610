package org.riseandgel.account.password;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a chosen password must be: long, and not one of those that are guessed first. There is no rule on kinds of
 * characters. After NIST SP 800-63B-4: 15 characters where the password is the only proof, a list of refused ones, no
 * rules of composition.
 */
public final class PasswordRules {
    public static final int SHORTEST = 15;
    public static final int LONGEST = 256;

    private static final int FEWEST_DIFFERENT = 6;
    private static final int FEWEST_UNFORESEEN = 8;
    private static final String GOOD_ONE = " Four words that have nothing to do with each other make a good one.";

    private PasswordRules() {}

    /**
     * What is wrong with the password and what would be right; empty when it can be used. Length is counted in
     * characters as people see them in a list of code points, not in bytes.
     *
     * @param personal names of the person and of the school, in any spelling
     */
    public static Optional<String> problem(String password, Collection<String> personal) {
        int length = length(password);
        if (length < SHORTEST) {
            return Optional.of(
                    "The password must have at least 15 characters; this one has " + length + "." + GOOD_ONE);
        }
        if (length > LONGEST) {
            return Optional.of("The password can have at most 256 characters; this one has " + length + ".");
        }
        return guessable(GuessableText.plain(password), personal);
    }

    /** Whether the text is longer than any password here, so that nothing slow is done with it. */
    static boolean isTooLong(String password) {
        return length(password) > LONGEST;
    }

    private static int length(String password) {
        return password.codePointCount(0, password.length());
    }

    private static Optional<String> guessable(String plain, Collection<String> personal) {
        if (plain.codePoints().distinct().count() < FEWEST_DIFFERENT || GuessableText.isRepeated(plain)) {
            return Optional.of("This password repeats itself, which is guessed first." + GOOD_ONE);
        }
        if (GuessableText.unforeseen(plain) < FEWEST_UNFORESEEN) {
            return Optional.of(
                    "This password follows the keyboard or the alphabet, which is guessed first." + GOOD_ONE);
        }
        if (GuessableText.without(plain, personalWords(personal)).length() < FEWEST_UNFORESEEN) {
            return Optional.of("This password is little more than a name that others know." + GOOD_ONE);
        }
        if (GuessableText.isListed(plain)) {
            return Optional.of("This password is among those that are guessed first." + GOOD_ONE);
        }
        return Optional.empty();
    }

    private static Stream<String> personalWords(Collection<String> personal) {
        return personal.stream()
                .flatMap(name -> Stream.concat(Stream.of(name), Stream.of(name.split("[^\\p{L}\\p{N}]+"))))
                .map(GuessableText::plain)
                .filter(word -> word.length() >= 3);
    }
}
