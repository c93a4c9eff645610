package org.riseandgel.account;

import java.util.List;
import java.util.UUID;

/** The invented people of the demo school, with fixed ids and passwords that everybody may know. */
public final class DemoPeople {
    public static final UUID OFFICE = id(1);
    public static final UUID INSTRUCTOR = id(2);
    public static final UUID SAFETY_LEAD = id(3);
    public static final UUID ANOUK = id(11);
    public static final UUID BASTIAN = id(12);
    public static final UUID CELESTE = id(13);
    public static final UUID DARIUS = id(14);
    public static final UUID ESME = id(15);
    public static final UUID FINTAN = id(16);

    public static final UUID FIRST_COHORT = id(101);
    public static final UUID SECOND_COHORT = id(102);

    /** Everybody, in the order the sign-in page shows them. */
    public static final List<DemoPerson> ALL = List.of(
            new DemoPerson(ANOUK, "anouk", "Anouk Sorrel", Roles.APPRENTICE, "teal kettle on the stairs", FIRST_COHORT),
            new DemoPerson(
                    BASTIAN, "bastian", "Bastian Quill", Roles.APPRENTICE, "nine dry pebbles sing", FIRST_COHORT),
            new DemoPerson(
                    CELESTE, "celeste", "Celeste Marrow", Roles.APPRENTICE, "paper boat in the hall", FIRST_COHORT),
            new DemoPerson(
                    DARIUS, "darius", "Darius Fennick", Roles.APPRENTICE, "slow train past the mill", FIRST_COHORT),
            new DemoPerson(ESME, "esme", "Esme Tarrant", Roles.APPRENTICE, "two owls share a ladder", SECOND_COHORT),
            new DemoPerson(
                    FINTAN, "fintan", "Fintan Oake", Roles.APPRENTICE, "grey coat and blue spoon", SECOND_COHORT),
            new DemoPerson(INSTRUCTOR, "ines", "Ines Calloway", Roles.INSTRUCTOR, "pepper mill at midnight", null),
            new DemoPerson(SAFETY_LEAD, "piet", "Piet Hargrove", Roles.SAFETY_LEAD, "lantern under the bridge", null),
            new DemoPerson(OFFICE, "odile", "Odile Bracken", Roles.OFFICE, "seven cups in the drawer", null));

    private DemoPeople() {}

    /**
     * One invented person.
     *
     * @param cohort the cohort that an apprentice learns in; null for others
     */
    public record DemoPerson(
            UUID id, String signInName, String displayName, String role, String password, UUID cohort) {}

    private static UUID id(int number) {
        return new UUID(0x0000_0000_0000_4000L, 0x8000_0000_0000_0000L + number);
    }
}
