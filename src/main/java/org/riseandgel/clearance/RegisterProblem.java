package org.riseandgel.clearance;

import java.util.List;
import org.riseandgel.platform.web.Problem;

/** What was asked for cannot be done as it was typed; nothing was changed. */
public final class RegisterProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    public RegisterProblem(List<Problem> problems) {
        super(problems.toString());
        this.problems = List.copyOf(problems);
    }

    /** One problem with one field. */
    public static RegisterProblem with(String field, String message) {
        return new RegisterProblem(List.of(new Problem(field, message)));
    }

    public List<Problem> problems() {
        return problems;
    }
}
