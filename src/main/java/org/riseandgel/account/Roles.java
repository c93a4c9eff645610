package org.riseandgel.account;

/** The names of the roles, as endpoints and the database use them. */
public final class Roles {
    public static final String APPRENTICE = "apprentice";
    public static final String INSTRUCTOR = "instructor";
    public static final String SAFETY_LEAD = "safety-lead";
    public static final String OFFICE = "office";

    private Roles() {}
}
