package org.riseandgel.account.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.account.SignInName;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** What is typed to add a person. */
public class PersonForm {
    static final int LONGEST_NAME = 80;

    @RestForm
    String name;

    @RestForm("sign-in-name")
    String signInName;

    @RestForm("role")
    List<String> roles;

    @RestForm
    String cohort;

    @RestForm
    String password;

    static PersonForm empty() {
        return new PersonForm().whole();
    }

    /** The form with nothing missing: a field that was not sent is an empty one. */
    PersonForm whole() {
        name = Objects.requireNonNullElse(name, "");
        signInName = Objects.requireNonNullElse(signInName, "");
        roles = Objects.requireNonNullElse(roles, List.of());
        cohort = Objects.requireNonNullElse(cohort, "");
        password = Objects.requireNonNullElse(password, "");
        return this;
    }

    /** What is wrong with the fields themselves; what the tables say comes on top. */
    List<Problem> problems() {
        List<Problem> found = new ArrayList<>();
        if (!PlainText.isLine(PlainText.tidy(name), LONGEST_NAME)) {
            found.add(new Problem("name", "Type the person's name, in 1 to 80 characters."));
        }
        if (!SignInName.isPossible(SignInName.normal(signInName))) {
            found.add(new Problem("sign-in-name", SignInName.RULE));
        }
        RoleForm.problem(roles).ifPresent(found::add);
        return found;
    }

    String tidyName() {
        return PlainText.tidy(name);
    }

    String normalSignInName() {
        return SignInName.normal(signInName);
    }

    public String getName() {
        return name;
    }

    public String getSignInName() {
        return signInName;
    }

    public List<String> getRoles() {
        return roles;
    }

    public String getCohort() {
        return cohort;
    }
}
