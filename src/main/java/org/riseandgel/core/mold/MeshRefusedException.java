package org.riseandgel.core.mold;

/** A mesh whose volume means nothing, or a file that is no mesh. */
public final class MeshRefusedException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Why a mesh is refused. */
    public enum Reason {
        /** No triangle, or none that encloses anything. */
        EMPTY,
        /** The file ends in the middle. */
        TRUNCATED,
        /** The file is no STL, or goes on after its end. */
        MALFORMED,
        /** A corner lies at no number, or unreasonably far away. */
        NOT_A_NUMBER,
        /** More triangles than are read. */
        TOO_MANY,
        /** An edge has no triangle on its other side, or one that faces the other way. */
        OPEN,
        /** An edge has more than two triangles. */
        BRANCHING,
        /** In this unit the mesh would be no mold. */
        UNLIKELY_UNIT
    }

    private final Reason reason;

    MeshRefusedException(Reason reason, String message) {
        super(message);
        this.reason = reason;
    }

    /** Why. */
    public Reason reason() {
        return reason;
    }
}
