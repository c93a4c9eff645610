-- What lets a program of a person's own read their data. Only the SHA-256 of a token is kept.
CREATE TABLE access_token (
    id          uuid        NOT NULL,
    id_hash     bytea       NOT NULL,
    person_id   uuid        NOT NULL,
    name        text        NOT NULL,
    scopes      text[]      NOT NULL,
    created_at  timestamptz NOT NULL,
    ends_at     timestamptz NOT NULL,
    revoked_at  timestamptz,
    CONSTRAINT access_token_pk PRIMARY KEY (id),
    CONSTRAINT access_token_id_hash_once UNIQUE (id_hash),
    CONSTRAINT access_token_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT access_token_name_length CHECK (char_length(name) BETWEEN 1 AND 60),
    CONSTRAINT access_token_scopes_known CHECK
        (cardinality(scopes) > 0 AND scopes <@ ARRAY['bench', 'own-progress', 'cohort-progress', 'register-check']),
    CONSTRAINT access_token_span CHECK (ends_at > created_at)
);
CREATE INDEX access_token_by_person ON access_token (person_id) WHERE revoked_at IS NULL;

-- Each use of a token; the application may add and read, never change.
CREATE TABLE access_token_use (
    id        bigint      NOT NULL GENERATED ALWAYS AS IDENTITY,
    token_id  uuid        NOT NULL,
    at        timestamptz NOT NULL,
    method    text        NOT NULL,
    path      text        NOT NULL,
    address   text        NOT NULL,
    CONSTRAINT access_token_use_pk PRIMARY KEY (id),
    CONSTRAINT access_token_use_token_fk FOREIGN KEY (token_id) REFERENCES access_token (id)
);
CREATE INDEX access_token_use_by_token ON access_token_use (token_id, at DESC);

-- A secret address under which a calendar program reads a person's dates. Only the SHA-256 of the secret is kept.
CREATE TABLE calendar_address (
    id          uuid        NOT NULL,
    id_hash     bytea       NOT NULL,
    person_id   uuid        NOT NULL,
    created_at  timestamptz NOT NULL,
    revoked_at  timestamptz,
    CONSTRAINT calendar_address_pk PRIMARY KEY (id),
    CONSTRAINT calendar_address_id_hash_once UNIQUE (id_hash),
    CONSTRAINT calendar_address_person_fk FOREIGN KEY (person_id) REFERENCES person (id)
);
CREATE UNIQUE INDEX calendar_address_open_once ON calendar_address (person_id) WHERE revoked_at IS NULL;

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT, UPDATE (revoked_at) ON access_token, calendar_address TO "${app_role}";
        GRANT SELECT, INSERT ON access_token_use TO "${app_role}";
    END IF;
END;
$$;
