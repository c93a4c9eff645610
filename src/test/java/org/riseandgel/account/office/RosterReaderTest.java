package org.riseandgel.account.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.account.office.Roster.Entry;
import org.riseandgel.account.office.Roster.Fault;

class RosterReaderTest {
    private static final String HEADING = "name,sign-in name,role,cohort\n";

    @Test
    void aQuotationMarkThatIsNeverClosedHidesNothingBeforeIt() {
        Roster roster = RosterReader.read(HEADING
                + ",mara,apprentice,\n"
                + "Joris,joris,boss,\n"
                + "Sanne,sanne,apprentice,\n"
                + "\"Odd,odd,apprentice,\n"
                + ",none,apprentice,\n");
        assertThat(roster.isRight()).isFalse();
        assertThat(roster.entries()).isEmpty();
        assertThat(roster.faults()).extracting(Roster.Fault::line).containsExactly(2, 3, 5);
    }

    @Test
    void readsPeopleLineByLine() {
        Roster roster = RosterReader.read(HEADING
                + "Mara Lind,mara.lind,apprentice,Spring group\n"
                + "\n"
                + "\"Vale, Joris \"\"Jo\"\"\",JORIS,Instructor,Spring group\n"
                + " Odd   Spaces ,odd,safety lead,");
        assertThat(roster.faults()).isEmpty();
        assertThat(roster.entries())
                .containsExactly(
                        new Entry(2, "Mara Lind", "mara.lind", "apprentice", "Spring group"),
                        new Entry(4, "Vale, Joris \"Jo\"", "joris", "instructor", "Spring group"),
                        new Entry(5, "Odd Spaces", "odd", "safety-lead", ""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\uFEFFname;sign-in name;role;cohort\r\nMara;mara;apprentice;\r\n",
                "name\tsign-in name\trole\tcohort\nMara\tmara\tapprentice\t\n",
                "Role, Cohort ,NAME,Sign-in name\napprentice,,Mara,mara\n",
                "\n\nname,sign-in name,role,cohort\nMara,mara,apprentice,\n,,,\n\n"
            })
    void spreadsheetsMayWriteItTheirWay(String text) {
        Roster roster = RosterReader.read(text);
        assertThat(roster.faults()).isEmpty();
        assertThat(roster.entries()).hasSize(1);
        assertThat(roster.entries().get(0).signInName()).isEqualTo("mara");
        assertThat(roster.entries().get(0).role()).isEqualTo("apprentice");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u0001',
            value = {
                "Mara,mara,apprentice                     | 2 | has 3 entries",
                "Mara,mara,apprentice,,                   | 2 | has 5 entries",
                ",mara,apprentice,                        | 2 | The name is missing",
                "Ma\\u202Era,mara,apprentice,             | 2 | invisible character",
                "Ma\\u0000ra,mara,apprentice,             | 2 | invisible character",
                "Mara,,apprentice,                        | 2 | sign-in name is missing",
                "Mara,m,apprentice,                       | 2 | 2 to 40 letters",
                "Mara,mara lind,apprentice,               | 2 | 2 to 40 letters",
                "Mara,mära,apprentice,                    | 2 | 2 to 40 letters",
                "Mara,-mara,apprentice,                   | 2 | 2 to 40 letters",
                "Mara,mara,,                              | 2 | The role is missing",
                "Mara,mara,boss,                          | 2 | The role is not known",
                "Mara,mara,office,Spring                  | 2 | Only apprentices and instructors",
                "Mara,mara,apprentice,Spr\\u200Bing       | 2 | cohort's name",
                "Mara,mara,apprentice,\\nMo,MARA,apprentice, | 3 | stands in line 2 too",
                "\"Mara,mara,apprentice,                  | 2 | quotation marks",
                "\"Mara\"x,mara,apprentice,               | 2 | quotation marks"
            })
    void everyFaultNamesItsLineAndWhatWouldBeRight(String lines, int line, String reason) {
        String text = lines.replace("\\n", "\n")
                .replace("\\u202E", "\u202E")
                .replace("\\u200B", "\u200B")
                .replace("\\u0000", "\u0000");
        assertThat(RosterReader.read(HEADING + text).faults()).hasSize(1).allSatisfy(fault -> {
            assertThat(fault.line()).isEqualTo(line);
            assertThat(fault.message()).contains(reason);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                                          | The list is empty",
                "'  '                                        | The list is empty",
                "name,sign-in name,role                      | A column is missing",
                "name,sign-in name,role,cohort,email         | Not known: email",
                "name,name,sign-in name,role,cohort          | A column is there twice",
                "Mara,mara,apprentice,Spring                 | Not known: mara, mara, apprentice, spring",
                "name,sign-in name,role,cohort               | no person below it"
            })
    void aWrongHeadingIsSaidOnce(String text, String reason) {
        assertThat(RosterReader.read(text).faults()).singleElement().satisfies(fault -> assertThat(fault.message())
                .contains(reason));
    }

    @Test
    void tooLongNamesAndListsAreRefused() {
        String name = "n".repeat(81);
        assertThat(RosterReader.read(HEADING + name + ",mara,apprentice," + name)
                        .faults())
                .hasSize(2);
        String people = IntStream.range(0, 10_001)
                .mapToObj(i -> "Person,p" + i + "x,apprentice,\n")
                .collect(Collectors.joining());
        assertThat(RosterReader.read(HEADING + people).faults())
                .extracting(Fault::message)
                .containsExactly(RosterReader.TOO_MANY);
        assertThat(RosterReader.read("x".repeat(RosterReader.MOST_BYTES + 1)).faults())
                .extracting(Fault::message)
                .containsExactly(RosterReader.TOO_LARGE);
    }

    @Test
    void allFaultsAreFoundNotOnlyTheFirst() {
        Roster roster = RosterReader.read(HEADING + ",m,boss,\nFine,fine,apprentice,\n,,,x\n");
        assertThat(roster.faults()).extracting(Fault::line).containsExactly(2, 2, 2, 4, 4, 4);
    }

    @Test
    void aFileMustBeUtf8() {
        assertThat(RosterReader.text(new byte[] {'M', (byte) 0xe4, 'r', 'a'})).isEmpty();
        assertThat(RosterReader.text("Mära".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .contains("Mära");
    }
}
