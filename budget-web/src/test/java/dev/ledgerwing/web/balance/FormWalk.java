package dev.ledgerwing.web.balance;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.FormElement;

/** Fills in the one form of a page and sends it, as it stands or with more fields. */
public final class FormWalk {

    private FormWalk() {}

    public static Page send(Browser browser, String address, Map<String, String> typed) {
        Page page = browser.open(address);
        return browser.post(address, page, fields(page, typed));
    }

    /** The fields of the page's form as a browser sends them, some typed over; without those where several boxes are ticked. */
    public static Map<String, String> fields(Page page, Map<String, String> typed) {
        Map<String, String> fields = new HashMap<>();
        ((FormElement) page.document().expectFirst("main form[novalidate]"))
                .formData()
                .forEach(field -> fields.put(field.key(), field.value()));
        fields.putAll(typed);
        return fields;
    }

    public static String value(Page page, String field) {
        return page.document().expectFirst("[name=" + field + "]").val();
    }

    public static String error(Page page, String field) {
        return page.document().expectFirst("[id=" + field + "-error]").text();
    }

    public static List<String> ticked(Page page, String field) {
        return page.document().select("[name=" + field + "][checked]").eachAttr("value");
    }
}
