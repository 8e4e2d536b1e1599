package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ClassPathResource;

/** Reads the walls from the database's own catalogue: a table without one, or a door nobody listed, fails the build. */
@IntegrationTest
class WallsCatalogueIntegrationTests {

    /** Tables that hold nothing of anybody. */
    private static final Set<String> WITHOUT_WALL =
            Set.of("access_seal", "access_seal_check", "flyway_schema_history", "scheduled_tasks");

    private static final String TABLES_WITHOUT_WALL = """
            select relname from pg_class
            where relnamespace = 'espalier'::regnamespace and relkind in ('r', 'p')
                and not (relrowsecurity and relforcerowsecurity)""";

    /** A command granted where row-level security has no policy for it shows nothing, silently; so it is a mistake. */
    private static final String GRANTED_WITHOUT_POLICY = """
            select distinct g.table_name || ' ' || g.privilege_type
            from information_schema.column_privileges g
            join pg_class c on c.relname = g.table_name and c.relnamespace = 'espalier'::regnamespace
            where g.table_schema = 'espalier' and g.grantee in ('espalier_app', 'espalier_job') and c.relrowsecurity
                and g.privilege_type <> 'REFERENCES' and not exists (
                    select from pg_policies p where p.schemaname = 'espalier' and p.tablename = g.table_name
                        and p.cmd in ('ALL', g.privilege_type))
            union
            select distinct g.table_name || ' ' || g.privilege_type
            from information_schema.role_table_grants g
            join pg_class c on c.relname = g.table_name and c.relnamespace = 'espalier'::regnamespace
            where g.table_schema = 'espalier' and g.grantee in ('espalier_app', 'espalier_job') and c.relrowsecurity
                and g.privilege_type = 'DELETE' and not exists (
                    select from pg_policies p where p.schemaname = 'espalier' and p.tablename = g.table_name
                        and p.cmd in ('ALL', 'DELETE'))""";

    /** What a policy must never do: ask row by row. */
    private static final String POLICIES_WITH_A_FUNCTION_OF_A_COLUMN = """
            select tablename || ' ' || policyname from pg_policies
            where schemaname = 'espalier' and (coalesce(qual, '') || coalesce(with_check, ''))
                ~ '(current_staff|job_site|my_sites|my_sites_as|my_granted|is_operator)\\(' and
                (coalesce(qual, '') || coalesce(with_check, ''))
                !~ 'SELECT [a-z_.]*(current_staff|job_site|my_sites|my_sites_as|my_granted|is_operator)\\('""";

    private static final String WRITES_WITHOUT_CHECK = """
            select tablename || ' ' || policyname from pg_policies
            where schemaname = 'espalier' and cmd in ('INSERT', 'UPDATE', 'ALL') and with_check is null""";

    private static final String DEFINERS_WITHOUT_PATH = """
            select proname from pg_proc
            where pronamespace = 'espalier'::regnamespace and prosecdef
                and not coalesce(proconfig, '{}') && array['search_path=espalier, pg_temp',
                    'search_path=espalier, extensions, pg_temp']""";

    private static final String FUNCTIONS_FOR_EVERYBODY = """
            select proname from pg_proc
            where pronamespace = 'espalier'::regnamespace
                and (proacl is null or exists (select from aclexplode(proacl) where grantee = 0))""";

    private static final String VIEWS_WITH_THE_OWNERS_EYES = """
            select relname from pg_class
            where relnamespace = 'espalier'::regnamespace and relkind in ('v', 'm')
                and not coalesce(reloptions, '{}') && array['security_invoker=true', 'security_invoker=on']""";

    private static final String GRANTS = """
            select table_name || ',' || grantee || ',' || privilege_type || ',' ||
                case when whole then '*' else string_agg(column_name, ' ' order by column_name) end
            from (
                select g.table_name, g.grantee, g.privilege_type, g.column_name, exists (
                    select from information_schema.role_table_grants t
                    where t.table_schema = g.table_schema and t.table_name = g.table_name and t.grantee = g.grantee
                        and t.privilege_type = g.privilege_type) as whole
                from information_schema.column_privileges g
                where g.table_schema = 'espalier' and g.grantee in ('espalier_app', 'espalier_job', 'PUBLIC')
                union all
                select g.table_name, g.grantee, g.privilege_type, '', true
                from information_schema.role_table_grants g
                where g.table_schema = 'espalier' and g.grantee in ('espalier_app', 'espalier_job', 'PUBLIC')
                    and g.privilege_type in ('DELETE', 'TRUNCATE', 'TRIGGER')
            ) as granted
            group by table_name, grantee, privilege_type, whole""";

    private static final String FUNCTION_GRANTS = """
            select p.proname || ',' || r.rolname || ',EXECUTE,*'
            from pg_proc p cross join aclexplode(p.proacl) a join pg_roles r on r.oid = a.grantee
            where p.pronamespace = 'espalier'::regnamespace and r.rolname in ('espalier_app', 'espalier_job')
                and p.prosecdef""";

    private static final String ROLES_THAT_PASS_WALLS = """
            select rolname from pg_roles
            where rolname like 'espalier\\_%' and (rolsuper or rolbypassrls or rolcreaterole or rolcreatedb)""";

    private static final String OWNED_BY_OTHERS = """
            select relname from pg_class where relnamespace = 'espalier'::regnamespace
                and relowner <> 'espalier_owner'::regrole""";

    @Autowired
    TestNetwork network;

    private List<String> read(String sql) {
        return network.owner().sql(sql).query(String.class).list();
    }

    @Test
    void everyTableHasAWallThatHoldsItsOwnerToo() {
        assertThat(read(TABLES_WITHOUT_WALL)).containsExactlyInAnyOrderElementsOf(WITHOUT_WALL);
    }

    @Test
    void everyGrantedCommandHasAPolicy() {
        assertThat(read(GRANTED_WITHOUT_POLICY)).isEmpty();
    }

    @Test
    void everyPolicyAsksOnceNotRowByRow() {
        assertThat(read(POLICIES_WITH_A_FUNCTION_OF_A_COLUMN)).isEmpty();
    }

    @Test
    void everyPolicyOnWritingSaysWhatMayBeWritten() {
        assertThat(read(WRITES_WITHOUT_CHECK)).isEmpty();
    }

    @Test
    void everyFunctionWithItsOwnersRightsHasAFixedPath() {
        assertThat(read(DEFINERS_WITHOUT_PATH)).isEmpty();
    }

    @Test
    void noFunctionIsForEverybody() {
        assertThat(read(FUNCTIONS_FOR_EVERYBODY)).isEmpty();
    }

    @Test
    void everyViewLooksWithTheEyesOfWhoAsks() {
        assertThat(read(VIEWS_WITH_THE_OWNERS_EYES)).isEmpty();
    }

    @Test
    void onlyOwnerAndBackupPassTheWalls() {
        assertThat(read(ROLES_THAT_PASS_WALLS)).containsExactlyInAnyOrder("espalier_owner", "espalier_backup");
        assertThat(read(OWNED_BY_OTHERS)).isEmpty();
    }

    @Test
    void grantsAreTheCommittedOnes() throws IOException {
        var committed = new ClassPathResource("org/espalier/grants.csv")
                .getContentAsString(StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .distinct()
                .toList();
        var granted = new java.util.TreeSet<>(read(GRANTS));
        granted.addAll(read(FUNCTION_GRANTS));
        assertThat(String.join("\n", granted)).isEqualTo(String.join("\n", new java.util.TreeSet<>(committed)));
    }
}
