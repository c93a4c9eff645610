package org.riseandgel.platform.content;

import java.util.ArrayList;
import java.util.List;

/** What was read from a content folder: the files in the order of their paths, and the files that were refused. */
public record ContentFiles(List<ContentFile> files, List<ContentFault> faults) {
    public ContentFiles {
        files = List.copyOf(files);
        faults = List.copyOf(faults);
    }

    /** Both, one after the other. */
    ContentFiles and(ContentFiles more) {
        List<ContentFile> allFiles = new ArrayList<>(files);
        allFiles.addAll(more.files);
        List<ContentFault> allFaults = new ArrayList<>(faults);
        allFaults.addAll(more.faults);
        return new ContentFiles(allFiles, allFaults);
    }
}
