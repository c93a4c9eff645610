package org.riseandgel.account.office;

import jakarta.ws.rs.DefaultValue;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.account.SignInName;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** What is typed to add a person. */
public class PersonForm {
    static final int LONGEST_NAME = 80;

    @RestForm
    @DefaultValue("")
    String name;

    @RestForm("sign-in-name")
    @DefaultValue("")
    String signInName;

    @RestForm("role")
    List<String> roles;

    @RestForm
    @DefaultValue("")
    String cohort;

    @RestForm
    @DefaultValue("")
    String password;

    static PersonForm empty() {
        PersonForm form = new PersonForm();
        form.name = form.signInName = form.cohort = "";
        form.roles = List.of();
        return form;
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
        return roles == null ? List.of() : roles;
    }

    public String getCohort() {
        return cohort;
    }
}
