package org.riseandgel.clearance.policy;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.jboss.logging.Logger;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.platform.content.ContentFile;
import org.riseandgel.platform.content.ContentSource;

/**
 * The policy as the file has it now. It is a proposal: what holds is what a safety lead put in force. A file that is
 * missing or wrong is reported and puts nothing in force; what is in force stays.
 */
@ApplicationScoped
public class PolicyFile {
    private static final Logger LOG = Logger.getLogger(PolicyFile.class);

    private final ContentSource source;

    PolicyFile(ContentSource source) {
        this.source = source;
    }

    void start(@Observes StartupEvent event) {
        read().problems().forEach(problem -> LOG.warnf("The policy for clearances cannot be used: %s", problem));
    }

    /** Reads the file anew. */
    public PolicyReader.Read read() {
        return source.read().files().stream()
                .filter(file -> file.path().equals(PolicyReader.FILE))
                .findFirst()
                .map(ContentFile::text)
                .map(PolicyReader::read)
                .orElseGet(() -> new PolicyReader.Read(
                        java.util.Optional.empty(),
                        List.of(new ContentProblem(
                                PolicyReader.FILE,
                                1,
                                "",
                                "The file is missing; without it no policy can be put in force."))));
    }
}
