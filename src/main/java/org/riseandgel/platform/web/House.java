package org.riseandgel.platform.web;

import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.Optional;
import org.riseandgel.platform.school.School;
import org.riseandgel.platform.school.SchoolSettings;

/** What every page says about the school. Never waits for the database where waiting is not allowed. */
@ApplicationScoped
@Named("house")
public class House {
    private final SchoolSettings settings;

    House(SchoolSettings settings) {
        this.settings = settings;
    }

    /** Whether the school has been set up. */
    public boolean isSetUp() {
        return school().isPresent();
    }

    /** Whether this is the demo school, which every page must say. */
    public boolean isDemo() {
        return school().map(School::demo).orElse(false);
    }

    /** The school's name; empty before it is set up. */
    public String getSchoolName() {
        return school().map(School::name).orElse("");
    }

    /** Whom to call in an emergency, in the school's own words; may be empty. */
    public String getEmergency() {
        return school().map(School::emergency).orElse("");
    }

    private Optional<School> school() {
        return BlockingOperationControl.isBlockingAllowed() ? settings.schoolOrLastKnown() : settings.lastKnown();
    }
}
