package org.riseandgel.account;

import java.util.Set;
import java.util.UUID;

/** A feature that knows of people about whom nothing may be erased now; whoever erases asks every one. */
public interface HeldPeople {
    /** Those on whom a legal hold lies. */
    Set<UUID> held();
}
