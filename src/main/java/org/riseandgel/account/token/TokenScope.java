package org.riseandgel.account.token;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.account.Roles;

/** What a token may be used for. A token reaches the addresses of its scopes and nothing else. */
public enum TokenScope {
    BENCH("bench", "/api/v1/bench", "Work the calculations of the bench", Set.of()),
    OWN_PROGRESS("own-progress", "/api/v1/me", "Read your own progress", Set.of(Roles.APPRENTICE)),
    COHORT_PROGRESS(
            "cohort-progress",
            "/api/v1/cohorts",
            "Read progress and results of your cohorts",
            Set.of(Roles.INSTRUCTOR, Roles.OFFICE)),
    REGISTER_CHECK(
            "register-check",
            "/api/v1/register/check",
            "Ask the register whether somebody may do a task now",
            Set.of(Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE));

    private final String id;
    private final String address;
    private final String words;
    private final Set<String> roles;

    TokenScope(String id, String address, String words, Set<String> roles) {
        this.id = id;
        this.address = address;
        this.words = words;
        this.roles = roles;
    }

    /** Its name in forms and in the database. */
    public String id() {
        return id;
    }

    /** What it allows, for people. */
    public String words() {
        return words;
    }

    /** Whether a request to this path is within the scope. */
    public boolean covers(String path) {
        return path.equals(address) || path.startsWith(address + "/");
    }

    /** The scopes that somebody with these roles may give to a token. */
    public static List<TokenScope> of(Set<String> roles) {
        return Arrays.stream(values())
                .filter(scope -> scope.roles.isEmpty() || scope.roles.stream().anyMatch(roles::contains))
                .toList();
    }

    /** The scope of that name. */
    public static Optional<TokenScope> byId(String id) {
        return Arrays.stream(values()).filter(scope -> scope.id.equals(id)).findFirst();
    }
}
