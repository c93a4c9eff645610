package org.riseandgel.account;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.UUID;

/** Who is looking at the page. Layout and features ask here; nobody else reads the sign-in. */
@RequestScoped
@Named("viewer")
public class Viewer {
    /** Attribute of the security identity that holds the display name. */
    public static final String DISPLAY_NAME = "displayName";

    /** Attribute of the security identity that says a one-time password must be changed first. */
    public static final String MUST_CHANGE = "mustChangePassword";

    private final SecurityIdentity identity;

    Viewer(SecurityIdentity identity) {
        this.identity = identity;
    }

    /** Whether somebody is signed in at all. */
    public boolean isSignedIn() {
        return !identity.isAnonymous();
    }

    /** The person's id; only to be asked where somebody is signed in. */
    public UUID getId() {
        return UUID.fromString(identity.getPrincipal().getName());
    }

    /** The name shown to others; empty when nobody is signed in. */
    public String getDisplayName() {
        String name = identity.getAttribute(DISPLAY_NAME);
        return name == null ? "" : name;
    }

    /** Whether the one-time password must be changed before anything else. */
    public boolean isMustChangePassword() {
        return Boolean.TRUE.equals(identity.getAttribute(MUST_CHANGE));
    }

    public boolean isApprentice() {
        return identity.hasRole(Roles.APPRENTICE);
    }

    public boolean isInstructor() {
        return identity.hasRole(Roles.INSTRUCTOR);
    }

    public boolean isSafetyLead() {
        return identity.hasRole(Roles.SAFETY_LEAD);
    }

    public boolean isOffice() {
        return identity.hasRole(Roles.OFFICE);
    }
}
