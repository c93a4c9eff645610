package org.riseandgel.clearance.pages;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.table.Column;
import org.riseandgel.platform.table.Table;
import org.riseandgel.platform.table.TableFile;
import org.riseandgel.platform.time.SchoolTime;
import org.riseandgel.platform.web.Problem;

/** Who stands where as a table to take along, at the moment that the board shows. Each download is noted. */
@Path("/register/standings.{format}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class StandingsExport {
    private static final List<String> TITLES = List.of(
            "Person",
            "Scope",
            "Substance",
            "Form",
            "Room",
            "Tasks",
            "Answer",
            "Why not",
            "Through",
            "Decision",
            "As of",
            "As known on");

    private final Register register;
    private final SchoolSettings school;
    private final SchoolTime time;
    private final AuditLog audit;
    private final Viewer viewer;
    private final Clock clock;

    StandingsExport(
            Register register, SchoolSettings school, SchoolTime time, AuditLog audit, Viewer viewer, Clock clock) {
        this.register = register;
        this.school = school;
        this.time = time;
        this.audit = audit;
        this.viewer = viewer;
        this.clock = clock;
    }

    @GET
    public Response standings(@RestPath String format, @RestQuery String at, @RestQuery String known)
            throws IOException {
        TableFile.Format wanted = TableFile.Format.byEnding(format).orElseThrow(NotFoundException::new);
        List<Problem> problems = new ArrayList<>();
        Instant now = clock.instant();
        Moment when = Moment.read("at", at, school.zone(), now, problems);
        Moment knew = Moment.read("known", known, school.zone(), now, problems);
        if (!problems.isEmpty()) {
            throw new BadRequestException(problems.get(0).message());
        }
        Register.Board board =
                register.board(when.instant().orElse(null), knew.instant().orElse(null));
        TableFile file = TableFile.write(table(board), wanted);
        audit.note(viewer.getId(), "register-standings-exported", "register", format + " " + file.digest());
        return Response.ok(file.entity())
                .type(wanted.mediaType())
                .header(HttpHeaders.CONTENT_LENGTH, file.size())
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"register." + format + "\"")
                .header("Repr-Digest", "sha-256=:" + file.digest() + ":")
                .build();
    }

    private Table table(Register.Board board) {
        Stream<List<Object>> rows = board.rows().stream().map(row -> cells(board, row));
        return new Table("Register", TITLES.stream().map(Column::text).toList(), rows);
    }

    private List<Object> cells(Register.Board board, Register.BoardRow row) {
        Standing standing = row.standing();
        boolean holds = RegisterExtensions.holding(standing);
        return Arrays.asList(
                row.name(),
                row.scope().title(),
                row.scope().substance().name() + ", " + row.scope().substance().supplier(),
                TaskWords.of(row.scope().form()),
                row.scope().room(),
                RegisterExtensions.taskWords(row.scope()),
                Words.of(standing.status()),
                standing.reasons().stream().map(Words::of).collect(Collectors.joining(" ")),
                holds && row.validThrough() != null ? row.validThrough().toString() : "",
                standing.singleInstructor() ? "single-instructor decision" : "",
                time.dateAndTime(board.at()),
                time.dateAndTime(board.known()));
    }
}
