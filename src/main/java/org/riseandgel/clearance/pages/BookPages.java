package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.RegisterBook;
import org.riseandgel.clearance.RegisterDenied;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.ledger.EventText;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** The book of the register: every line there is, looked through, and taken along as a file. */
@Path("/register/book")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class BookPages {
    private static final int UNPROCESSABLE = 422;
    private static final int SHOWN = 20;
    private static final int MOST_PEOPLE = 200;
    private static final List<String> FIELDS = List.of("about", "by", "kind", "words", "from", "until");

    private final PersonRecord records;
    private final RegisterBook book;
    private final People people;
    private final SchoolSettings school;
    private final Viewer viewer;

    BookPages(PersonRecord records, RegisterBook book, People people, SchoolSettings school, Viewer viewer) {
        this.records = records;
        this.book = book;
        this.people = people;
        this.school = school;
        this.viewer = viewer;
    }

    /**
     * A stretch of the book.
     *
     * @param older the address of the lines before these; empty when there are none
     */
    public record Found(List<LineView> lines, String older) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance book(
                Found found,
                List<Choice> kinds,
                Filled filled,
                boolean mayCorrect,
                boolean mayKeep,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public Response book(@Context UriInfo uri) {
        Filled filled = Filled.of(uri.getQueryParameters());
        try {
            return Response.ok(page(filled, found(filled), List.of())).build();
        } catch (RegisterProblem e) {
            return Response.status(UNPROCESSABLE)
                    .entity(page(filled, new Found(List.of(), ""), e.problems()))
                    .build();
        }
    }

    /** All lines as a file that can be checked without this program's database. Who took it along is written down. */
    @POST
    @RolesAllowed({Roles.SAFETY_LEAD, Roles.OFFICE})
    @Path("export")
    public Response export() {
        try {
            RegisterBook.Export export = book.export(viewer.getId());
            String digest = Base64.getEncoder().encodeToString(HexFormat.of().parseHex(export.sha256()));
            return Response.ok(export.text())
                    .header(HttpHeaders.CONTENT_TYPE, "application/jsonl; charset=UTF-8")
                    .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"register.jsonl\"")
                    .header("Repr-Digest", "sha-256=:" + digest + ":")
                    .build();
        } catch (RegisterDenied e) {
            throw new NotFoundException(e);
        }
    }

    private TemplateInstance page(Filled filled, Found found, List<Problem> problems) {
        List<Choice> kinds = new ArrayList<>(List.of(new Choice("", "Every kind")));
        EventText.kinds().forEach(kind -> kinds.add(new Choice(kind, LineView.words(kind))));
        return Templates.book(
                found,
                kinds,
                filled,
                viewer.isInstructor() || viewer.isSafetyLead(),
                viewer.isSafetyLead() || viewer.isOffice(),
                problems);
    }

    private Found found(Filled filled) {
        List<PersonRecord.RecordLine> lines = records.search(
                new Ledger.Sought(
                        named(filled, "about"),
                        named(filled, "by"),
                        text(filled, "kind"),
                        text(filled, "words"),
                        startOf(filled.day("from")),
                        startOf(dayAfter(filled.day("until"))),
                        number(filled)),
                SHOWN + 1);
        boolean more = lines.size() > SHOWN;
        List<LineView> shown = lines.stream().limit(SHOWN).map(LineView::of).toList();
        return new Found(shown, more ? older(filled, shown.get(SHOWN - 1).number()) : "");
    }

    private List<UUID> named(Filled filled, String field) {
        String name = text(filled, field);
        if (name == null) {
            return null;
        }
        List<UUID> found =
                people.named(name, MOST_PEOPLE).stream().map(PersonView::id).toList();
        if (found.isEmpty()) {
            throw RegisterProblem.with(field, "Nobody in this school has that in the name or sign-in name.");
        }
        return found;
    }

    private Instant startOf(LocalDate day) {
        return day == null ? null : day.atStartOfDay(school.zone()).toInstant();
    }

    private static LocalDate dayAfter(LocalDate day) {
        return day == null ? null : day.plusDays(1);
    }

    private static String text(Filled filled, String field) {
        String text = filled.get(field).strip();
        return text.isEmpty() ? null : text;
    }

    private static long number(Filled filled) {
        return filled.get("before").matches("[0-9]{1,18}") ? Long.parseLong(filled.get("before")) : 0;
    }

    private static String older(Filled filled, long before) {
        return Stream.concat(
                        FIELDS.stream()
                                .filter(field -> !filled.get(field).isBlank())
                                .map(field ->
                                        field + "=" + URLEncoder.encode(filled.get(field), StandardCharsets.UTF_8)),
                        Stream.of("before=" + before))
                .collect(Collectors.joining("&", "/register/book?", ""));
    }
}
