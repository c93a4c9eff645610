package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.EvidenceDesk;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterBook;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.platform.web.SeeOther;

/** A revision of a supplier's safety data sheet: everybody reads it, and says for themselves that it was read. */
@Path("/register/sheets/{revision}")
@Authenticated
public class SheetPages {
    private final Register register;
    private final RegisterBook book;
    private final PersonRecord records;
    private final EvidenceDesk desk;
    private final Viewer viewer;

    SheetPages(Register register, RegisterBook book, PersonRecord records, EvidenceDesk desk, Viewer viewer) {
        this.register = register;
        this.book = book;
        this.records = records;
        this.desk = desk;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sheet(
                Setting.SdsFiled sheet, List<Integer> sections, boolean newest, boolean read);

        private Templates() {}
    }

    @GET
    public TemplateInstance sheet(@RestPath UUID revision) {
        Setting.SdsFiled sheet = find(revision);
        boolean newest = register.sheet(sheet.substance())
                .filter(one -> one.revision().equals(revision))
                .isPresent();
        boolean read = records.of(viewer.getId()).stream()
                .anyMatch(line -> line.said() instanceof Evidence.SdsRead own
                        && own.revision().equals(revision));
        return Templates.sheet(sheet, sheet.sectionsChanged().stream().sorted().toList(), newest, read);
    }

    /** The supplier's file, byte for byte; always to be kept, never shown inside the program's own pages. */
    @GET
    @Path("file")
    public Response file(@RestPath UUID revision) {
        RegisterBook.SheetFile file = book.sheetFile(find(revision).sha256()).orElseThrow(NotFoundException::new);
        return Response.ok(file.content())
                .header(HttpHeaders.CONTENT_TYPE, file.mediaType())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "attachment; filename=\"%s\"".formatted(file.name().replaceAll("[^A-Za-z0-9._-]", "_")))
                .build();
    }

    @POST
    @Path("read")
    public Response read(@RestPath UUID revision) {
        find(revision);
        desk.sheetRead(viewer.getId(), revision);
        return SeeOther.page("/register/mine?done=read");
    }

    private Setting.SdsFiled find(UUID revision) {
        return register.sheets().stream()
                .map(Fact::body)
                .filter(sheet -> sheet.revision().equals(revision))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }
}
