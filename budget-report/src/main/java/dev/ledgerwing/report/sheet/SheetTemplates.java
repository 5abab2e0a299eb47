package dev.ledgerwing.report.sheet;

import dev.ledgerwing.report.text.PrintableText;
import java.util.Locale;
import java.util.Map;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Fills the templates of this module, with no web server about. */
public final class SheetTemplates {

    private static final char THIN_SPACE = '\u2009';
    private static final char THIN_SPACE_THAT_HOLDS = '\u202F';

    private final SpringTemplateEngine engine = new SpringTemplateEngine();

    public SheetTemplates() {
        var resolver = new ClassLoaderTemplateResolver(SheetTemplates.class.getClassLoader());
        resolver.setPrefix("templates/");
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding("UTF-8");
        engine.setTemplateResolver(resolver);
    }

    /** The whole page, every character of it fit for XML; no line breaks between a figure and its unit. */
    public String fill(String template, Map<String, Object> values) {
        String page = engine.process(template, new Context(Locale.ROOT, values));
        return PrintableText.of(page).replace(THIN_SPACE, THIN_SPACE_THAT_HOLDS);
    }
}
