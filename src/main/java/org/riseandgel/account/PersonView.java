package org.riseandgel.account;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/** A person as other features may see them. */
public record PersonView(
        UUID id, String signInName, String displayName, Set<String> roles, Instant disabledAt, Instant createdAt) {
    public boolean isDisabled() {
        return disabledAt != null;
    }
}
