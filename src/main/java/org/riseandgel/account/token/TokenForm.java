package org.riseandgel.account.token;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** What was sent to make a token. */
public class TokenForm {
    static final List<Choice> DAYS =
            List.of(new Choice("30", "30 days"), new Choice("90", "90 days"), new Choice("365", "One year"));
    private static final int LONGEST_NAME = 60;

    @RestForm
    public String name;

    @RestForm("scope")
    public List<String> scopes;

    @RestForm
    public String days;

    @RestForm
    public String password;

    static TokenForm empty() {
        return new TokenForm().whole();
    }

    /** The form with nothing missing: a field that was not sent is an empty one. */
    TokenForm whole() {
        name = Objects.requireNonNullElse(name, "");
        scopes = Objects.requireNonNullElse(scopes, List.of());
        days = Objects.requireNonNullElse(days, "90");
        password = Objects.requireNonNullElse(password, "");
        return this;
    }

    /** The scopes that were ticked; those that the roles do not allow are left out. */
    List<TokenScope> chosen(Set<String> roles) {
        return TokenScope.of(roles).stream()
                .filter(scope -> scopes.contains(scope.id()))
                .toList();
    }

    Duration lasting() {
        return Duration.ofDays(Integer.parseInt(days));
    }

    List<Problem> problems(Set<String> roles) {
        List<Problem> problems = new ArrayList<>();
        if (name.isBlank() || name.strip().length() > LONGEST_NAME) {
            problems.add(new Problem("name", "Give the token a name of 1 to 60 letters, such as “store-room tablet”."));
        }
        if (chosen(roles).isEmpty()) {
            problems.add(new Problem("scope", "Tick at least one thing that the token may do."));
        }
        if (DAYS.stream().noneMatch(choice -> choice.value().equals(days))) {
            problems.add(new Problem("days", "Pick how long the token works from the list."));
        }
        return problems;
    }
}
