package org.riseandgel.account.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Everything that can be wrong with a list of people by itself. Each kind is found in its line, alone, and told with what
 * would be right; a list with a fault is never taken in.
 */
class RosterFaultsTest {
    private static final String HEADING = "name,sign-in name,role,cohort\n";
    private static final Map<String, Kind> KINDS = new LinkedHashMap<>();

    private record Kind(int line, String list, String told) {}

    private static void list(String kind, String list, String told) {
        KINDS.put(kind, new Kind(0, list, told));
    }

    private static void heading(String kind, String list, String told) {
        KINDS.put(kind, new Kind(1, list, told));
    }

    /** Below a right heading and a right line, so that the fault is in line 3. */
    private static void line(String kind, String line, String told) {
        KINDS.put(kind, new Kind(3, HEADING + "Fine,fine,apprentice,\n" + line + "\n", told));
    }

    static {
        list("nothing at all", "", "The list is empty");
        list("spaces alone", " \n \t\n", "The list is empty");
        list("a heading alone", HEADING, "no person below it");
        list("a heading and empty lines", HEADING + ",,,\n\n,,,\n", "no person below it");
        list("too many people", HEADING + "P,pp,apprentice,\n".repeat(10_001), "more than 10,000 people");
        list("empty lines without end", HEADING + ",,,\n".repeat(40_001), "more than 10,000 people");
        list("too many bytes", HEADING + "é".repeat(1_000_001), "larger than 2 MB");
        heading("no heading", "Mara,mara,apprentice,Spring\n", "Not known: mara, mara, apprentice, spring");
        heading("an unknown column", "name,sign-in name,role,cohort,email\n", "Not known: email");
        heading("a column twice", "name,name,sign-in name,role,cohort\n", "A column is there twice");
        heading("a column missing", "name,sign-in name,role\n", "A column is missing");
        heading("another separator", "name|sign-in name|role|cohort\n", "The first line must be");
        line("an entry too few", "Mara,mara,apprentice", "has 3 entries; it must have 4");
        line("an entry too many", "Mara,mara,apprentice,,", "has 5 entries; it must have 4");
        line("the separator changes", "Mara;mara;apprentice;", "has 1 entries; it must have 4");
        line("a quotation mark not closed", "\"Mara,mara,apprentice,", "quotation marks do not pair");
        line("text after a quotation mark", "\"Mara\"x,mara,apprentice,", "quotation marks do not pair");
        line("no name", ",mara,apprentice,", "The name is missing");
        line("a name of spaces", "   ,mara,apprentice,", "The name is missing");
        line("a name too long", "n".repeat(81) + ",mara,apprentice,", "longer than 80 characters");
        line("a name that turns the line round", "Ma\u202Era,mara,apprentice,", "invisible character");
        line("a name with a NUL", "Ma\u0000ra,mara,apprentice,", "invisible character");
        line("a name that lost a character", "M\uFFFDra,mara,apprentice,", "got lost when the list was saved");
        line("a name that is a formula", "=1+1,mara,apprentice,", "begins with =, as a formula");
        line("no sign-in name", "Mara,,apprentice,", "The sign-in name is missing");
        line("a sign-in name too short", "Mara,m,apprentice,", "2 to 40 letters");
        line("a sign-in name too long", "Mara," + "m".repeat(41) + ",apprentice,", "2 to 40 letters");
        line("a sign-in name with a space", "Mara,mara lind,apprentice,", "2 to 40 letters");
        line("a sign-in name with other letters", "Mara,mära,apprentice,", "2 to 40 letters");
        line("a sign-in name that begins with a dash", "Mara,-mara,apprentice,", "2 to 40 letters");
        line("a sign-in name that is an address", "Mara,mara@example.org,apprentice,", "2 to 40 letters");
        line("a sign-in name twice", "Mara,FINE,apprentice,", "stands in line 2 too");
        line("no role", "Mara,mara,,", "The role is missing");
        line("an unknown role", "Mara,mara,boss,", "The role is not known");
        line("two roles", "Mara,mara,apprentice office,", "The role is not known");
        line("a cohort too long", "Mara,mara,apprentice," + "c".repeat(81), "cohort's name is longer than 80");
        line("an invisible character in a cohort", "Mara,mara,apprentice,Spr\u200Bing", "cohort's name");
        line("a cohort that lost a character", "Mara,mara,apprentice,Spr\uFFFDng", "cohort's name holds a character");
        line("a cohort that is a formula", "Mara,mara,apprentice,@SUM(1)", "cohort's name begins with @");
        line("a cohort for the office", "Mara,mara,office,Spring", "Only apprentices and instructors");
    }

    @TestFactory
    List<DynamicTest> eachKindIsFoundAloneInItsLineWithWhatWouldBeRight() {
        return KINDS.entrySet().stream()
                .map(kind -> DynamicTest.dynamicTest(kind.getKey(), () -> {
                    Roster roster = RosterReader.read(kind.getValue().list());
                    assertThat(roster.isRight()).isFalse();
                    assertThat(roster.faults()).singleElement().satisfies(fault -> {
                        assertThat(fault.line()).isEqualTo(kind.getValue().line());
                        assertThat(fault.message()).contains(kind.getValue().told());
                    });
                }))
                .toList();
    }

    @Test
    void thereAreMoreThanThirtyKinds() {
        assertThat(KINDS).hasSizeGreaterThan(30);
    }

    @Test
    void filesThatAreNotUtf8AreNotRead() {
        for (byte[] bytes : List.of(
                (HEADING + "Mära,mara,apprentice,\n").getBytes(StandardCharsets.ISO_8859_1),
                (HEADING + "Mara,mara,apprentice,\n").getBytes(StandardCharsets.UTF_16),
                new byte[] {'P', 'K', 3, 4, (byte) 0x80})) {
            assertThat(RosterReader.text(bytes)).isEmpty();
        }
    }
}
