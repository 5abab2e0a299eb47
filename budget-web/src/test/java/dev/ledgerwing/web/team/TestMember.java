package dev.ledgerwing.web.team;

import java.util.Objects;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.context.support.WebApplicationContextUtils;

/** Signs tests in: {@code mvc.perform(get("/").with(TestMember.mara()))}. */
public final class TestMember {

    public static final String NAME = "Mara";
    public static final String SECOND = "Jonas";
    public static final String PASSPHRASE = "peat bog at dawn";

    private TestMember() {}

    /** Mara signed in; creates her, as the first account, where the server has none yet. */
    public static RequestPostProcessor mara() {
        return request -> {
            var server = WebApplicationContextUtils.getRequiredWebApplicationContext(
                    Objects.requireNonNull(request.getServletContext()));
            exist(server.getBean(Members.class));
            SignedIn who = server.getBean(MemberRows.class)
                    .findByNameFolded(MemberRow.folded(NAME))
                    .orElseThrow()
                    .signedIn();
            return SecurityMockMvcRequestPostProcessors.user(who).postProcessRequest(request);
        };
    }

    /** Jonas signed in: a second member, who comes after Mara. */
    public static RequestPostProcessor jonas() {
        return request -> {
            var server = WebApplicationContextUtils.getRequiredWebApplicationContext(
                    Objects.requireNonNull(request.getServletContext()));
            exist(server.getBean(Members.class));
            MemberRows rows = server.getBean(MemberRows.class);
            if (rows.findByNameFolded(MemberRow.folded(SECOND)).isEmpty()) {
                server.getBean(JdbcTemplate.class)
                        .update(
                                "insert into member (name, name_folded, passphrase_hash, units, joined_at)"
                                        + " values (?, ?, 'none', 'GRAM_MILLIMETRE', current_timestamp)",
                                SECOND,
                                MemberRow.folded(SECOND));
            }
            SignedIn who = rows.findByNameFolded(MemberRow.folded(SECOND))
                    .orElseThrow()
                    .signedIn();
            return SecurityMockMvcRequestPostProcessors.user(who).postProcessRequest(request);
        };
    }

    /** Makes sure that Mara has the first account. */
    public static void exist(Members members) {
        if (!members.anyone()) {
            members.addFirst(new NewMember(NAME, PASSPHRASE));
        }
    }
}
