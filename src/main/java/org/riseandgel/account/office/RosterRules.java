package org.riseandgel.account.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.riseandgel.account.Roles;
import org.riseandgel.account.SignInName;
import org.riseandgel.account.office.Roster.Entry;
import org.riseandgel.platform.web.PlainText;

/** What a line of a list of people must be. */
final class RosterRules {
    private RosterRules() {}

    /** The line as it would be stored. */
    static Entry tidy(int line, String name, String signInName, String role, String cohort) {
        return new Entry(
                line,
                PlainText.tidy(name),
                SignInName.normal(signInName),
                PlainText.tidy(role).toLowerCase(Locale.ROOT).replace(' ', '-'),
                PlainText.tidy(cohort));
    }

    /**
     * What is wrong with the line by itself, and against the lines before it.
     *
     * @param earlier the line that has the same sign-in name; null if there is none
     */
    static List<String> faults(Entry entry, Integer earlier) {
        List<String> found = new ArrayList<>();
        if (entry.name().isEmpty()) {
            found.add("The name is missing.");
        } else if (!PlainText.isLine(entry.name(), PersonForm.LONGEST_NAME)) {
            found.add("The name is longer than 80 characters or holds an invisible character. Type it again.");
        }
        damaged("name", entry.name(), found);
        signInName(entry, earlier, found);
        role(entry, found);
        return found;
    }

    /** What tells of a file that was read in the wrong way before it came, or of one made to do harm in a spreadsheet. */
    private static void damaged(String what, String text, List<String> found) {
        if (text.indexOf('\uFFFD') >= 0) {
            found.add("The " + what + " holds a character that got lost when the list was saved. Save it as CSV UTF-8"
                    + " again.");
        }
        if (!text.isEmpty() && "=+@".indexOf(text.charAt(0)) >= 0) {
            found.add("The " + what + " begins with " + text.charAt(0)
                    + ", as a formula in a spreadsheet does. Write it" + " without.");
        }
    }

    private static void signInName(Entry entry, Integer earlier, List<String> found) {
        if (entry.signInName().isEmpty()) {
            found.add("The sign-in name is missing.");
        } else if (!SignInName.isPossible(entry.signInName())) {
            found.add(SignInName.RULE);
        } else if (earlier != null) {
            found.add("The sign-in name " + entry.signInName() + " stands in line " + earlier
                    + " too. Each person needs an own one.");
        }
    }

    private static void role(Entry entry, List<String> found) {
        if (entry.role().isEmpty()) {
            found.add("The role is missing: apprentice, instructor, safety-lead or office.");
        } else if (!RoleForm.ALL.contains(entry.role())) {
            found.add("The role is not known. It must be apprentice, instructor, safety-lead or office.");
        }
        if (entry.cohort().isEmpty()) {
            return;
        }
        if (!PlainText.isLine(entry.cohort(), CohortDesk.LONGEST_NAME)) {
            found.add("The cohort's name is longer than 80 characters or holds an invisible character.");
        }
        damaged("cohort's name", entry.cohort(), found);
        boolean inCohorts =
                entry.role().equals(Roles.APPRENTICE) || entry.role().equals(Roles.INSTRUCTOR);
        if (!inCohorts && RoleForm.ALL.contains(entry.role())) {
            found.add("Only apprentices and instructors are in cohorts. Leave the cohort empty.");
        }
    }
}
