package org.riseandgel.grading;

import java.util.Objects;
import org.jboss.resteasy.reactive.RestForm;

/** What is typed to manage a set that is out: more time for somebody, a copy, taking it back. */
public class ManageForm {
    @RestForm
    public String person;

    @RestForm("until-day")
    public String untilDay;

    @RestForm("until-time")
    public String untilTime;

    @RestForm("extension-reason")
    public String extensionReason;

    @RestForm("withdraw-reason")
    public String withdrawReason;

    @RestForm("copy-cohort")
    public String copyCohort;

    static ManageForm empty() {
        return new ManageForm().whole();
    }

    /** The form with nothing missing: a field that was not sent is an empty one. */
    ManageForm whole() {
        person = Objects.requireNonNullElse(person, "");
        untilDay = Objects.requireNonNullElse(untilDay, "");
        untilTime = Objects.requireNonNullElse(untilTime, "");
        extensionReason = Objects.requireNonNullElse(extensionReason, "");
        withdrawReason = Objects.requireNonNullElse(withdrawReason, "");
        copyCohort = Objects.requireNonNullElse(copyCohort, "");
        return this;
    }
}
