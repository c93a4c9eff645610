package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.Roles;
import org.riseandgel.account.SignInName;
import org.riseandgel.account.office.Directory.Found;
import org.riseandgel.account.office.Enrolment.Part;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** What the office does to cohorts. Each act is one transaction with its audit entry. */
@ApplicationScoped
class CohortDesk {
    static final int LONGEST_NAME = 80;
    private static final int MOST_AT_ONCE = 200;

    private final Directory directory;
    private final Enrolment enrolment;
    private final AuditLog audit;

    CohortDesk(Directory directory, Enrolment enrolment, AuditLog audit) {
        this.directory = directory;
        this.enrolment = enrolment;
        this.audit = audit;
    }

    List<Problem> problemsOfName(String name) {
        String tidy = PlainText.tidy(name);
        if (!PlainText.isLine(tidy, LONGEST_NAME)) {
            return List.of(new Problem("name", "Type a name for the cohort, in 1 to 80 characters."));
        }
        return directory.cohortNamed(tidy).isPresent()
                ? List.of(new Problem(
                        "name", "There is a cohort of this name. Choose another, such as the year with it."))
                : List.of();
    }

    @Transactional
    UUID add(String name, UUID by) {
        UUID id = UUID.randomUUID();
        enrolment.addCohort(id, PlainText.tidy(name));
        audit.note(by, "cohort-added", id.toString(), PlainText.tidy(name));
        return id;
    }

    /** Lets all named people join, or says what is wrong and lets nobody join. */
    @Transactional
    List<Problem> join(UUID cohort, String typed, Part part, UUID by) {
        List<String> names = Arrays.stream(typed.split("[\\s,;]+"))
                .map(SignInName::normal)
                .filter(name -> !name.isEmpty())
                .distinct()
                .limit(MOST_AT_ONCE)
                .toList();
        List<Found> found = directory.withSignInNames(
                names.stream().filter(SignInName::isPossible).toList());
        if (directory.isClosed(cohort)) {
            return List.of(new Problem("names", "The cohort is closed. Open it again first. Nobody was added."));
        }
        Optional<Problem> wrong = problem(names, found, part);
        if (wrong.isPresent()) {
            return List.of(wrong.get());
        }
        found.forEach(f -> enrolment.join(cohort, f.id(), part));
        audit.note(by, "cohort-joined", cohort.toString(), part.word() + " " + names);
        return List.of();
    }

    @Transactional
    boolean leave(UUID cohort, UUID person, Part part, UUID by) {
        boolean left = enrolment.leave(cohort, person, part);
        if (left) {
            audit.note(by, "cohort-left", cohort.toString(), part.word() + " " + person);
        }
        return left;
    }

    /**
     * Closes a cohort or opens it again; false when it is so already. Nobody is taken out, and nothing of it is lost: the
     * office goes on seeing it, its instructors do so again once it is open.
     */
    @Transactional
    boolean close(UUID cohort, boolean closed, UUID by) {
        boolean changed = enrolment.close(cohort, closed);
        if (changed) {
            audit.note(by, closed ? "cohort-closed" : "cohort-opened", cohort.toString(), "");
        }
        return changed;
    }

    private static Optional<Problem> problem(List<String> names, List<Found> found, Part part) {
        if (names.isEmpty()) {
            return Optional.of(new Problem("names", "Type at least one sign-in name."));
        }
        List<String> known = found.stream().map(Found::signInName).toList();
        String unknown = names.stream().filter(n -> !known.contains(n)).collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            return Optional.of(new Problem(
                    "names",
                    "Nobody has this sign-in name: " + unknown + ". Look it up under People. Nobody was added yet."));
        }
        String role = part == Part.TEACHES ? Roles.INSTRUCTOR : Roles.APPRENTICE;
        String unfit = found.stream()
                .filter(f -> !f.roles().contains(role))
                .map(Found::signInName)
                .collect(Collectors.joining(", "));
        return unfit.isEmpty()
                ? Optional.empty()
                : Optional.of(new Problem(
                        "names",
                        "Not in the role of " + role + ": " + unfit
                                + ". Give the role first, or leave the name out. Nobody was added yet."));
    }
}
