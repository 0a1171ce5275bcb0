package cyclepacket.page;

import freemarker.cache.FileTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * FreeMarker with its dangerous parts off: no classes, no {@code ?new}, no {@code ?api}, no clock, nothing outside the
 * folder, and every loop can be interrupted.
 */
final class SafeConfiguration extends Configuration {
    /** The clock, and what would make a template of a text: neither this check nor the one for endless loops sees that. */
    private static final Pattern FORBIDDEN =
            Pattern.compile("\\.now\\b|\\?(?:eval|eval_json|evalJson|interpret|new|api)\\b");

    /** A file without these words uses none of them, however it spaces its expressions. */
    private static final Pattern SUSPECT = Pattern.compile("\\b(?:now|eval|eval_json|evalJson|interpret|new|api)\\b");

    private final Path folder;
    private final Set<Template> checked =
            Collections.synchronizedSet(Collections.newSetFromMap(new IdentityHashMap<>()));

    SafeConfiguration(Path templates) {
        super(VERSION_2_3_35);
        folder = templates;
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
        // An include asks as every loop does, or templates that include each other could not be stopped.
        if (Thread.currentThread().isInterrupted()) {
            throw new InterruptedIOException("writing was stopped");
        }
        Template template = super.getTemplate(name, locale, condition, encoding, parsed, ignoreMissing);
        if (template != null && checked.add(template)) {
            refuseForbidden(template);
            _CoreAPI.addThreadInterruptedChecks(template);
        }
        return template;
    }

    private void refuseForbidden(Template template) {
        // To write out a parsed template takes as long as to parse it, and few files need it.
        if (!SUSPECT.matcher(textOf(template)).find()) {
            return;
        }
        Matcher found = FORBIDDEN.matcher(template.toString());
        if (found.find()) {
            checked.remove(template);
            String word = found.group();
            throw new TemplatePlaces(template.getSourceName(), lineOf(template, word), 1)
                    .fault("uses " + word + ", which no page may", null);
        }
    }

    /** The parser's own text differs from the file by spaces; 1 where the word is spread over lines. */
    private int lineOf(Template template, String word) {
        String file = textOf(template);
        int at = Math.max(0, file.indexOf(word));
        return 1 + (int) file.substring(0, at).chars().filter(c -> c == '\n').count();
    }

    private String textOf(Template template) {
        try {
            return Files.readString(folder.resolve(template.getSourceName()));
        } catch (IOException unreadable) {
            throw new TemplateFault("the template " + template.getSourceName() + " cannot be read", unreadable);
        }
    }
}
