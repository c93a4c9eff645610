package org.riseandgel.account.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The table of people, with their roles. */
@ApplicationScoped
public class PersonRepository implements PanacheRepositoryBase<PersonEntity, UUID> {
    private static final String WITH_ROLES = "from PersonEntity p left join fetch p.roles ";

    /** The person with this id, who is known to be there. */
    public PersonEntity get(UUID person) {
        return findByIdOptional(person).orElseThrow();
    }

    /** The person with this id; nobody else changes this person before the transaction has ended. */
    public PersonEntity hold(UUID person) {
        return findByIdOptional(person, LockModeType.PESSIMISTIC_WRITE).orElseThrow();
    }

    /** The person with this id, read together with the roles. */
    public Optional<PersonEntity> withRoles(UUID person) {
        return list(WITH_ROLES + "where p.id = ?1", person).stream().findFirst();
    }

    public Optional<PersonEntity> bySignInName(String name) {
        return find("signInName", name).firstResultOptional();
    }

    /** The people with these sign-in names, read together with the roles. */
    public List<PersonEntity> bySignInNames(Collection<String> names) {
        return names.isEmpty() ? List.of() : list(WITH_ROLES + "where p.signInName in ?1", names);
    }

    /** Those who learn in a cohort now and can sign in, by name, read together with the roles. */
    public List<PersonEntity> learnersOf(UUID cohort) {
        return list(
                WITH_ROLES
                        + """
                        join CohortMemberEntity m on m.personId = p.id
                        where m.cohortId = ?1 and m.part = 'learns' and m.leftAt is null and p.disabledAt is null
                        order by lower(p.displayName), p.id
                        """,
                cohort);
    }

    /**
     * People by name.
     *
     * @param text part of the name or of the sign-in name; empty for all
     * @param role only people with this role; empty for all
     * @param state "on" for those who can sign in, "off" for the disabled, else all
     * @param most no more than so many
     */
    public List<PersonEntity> search(String text, String role, String state, int most) {
        String pattern = "%" + text.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
        return find(
                        """
                        from PersonEntity p
                        where (p.displayName ilike ?1 escape '!' or p.signInName ilike ?1 escape '!')
                          and (?2 = '' or ?2 member of p.roles)
                          and (?3 = '' or ?3 = case when p.disabledAt is null then 'on' else 'off' end)
                        order by lower(p.displayName), p.id
                        """,
                        pattern,
                        role,
                        state)
                .page(0, most)
                .list();
    }

    /** Whether somebody else with this role can sign in. */
    public boolean hasAnother(String role, UUID but) {
        return count("?1 member of roles and disabledAt is null and id <> ?2", role, but) > 0;
    }
}
