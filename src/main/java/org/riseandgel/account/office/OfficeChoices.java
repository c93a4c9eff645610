package org.riseandgel.account.office;

import java.util.List;
import java.util.stream.Stream;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.Roles;
import org.riseandgel.platform.web.Choice;

/** The lists to pick from on the office's pages. */
final class OfficeChoices {
    private OfficeChoices() {}

    static List<Choice> roles() {
        return List.of(
                new Choice("", "All roles"),
                new Choice(Roles.APPRENTICE, "Apprentices"),
                new Choice(Roles.INSTRUCTOR, "Instructors"),
                new Choice(Roles.SAFETY_LEAD, "Safety leads"),
                new Choice(Roles.OFFICE, "Office"));
    }

    static List<Choice> states() {
        return List.of(new Choice("", "All accounts"), new Choice("on", "Can sign in"), new Choice("off", "Disabled"));
    }

    static List<Choice> cohorts(List<CohortView> cohorts) {
        return Stream.concat(
                        Stream.of(new Choice("", "None")),
                        cohorts.stream().map(c -> new Choice(c.id().toString(), c.name())))
                .toList();
    }
}
