package org.riseandgel.clearance.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.signin.PasswordCheck;
import org.riseandgel.clearance.RegisterProblem;

/**
 * The own password once more before somebody is cleared and before anything is erased: whoever finds a tablet that is still
 * signed in clears nobody with it. Taking away never asks.
 */
@ApplicationScoped
class PasswordAgain {
    static final String FIELD = "password";

    private final PasswordCheck check;
    private final Viewer viewer;

    PasswordAgain(PasswordCheck check, Viewer viewer) {
        this.check = check;
        this.viewer = viewer;
    }

    /** Goes on only with the password of the one who is signed in. */
    void need(String password) {
        check.problemWith(viewer.getId(), password, FIELD).ifPresent(problem -> {
            throw new RegisterProblem(List.of(problem));
        });
    }
}
