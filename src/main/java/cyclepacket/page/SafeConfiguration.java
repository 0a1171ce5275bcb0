package cyclepacket.page;

import freemarker.cache.FileTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * FreeMarker with its dangerous parts off: no classes, no {@code ?new}, no {@code ?api}, no clock, nothing outside the
 * folder, and every loop can be interrupted.
 */
final class SafeConfiguration extends Configuration {
    private static final Pattern CLOCK = Pattern.compile("\\.now\\b");

    private final Set<Template> checked =
            Collections.synchronizedSet(Collections.newSetFromMap(new IdentityHashMap<>()));

    SafeConfiguration(Path templates) {
        super(VERSION_2_3_35);
        try {
            setTemplateLoader(new FileTemplateLoader(templates.toFile()));
        } catch (IOException unreadable) {
            throw new TemplateFault("the template folder " + templates + " cannot be read", unreadable);
        }
        setDefaultEncoding(StandardCharsets.UTF_8.name());
        setLocale(Locale.ROOT);
        setNumberFormat("computer");
        setAPIBuiltinEnabled(false);
        setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        setLogTemplateExceptions(false);
        setObjectWrapper(new ViewWrapper());
        setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    }

    /** All ways to a template end here, includes too. */
    @Override
    public Template getTemplate(
            String name, Locale locale, Object condition, String encoding, boolean parsed, boolean ignoreMissing)
            throws IOException {
        Template template = super.getTemplate(name, locale, condition, encoding, parsed, ignoreMissing);
        if (template != null && checked.add(template)) {
            if (CLOCK.matcher(template.toString()).find()) {
                throw new TemplateFault(name + " reads the clock; a page has no clock");
            }
            _CoreAPI.addThreadInterruptedChecks(template);
        }
        return template;
    }
}
