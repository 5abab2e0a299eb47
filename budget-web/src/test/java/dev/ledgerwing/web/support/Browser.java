package dev.ledgerwing.web.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.jsoup.Connection;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** Walks through the pages as a browser without script does: keeps cookies, follows redirects, fills in forms. */
public final class Browser {

    /** A page as it arrived, with the path it was at last found at. */
    public record Page(int status, String path, Document document) {

        public String heading() {
            return document.expectFirst("h1").text();
        }

        public String text() {
            return document.body().text();
        }
    }

    private final String origin;
    private final Connection session = Jsoup.newSession().header("Accept", "text/html,application/xhtml+xml");

    public Browser(int port) {
        origin = "http://localhost:" + port;
    }

    public Page open(String path) {
        return load(session.newRequest(origin + path));
    }

    /** Asks for a picture, as a browser does by itself; returns the status without following a redirect. */
    public int picture(String path) {
        Connection request = session.newRequest(origin + path)
                .header("Accept", "image/*")
                .ignoreContentType(true)
                .followRedirects(false);
        return answer(request).statusCode();
    }

    /** Types into the page's form with this action, by the names of the fields, and sends it. */
    public Page send(Page page, String action, Map<String, String> typed) {
        FormElement form = (FormElement) page.document().expectFirst("form[action=" + action + "]");
        typed.forEach((name, value) -> fill(form, name, value));
        return load(form.submit());
    }

    private static void fill(FormElement form, String name, String value) {
        Element field = form.expectFirst("[name=" + name + "]");
        if (field.tagName().equals("select")) {
            field.select("option[selected]").removeAttr("selected");
            field.select("option").stream()
                    .filter(option -> option.val().equals(value))
                    .findFirst()
                    .orElseThrow()
                    .attr("selected", "selected");
        } else if (field.attr("type").equals("radio")) {
            form.select("[name=" + name + "]").removeAttr("checked");
            form.expectFirst("[name=" + name + "][value=" + value + "]").attr("checked", "checked");
        } else {
            field.val(value);
        }
    }

    /** Posts fields as a page's script or another button of its form would, with the page's token. */
    public Page post(String path, Page from, Map<String, String> fields) {
        String token = from.document().expectFirst("meta[name=csrf-token]").attr("content");
        return load(session.newRequest(origin + path)
                .method(Connection.Method.POST)
                .header("X-CSRF-TOKEN", token)
                .data(fields));
    }

    /** The session's cookie, as the browser holds it now. */
    public String sessionCookie() {
        return session.cookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals("JSESSIONID"))
                .map(cookie -> cookie.getValue())
                .findFirst()
                .orElse("");
    }

    private Page load(Connection request) {
        Connection.Response answer = answer(request);
        try {
            return new Page(answer.statusCode(), answer.url().toString().substring(origin.length()), answer.parse());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Connection.Response answer(Connection request) {
        try {
            return request.ignoreHttpErrors(true).execute();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
