package org.riseandgel.account.token;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.signin.PasswordCheck;
import org.riseandgel.platform.time.SchoolTime;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** A person's own access tokens. */
@Path("/account/tokens")
@Authenticated
public class TokenResource {
    private static final int USES_SHOWN = 10;

    private final AccessTokens tokens;
    private final PasswordCheck check;
    private final SchoolTime time;
    private final Viewer viewer;
    private final SecurityIdentity identity;

    TokenResource(AccessTokens tokens, PasswordCheck check, SchoolTime time, Viewer viewer, SecurityIdentity identity) {
        this.tokens = tokens;
        this.check = check;
        this.time = time;
        this.viewer = viewer;
        this.identity = identity;
    }

    /** A token as the page shows it. */
    record Line(UUID id, String name, String scopes, String made, String ends, String lastUsed, long uses) {}

    /** A use of a token as the page shows it. */
    record UseLine(String at, String what, String address) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance tokens(
                List<Line> lines,
                TokenForm form,
                List<TokenScope> scopes,
                List<Choice> days,
                String done,
                List<Problem> problems);

        static native TemplateInstance made(String name, String token);

        static native TemplateInstance uses(Line token, List<UseLine> uses);

        private Templates() {}
    }

    @GET
    public TemplateInstance tokens(@RestQuery @DefaultValue("") String done) {
        return page(TokenForm.empty(), done, List.of());
    }

    /** Makes a token, which is on the page that answers and nowhere else. */
    @POST
    public Response make(@BeanParam TokenForm sent) {
        TokenForm form = sent.whole();
        List<Problem> problems = form.problems(identity.getRoles());
        if (problems.isEmpty()) {
            problems = check.problemWith(viewer.getId(), form.password, "password").stream()
                    .toList();
        }
        if (!problems.isEmpty()) {
            return Response.status(422).entity(page(form, "", problems)).build();
        }
        String name = form.name.strip();
        String token = tokens.make(viewer.getId(), name, form.chosen(identity.getRoles()), form.lasting());
        return Response.ok(Templates.made(name, token)).build();
    }

    /** The latest uses of one token. */
    @GET
    @Path("{id}")
    public TemplateInstance uses(@RestPath UUID id) {
        Line token = tokens.of(viewer.getId()).stream()
                .filter(one -> one.id().equals(id))
                .map(this::line)
                .findFirst()
                .orElseThrow(NotFoundException::new);
        List<UseLine> uses = tokens.uses(viewer.getId(), id, USES_SHOWN).stream()
                .map(use -> new UseLine(time.dateAndTime(use.at()), use.method() + " " + use.path(), use.address()))
                .toList();
        return Templates.uses(token, uses);
    }

    @POST
    @Path("{id}/end")
    public Response end(@RestPath UUID id) {
        if (!tokens.revoke(viewer.getId(), id)) {
            throw new NotFoundException();
        }
        return SeeOther.page("/account/tokens?done=ended");
    }

    private TemplateInstance page(TokenForm form, String done, List<Problem> problems) {
        List<Line> lines = tokens.of(viewer.getId()).stream().map(this::line).toList();
        return Templates.tokens(lines, form, TokenScope.of(identity.getRoles()), TokenForm.DAYS, done, problems);
    }

    private Line line(AccessTokens.Line one) {
        return new Line(
                one.id(),
                one.name(),
                String.join("; ", one.scopes().stream().map(TokenScope::words).toList()),
                time.date(one.createdAt()),
                time.date(one.endsAt()),
                one.lastUsed() == null ? "Never" : time.dateAndTime(one.lastUsed()),
                one.uses());
    }
}
