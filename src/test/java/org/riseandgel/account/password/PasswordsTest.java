package org.riseandgel.account.password;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.riseandgel.platform.web.TooBusyException;

class PasswordsTest {
    private final Passwords passwords = new Passwords();

    @Test
    void computesPbkdf2WithHmacSha512() {
        // Made with the OpenSSL-backed hashlib of Python: hashlib.pbkdf2_hmac("sha512", b"password", b"salt", 1).
        PasswordHash hash = PasswordHash.of("password", 1, "salt".getBytes(StandardCharsets.UTF_8));
        assertThat(HexFormat.of().formatHex(hash.hash()))
                .isEqualTo("867f70cf1ade02cff3752599a3a53dc4af34c7a669815ae5d513554e1c8cf252"
                        + "c02d470a285a0501bad999bfe943c08f050235d7d68b1da55e63f73b60a57fce");
    }

    @Test
    void whatIsStoredNamesItsKindAndRounds() {
        String stored = passwords.hash("violet hinge over gravel");
        assertThat(stored).matches("pbkdf2-sha512\\$210000\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{86}");
        assertThat(passwords.hash("violet hinge over gravel")).isNotEqualTo(stored);
        assertThat(passwords.matches("violet hinge over gravel", Optional.of(stored)))
                .isTrue();
        assertThat(passwords.matches("violet hinge over gravel ", Optional.of(stored)))
                .isFalse();
        assertThat(passwords.matches("Violet hinge over gravel", Optional.of(stored)))
                .isFalse();
    }

    @Test
    void nothingMatchesNobody() {
        assertThat(passwords.matches("", Optional.empty())).isFalse();
        assertThat(passwords.matches("violet hinge over gravel", Optional.empty()))
                .isFalse();
    }

    @Test
    void aTextTooLongToBeAPasswordIsWrongWithoutSlowWork() {
        String stored = passwords.hashOneTime("x".repeat(PasswordRules.LONGEST + 1));
        assertThat(passwords.matches("x".repeat(PasswordRules.LONGEST + 1), Optional.of(stored)))
                .isFalse();
        String chosen = passwords.hash("violet hinge over gravel");
        long usual = shortest("wrong, but long enough", Optional.of(chosen));
        // A million combining marks out of order take bringing to form NFC many seconds; half to five times as long as
        // any wrong password leaves room for noise.
        String marks = "a" + "\u0301\u0327".repeat(500_000);
        assertThat(shortest(marks, Optional.of(chosen))).isBetween(usual / 2, usual * 5);
        assertThatThrownBy(() -> passwords.hash(marks)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whoWaitsTooLongForATurnIsToldToComeBack() {
        Passwords busy = new Passwords(0, Duration.ofMillis(20));
        assertThatThrownBy(() -> busy.matches("violet hinge over gravel", Optional.empty()))
                .isInstanceOf(TooBusyException.class);
    }

    @Test
    void lettersBeyondThe72ndByteCount() {
        String long1 = "ж".repeat(80) + "1";
        String long2 = "ж".repeat(80) + "2";
        String stored = passwords.hashOneTime(long1);
        assertThat(passwords.matches(long1, Optional.of(stored))).isTrue();
        assertThat(passwords.matches(long2, Optional.of(stored))).isFalse();
    }

    @Test
    void theSameLetterWrittenInTwoWaysIsTheSame() {
        String stored = passwords.hashOneTime("caf\u00e9 under the bridge");
        assertThat(passwords.matches("cafe\u0301 under the bridge", Optional.of(stored)))
                .isTrue();
    }

    @Test
    void fewerRoundsAreNoticed() {
        assertThat(passwords.isOutdated(passwords.hashOneTime("x"))).isTrue();
        assertThat(passwords.isOutdated(passwords.hash("x"))).isFalse();
    }

    @Test
    void anUnknownKindIsRefused() {
        assertThatThrownBy(() -> PasswordHash.read("bcrypt$10$a$b")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void oneTimePasswordsAreLongDifferentAndReadable() {
        assertThat(IntStream.range(0, 500).mapToObj(i -> OneTimePassword.make()).distinct())
                .hasSize(500)
                .allMatch(p -> p.matches("([a-hjkmnp-z2-9]{4}-){4}[a-hjkmnp-z2-9]{4}"));
    }

    /**
     * The shortest of a few runs each, because other work on the machine only ever adds time. A kind that were answered
     * at once would take a hundredth; half leaves room for noise.
     */
    @Test
    void everyKindOfCheckDoesTheSameWork() {
        String chosen = passwords.hash("violet hinge over gravel");
        String oneTime = passwords.hashOneTime("violet hinge over gravel");
        long known = shortest("wrong, but long enough", Optional.of(chosen));
        assertThat(shortest("wrong, but long enough", Optional.empty())).isGreaterThan(known / 2);
        assertThat(shortest("wrong, but long enough", Optional.of(oneTime))).isGreaterThan(known / 2);
    }

    private long shortest(String typed, Optional<String> stored) {
        return IntStream.range(0, 3)
                .mapToLong(i -> {
                    long start = System.nanoTime();
                    passwords.matches(typed, stored);
                    return System.nanoTime() - start;
                })
                .min()
                .orElseThrow();
    }
}
