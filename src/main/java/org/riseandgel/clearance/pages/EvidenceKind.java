package org.riseandgel.clearance.pages;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can be written down about somebody, besides a practical. */
public enum EvidenceKind {
    TRAINING("Training given", false),
    EQUIPMENT("Protective equipment shown", false),
    EARLIER_TRAINING("Training had elsewhere", false),
    FIT_FOR_TASK("Fit for the task, or not", false),
    FIT_TEST("Fit test of a respirator", false),
    RESPIRATOR_TRAINING("Training on the respirator", false),
    ADDITIONAL_TRAINING("Additional training had", false),
    HANDLED("The salt was handled", false),
    AGE("Age, from a paper that was seen", true),
    AGE_EXCEPTION("Under 18: learning under a supervisor", true);

    private final String title;
    private final boolean leadOnly;

    EvidenceKind(String title, boolean leadOnly) {
        this.title = title;
        this.leadOnly = leadOnly;
    }

    public String getTitle() {
        return title;
    }

    /** Its name in an address. */
    public String getId() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<EvidenceKind> find(String id) {
        return Arrays.stream(values()).filter(kind -> kind.getId().equals(id)).findFirst();
    }

    /** Those that a safety lead writes down, or those that every instructor does too. */
    static List<EvidenceKind> open(boolean safetyLead) {
        return Arrays.stream(values())
                .filter(kind -> safetyLead || !kind.leadOnly)
                .toList();
    }
}
