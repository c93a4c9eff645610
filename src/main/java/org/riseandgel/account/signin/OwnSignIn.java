package org.riseandgel.account.signin;

import java.time.Instant;
import java.util.UUID;

/** One of the sign-ins that a person has open, as shown to that person. */
record OwnSignIn(UUID id, Instant since, Instant lastSeen, String address, String browser) {}
