package org.riseandgel.account.password;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.account.DemoPeople;

class PasswordRulesTest {
    private static final List<String> PERSONAL = List.of("Mara Lindqvist", "mara.lind", "Harbour Foam School");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "violet hinge over gravel",
                "copper thread beside rain",
                "q7#Rb!x0Zp@w2Lm",
                "жёлтый чайник на лестнице",
                "四つの関係のない言葉を使ってください",
                "mara keeps nine tame otters"
            })
    void longAndUnforeseenIsFine(String password) {
        assertThat(PasswordRules.problem(password, PERSONAL)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "short one           | at least 15 characters; this one has 9",
                "😀😀😀😀😀😀😀😀😀😀     | at least 15 characters; this one has 10",
                "aaaaaaaaaaaaaaaaaaaa | repeats itself",
                "abcabcabcabcabcabc   | repeats itself",
                "kettlekettlekettle   | repeats itself",
                "123456789012345678   | follows the keyboard",
                "abcdefghijklmnopqr   | follows the keyboard",
                "qwertyuiopasdfghjkl  | follows the keyboard",
                "1q2w3e4r5t6y7u8i9o   | follows the keyboard",
                "zyxwvutsrqponmlkji   | follows the keyboard",
                "Mara Lindqvist 2027  | a name that others know",
                "lindqvist-mara-1999! | a name that others know",
                "harbour foam school 7| a name that others know",
                "correct horse battery staple | guessed first",
                "password password 12 | guessed first",
                "P4ssw0rd!P4ssw0rd!1  | guessed first",
                "WelcomeWinter2027!   | guessed first",
                "foamingfoam latex 99 | guessed first",
                "iloveyou-princess-1  | guessed first"
            })
    void whatIsGuessedFirstIsRefusedWithTheReason(String password, String reason) {
        assertThat(PasswordRules.problem(password, PERSONAL))
                .hasValueSatisfying(m -> assertThat(m).contains(reason));
    }

    @Test
    void lengthIsCountedInCharactersNotBytes() {
        assertThat(PasswordRules.problem("жёлтый чайник1", PERSONAL)).isPresent();
        assertThat(PasswordRules.problem("жёлтый чайник12", PERSONAL)).isEmpty();
        String most = "violet hinge over gravel ".repeat(11).substring(0, 256 - 12) + "copper rains";
        assertThat(most.length()).isEqualTo(256);
        assertThat(PasswordRules.problem(most, PERSONAL)).isEmpty();
        assertThat(PasswordRules.problem(most + "x", PERSONAL))
                .hasValueSatisfying(m -> assertThat(m).contains("at most 256"));
    }

    @Test
    void thePasswordsOfTheDemoKeepTheRules() {
        for (DemoPeople.DemoPerson p : DemoPeople.ALL) {
            assertThat(PasswordRules.problem(
                            p.password(), List.of(p.displayName(), p.signInName(), "Kiln Lane Workshop School (demo)")))
                    .as(p.password())
                    .isEmpty();
        }
    }
}
