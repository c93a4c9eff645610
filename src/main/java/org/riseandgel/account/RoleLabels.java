package org.riseandgel.account;

import io.quarkus.qute.TemplateExtension;

/** Roles in the words of the pages. */
@TemplateExtension
final class RoleLabels {
    private RoleLabels() {}

    static String roleLabel(String role) {
        return switch (role) {
            case Roles.APPRENTICE -> "Apprentice";
            case Roles.INSTRUCTOR -> "Instructor";
            case Roles.SAFETY_LEAD -> "Safety lead";
            case Roles.OFFICE -> "Office";
            default -> role;
        };
    }
}
