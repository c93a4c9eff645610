package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;
import org.riseandgel.clearance.ledger.EventText;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.History;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Versions;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.platform.content.ContentFile;
import org.riseandgel.platform.content.ContentSource;

/** What a piece of evidence is based on, so that it can be judged again later. */
@ApplicationScoped
class EvidenceVersions {
    private final ContentSource content;

    EvidenceVersions(ContentSource content) {
        this.content = content;
    }

    /** Training: the whole course as it stands, and the newest sheet of the substance. */
    Versions ofContent(History history, Substance substance, Instant at) {
        return new Versions(course(), policyVersion(history, at), sheet(history, substance, at), CoreVersion.CURRENT);
    }

    /** A practical: the words of its checklist and the version of it. */
    Versions ofChecklist(History history, Scope scope, Checklist list, Instant at) {
        return new Versions(
                hash(EventText.canonical(list)),
                list.version(),
                sheet(history, scope.substance(), at),
                CoreVersion.CURRENT);
    }

    /** Equipment: the policy that lists it. */
    Versions ofPolicy(History history, Instant at) {
        return new Versions(
                history.policy(at)
                        .map(policy -> hash(EventText.canonical(policy)))
                        .orElse(""),
                policyVersion(history, at),
                null,
                CoreVersion.CURRENT);
    }

    private String course() {
        StringBuilder all = new StringBuilder();
        content.read().files().stream()
                .sorted(Comparator.comparing(ContentFile::path))
                .forEach(file -> all.append(file.path())
                        .append('\n')
                        .append(hash(file.text()))
                        .append('\n'));
        return hash(all.toString());
    }

    private static String policyVersion(History history, Instant at) {
        return history.policy(at).map(Policy::version).orElse("");
    }

    private static UUID sheet(History history, Substance substance, Instant at) {
        return history.sheet(substance, at).map(f -> f.body().revision()).orElse(null);
    }

    private static String hash(String text) {
        return Seal.of(text.getBytes(StandardCharsets.UTF_8));
    }
}
