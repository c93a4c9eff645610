package org.riseandgel.account.setup;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.account.SignInName;
import org.riseandgel.account.password.PasswordRules;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.school.School;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** What is typed to found a school. */
public class SetUpForm {
    private static final int LONGEST_SCHOOL = 120;
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_EMERGENCY = 200;

    @RestForm
    String key;

    @RestForm("school")
    String school;

    @RestForm
    String zone;

    @RestForm
    String mark;

    @RestForm
    String emergency;

    @RestForm
    String name;

    @RestForm("sign-in-name")
    String signInName;

    @RestForm
    String password;

    @RestForm("password-again")
    String passwordAgain;

    /** An empty form for the time zone of this computer. */
    static SetUpForm empty(String key) {
        SetUpForm form = new SetUpForm();
        form.key = key;
        form.zone = ZoneId.systemDefault().getId();
        form.mark = DecimalMark.POINT.name();
        return form.whole();
    }

    /** The form with nothing missing: a field that was not sent is an empty one. */
    SetUpForm whole() {
        key = Objects.requireNonNullElse(key, "");
        school = Objects.requireNonNullElse(school, "");
        zone = Objects.requireNonNullElse(zone, "");
        mark = Objects.requireNonNullElse(mark, "");
        emergency = Objects.requireNonNullElse(emergency, "");
        name = Objects.requireNonNullElse(name, "");
        signInName = Objects.requireNonNullElse(signInName, "");
        password = Objects.requireNonNullElse(password, "");
        passwordAgain = Objects.requireNonNullElse(passwordAgain, "");
        return this;
    }

    /** Everything that is wrong, in the order of the page. */
    List<Problem> problems() {
        List<Problem> found = new ArrayList<>();
        unless(
                PlainText.isLine(PlainText.tidy(school), LONGEST_SCHOOL),
                found,
                "school",
                "Type the school's name, in 1 to 120 characters.");
        unless(Zones.isKnown(zone), found, "zone", "Pick the school's time zone from the list.");
        unless(
                mark.equals("POINT") || mark.equals("COMMA"),
                found,
                "mark-point",
                "Pick how the school writes decimals.");
        unless(
                PlainText.isLine(PlainText.tidy(emergency), LONGEST_EMERGENCY),
                found,
                "emergency",
                "Type whom to call in an emergency, in 1 to 200 characters. It stands at the foot of every page.");
        unless(
                PlainText.isLine(PlainText.tidy(name), LONGEST_NAME),
                found,
                "name",
                "Type your name, in 1 to 80 characters.");
        unless(SignInName.isPossible(SignInName.normal(signInName)), found, "sign-in-name", SignInName.RULE);
        PasswordRules.problem(password, List.of(school, name, signInName))
                .ifPresent(message -> found.add(new Problem("password", message)));
        unless(
                password.equals(passwordAgain),
                found,
                "password-again",
                "The two passwords differ. Type the same twice.");
        return found;
    }

    School toSchool() {
        return new School(
                PlainText.tidy(school), ZoneId.of(zone), DecimalMark.valueOf(mark), PlainText.tidy(emergency), false);
    }

    Founding.FirstAccount toFirstAccount() {
        return new Founding.FirstAccount(PlainText.tidy(name), SignInName.normal(signInName), password);
    }

    public String getKey() {
        return key;
    }

    public String getSchool() {
        return school;
    }

    public String getZone() {
        return zone;
    }

    public String getMark() {
        return mark;
    }

    public String getEmergency() {
        return emergency;
    }

    public String getName() {
        return name;
    }

    public String getSignInName() {
        return signInName;
    }

    private static void unless(boolean fine, List<Problem> found, String field, String message) {
        if (!fine) {
            found.add(new Problem(field, message));
        }
    }
}
