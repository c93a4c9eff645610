package org.riseandgel.account.office;

import java.util.List;
import java.util.Optional;
import org.riseandgel.account.Roles;
import org.riseandgel.platform.web.Problem;

/** The roles ticked on a form. */
final class RoleForm {
    /** All roles, in the order of the pages. */
    static final List<String> ALL = List.of(Roles.APPRENTICE, Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE);

    private RoleForm() {}

    /** What is wrong with the ticked roles. */
    static Optional<Problem> problem(List<String> roles) {
        boolean fine = roles != null && !roles.isEmpty() && ALL.containsAll(roles);
        return fine
                ? Optional.empty()
                : Optional.of(new Problem("role-apprentice", "Tick at least one role: what the person may do."));
    }
}
