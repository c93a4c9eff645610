package org.riseandgel.platform.school;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.ZoneId;
import org.riseandgel.core.quantity.DecimalMark;

/** The one row about the school. */
@Entity
@Table(name = "school")
class SchoolEntity {
    /** The only id that the table takes. */
    static final short ONLY = 1;

    @Id
    private short id = ONLY;

    private String name;
    private String zone;

    @Enumerated(EnumType.STRING)
    private DecimalMark decimalMark;

    private String emergency;
    private boolean demo;

    @Column(updatable = false)
    private Instant createdAt;

    protected SchoolEntity() {}

    SchoolEntity(School school, Instant createdAt) {
        this.name = school.name();
        this.zone = school.zone().getId();
        this.decimalMark = school.decimalMark();
        this.emergency = school.emergency();
        this.demo = school.demo();
        this.createdAt = createdAt;
    }

    School view() {
        return new School(name, ZoneId.of(zone), decimalMark, emergency, demo);
    }
}
