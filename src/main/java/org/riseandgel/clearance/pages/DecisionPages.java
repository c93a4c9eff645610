package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterDenied;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.rule.Judgement;
import org.riseandgel.clearance.rule.NeedResult;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Trigger;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** One person in the register: the record, and what may be decided scope by scope with every precondition shown. */
@Path("/register/people/{person}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class DecisionPages {
    private static final int UNPROCESSABLE = 422;
    private static final String WITHDRAWAL = "withdraw-reason";

    private final Register register;
    private final PersonRecord records;
    private final Decisions decisions;
    private final People people;
    private final Viewer viewer;
    private final PasswordAgain passwordAgain;
    private final SchoolSettings settings;
    private final Clock clock;

    DecisionPages(
            Register register,
            PersonRecord records,
            Decisions decisions,
            People people,
            Viewer viewer,
            PasswordAgain passwordAgain,
            SchoolSettings settings,
            Clock clock) {
        this.register = register;
        this.records = records;
        this.decisions = decisions;
        this.people = people;
        this.viewer = viewer;
        this.passwordAgain = passwordAgain;
        this.settings = settings;
        this.clock = clock;
    }

    /** An evidence line that a precondition rests on. */
    public record Rests(long number, String what) {}

    /** A precondition with what it rests on. */
    public record NeedView(NeedResult need, List<Rests> rests) {}

    /** One person in one scope as the decision page shows it. */
    public record DecisionView(
            PersonView person,
            Scope scope,
            Standing standing,
            Judgement judgement,
            List<NeedView> needs,
            boolean suspended,
            boolean mayDecide) {}

    /** What was typed into a form of the page. */
    public record Typed(
            String countersigner, String reason, String trigger, String since, String withdrawal, boolean forCause) {
        static final Typed NOTHING = new Typed("", "", "", "");

        Typed(String countersigner, String reason, String trigger, String since) {
            this(countersigner, reason, trigger, since, "", false);
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance person(
                PersonView person,
                List<Register.BoardRow> standings,
                List<Scope> scopes,
                List<LineView> lines,
                List<Choice> triggers,
                Typed typed,
                boolean mayDecide,
                String done,
                List<Problem> problems);

        static native TemplateInstance decision(
                DecisionView decision, List<Choice> triggers, Typed typed, String done, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance person(@RestPath UUID person, @RestQuery @DefaultValue("") String done) {
        return personPage(find(person), Typed.NOTHING, done, List.of());
    }

    /** Suspends in everything. */
    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("suspend")
    public Response suspendAll(
            @RestPath UUID person,
            @RestForm @DefaultValue("") String trigger,
            @RestForm @DefaultValue("") String reason,
            @RestForm @DefaultValue("") String since) {
        PersonView found = find(person);
        Typed typed = new Typed("", reason, trigger, since);
        return acted(
                () -> {
                    decisions.suspend(viewer.getId(), person, null, trigger(trigger), reason, moment(since));
                    return SeeOther.page("/register/people/" + person + "?done=suspended");
                },
                problems -> personPage(found, typed, "", problems));
    }

    @GET
    @Path("{scope}")
    public TemplateInstance decision(
            @RestPath UUID person, @RestPath UUID scope, @RestQuery @DefaultValue("") String done) {
        return decisionPage(find(person), scope(scope), Typed.NOTHING, done, List.of());
    }

    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("{scope}/grant")
    public Response grant(
            @RestPath UUID person,
            @RestPath UUID scope,
            @RestForm @DefaultValue("") String countersigner,
            @RestForm(PasswordAgain.FIELD) @DefaultValue("") String password) {
        return decide(
                person,
                scope,
                new Typed(countersigner, "", "", ""),
                () -> {
                    passwordAgain.need(password);
                    return decisions
                            .grant(viewer.getId(), person, scope, countersigner)
                            .given();
                },
                "granted");
    }

    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("{scope}/reinstate")
    public Response reinstate(
            @RestPath UUID person,
            @RestPath UUID scope,
            @RestForm @DefaultValue("") String countersigner,
            @RestForm @DefaultValue("") String reason,
            @RestForm(PasswordAgain.FIELD) @DefaultValue("") String password) {
        return decide(
                person,
                scope,
                new Typed(countersigner, reason, "", ""),
                () -> {
                    passwordAgain.need(password);
                    return decisions
                            .reinstate(viewer.getId(), person, scope, countersigner, reason)
                            .given();
                },
                "reinstated");
    }

    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("{scope}/suspend")
    public Response suspend(
            @RestPath UUID person,
            @RestPath UUID scope,
            @RestForm @DefaultValue("") String trigger,
            @RestForm @DefaultValue("") String reason,
            @RestForm @DefaultValue("") String since) {
        return decide(
                person,
                scope,
                new Typed("", reason, trigger, since),
                () -> decisions.suspend(viewer.getId(), person, scope, trigger(trigger), reason, moment(since)) != null,
                "suspended");
    }

    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("{scope}/withdraw")
    public Response withdraw(
            @RestPath UUID person,
            @RestPath UUID scope,
            @RestForm @DefaultValue("") String cause,
            @RestForm(WITHDRAWAL) @DefaultValue("") String reason) {
        boolean forCause = "yes".equals(cause);
        return decide(
                person,
                scope,
                new Typed("", "", "", "", reason, forCause),
                () -> withdrawn(person, scope, forCause, reason),
                "withdrawn");
    }

    /** The page has a reason of its own for each form: what is wrong with this one is said at this one. */
    private boolean withdrawn(UUID person, UUID scope, boolean forCause, String reason) {
        try {
            return decisions.withdraw(viewer.getId(), person, scope, forCause, reason) != null;
        } catch (RegisterProblem e) {
            throw new RegisterProblem(e.problems().stream()
                    .map(one -> one.field().equals("reason") ? new Problem(WITHDRAWAL, one.message()) : one)
                    .toList());
        }
    }

    private Response decide(UUID person, UUID scope, Typed typed, Supplier<Boolean> act, String done) {
        PersonView found = find(person);
        Scope where = scope(scope);
        return acted(
                () -> Boolean.TRUE.equals(act.get())
                        ? SeeOther.page("/register/people/%s/%s?done=%s".formatted(person, scope, done))
                        : Response.status(UNPROCESSABLE)
                                .entity(decisionPage(
                                        found,
                                        where,
                                        typed,
                                        "",
                                        List.of(new Problem(
                                                "needs", "Not every precondition is met, so nothing was given."))))
                                .build(),
                problems -> decisionPage(found, where, typed, "", problems));
    }

    /** What is not this person's to do is not found, as everywhere. */
    private static Response acted(
            Supplier<Response> act, java.util.function.Function<List<Problem>, TemplateInstance> again) {
        try {
            return act.get();
        } catch (RegisterProblem e) {
            return Response.status(UNPROCESSABLE)
                    .entity(again.apply(e.problems()))
                    .build();
        } catch (RegisterDenied e) {
            throw new NotFoundException(e);
        }
    }

    private TemplateInstance personPage(PersonView person, Typed typed, String done, List<Problem> problems) {
        return Templates.person(
                person,
                register.standings(person.id()),
                register.scopes(),
                records.of(person.id()).stream().map(LineView::of).toList(),
                triggers(),
                typed,
                mayDecide(),
                done,
                problems);
    }

    private TemplateInstance decisionPage(
            PersonView person, Scope scope, Typed typed, String done, List<Problem> problems) {
        Standing standing = register.standings(person.id()).stream()
                .filter(row -> row.scope().id().equals(scope.id()))
                .map(Register.BoardRow::standing)
                .findFirst()
                .orElse(null);
        boolean suspended =
                standing != null && isSuspension(standing.firstReason().orElse(null));
        boolean countersigned = !typed.countersigner().isBlank();
        Judgement judgement = suspended
                ? decisions.mayReinstate(viewer.getId(), person.id(), scope.id(), countersigned)
                : decisions.mayGrant(viewer.getId(), person.id(), scope.id(), countersigned);
        Map<UUID, LineView> lines = records.of(person.id()).stream()
                .map(LineView::of)
                .collect(Collectors.toMap(LineView::id, line -> line));
        List<NeedView> needs = judgement.needs().stream()
                .map(need -> new NeedView(
                        need,
                        need.evidence().stream()
                                .filter(lines::containsKey)
                                .map(lines::get)
                                .map(line -> new Rests(line.number(), line.what()))
                                .sorted(java.util.Comparator.comparingLong(Rests::number))
                                .toList()))
                .toList();
        return Templates.decision(
                new DecisionView(person, scope, standing, judgement, needs, suspended, mayDecide()),
                triggers(),
                typed,
                done,
                problems);
    }

    private static boolean isSuspension(Reason reason) {
        return reason == Reason.SUSPENDED
                || reason == Reason.PARTY_WITHDRAWN
                || reason == Reason.RESPIRATOR_LAPSED
                || reason == Reason.SDS_DELTA_OVERDUE;
    }

    /** The moment since which it holds; null when the field is empty, which means now. */
    private Instant moment(String since) {
        List<Problem> problems = new ArrayList<>();
        Instant read = Moment.read("since", since, settings.zone(), clock.instant(), problems)
                .instant()
                .orElse(null);
        if (!problems.isEmpty()) {
            throw new RegisterProblem(problems);
        }
        return read;
    }

    private boolean mayDecide() {
        return viewer.isInstructor() || viewer.isSafetyLead();
    }

    private PersonView find(UUID person) {
        return people.find(person).orElseThrow(NotFoundException::new);
    }

    private Scope scope(UUID id) {
        return register.scopes().stream()
                .filter(scope -> scope.id().equals(id))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    private static Trigger trigger(String name) {
        return Arrays.stream(Trigger.values())
                .filter(trigger -> trigger.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static List<Choice> triggers() {
        return java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(new Choice("", "Choose")),
                        java.util.stream.Stream.of(
                                        Trigger.NEAR_MISS,
                                        Trigger.INCIDENT,
                                        Trigger.UNSAFE_ACT,
                                        Trigger.RECALL_FAILED,
                                        Trigger.OTHER)
                                .map(trigger -> new Choice(trigger.name(), RegisterExtensions.triggerWord(trigger))))
                .toList();
    }
}
