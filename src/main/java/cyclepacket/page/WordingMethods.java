package cyclepacket.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateHashModelEx;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateModelIterator;
import freemarker.template.TemplateScalarModel;
import freemarker.template.TemplateSequenceModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a template may call to print wording: {@code say}, {@code word}, {@code described}, {@code steps}, {@code all} and
 * {@code either}.
 */
final class WordingMethods {
    /** Stands for a value's own star; private to Unicode, so no checked text holds it. */
    private static final char KEPT_STAR = '\uE000';

    private final Wording wording;

    WordingMethods(Wording wording) {
        this.wording = wording;
    }

    /** One text as escaped markup, in which {@code *stars*} become strong. */
    TemplateMethodModelEx say() {
        return placed(arguments -> markup(key(arguments), gaps(arguments)));
    }

    /** One text as plain words, to be put together with others before it is escaped. */
    TemplateMethodModelEx word() {
        return placed(arguments -> wording.fill(key(arguments), gaps(arguments)));
    }

    /** What a picture shows, as the attributes of its element: the words, and their language where it is another. */
    TemplateMethodModelEx described() {
        return placed(arguments -> {
            String key = key(arguments);
            String words = HTMLOutputFormat.INSTANCE.escapePlainText(wording.fill(key, gaps(arguments)));
            String language = wording.foreign(key)
                    .map(other -> " lang=\"" + other + "\" xml:lang=\"" + other + "\"")
                    .orElse("");
            return HTMLOutputFormat.INSTANCE.fromMarkup("alt=\"" + words + "\"" + language);
        });
    }

    /** Several names joined as the language joins all of them. */
    TemplateMethodModelEx all() {
        return arguments -> wording.tongue().all(names(arguments));
    }

    /** Several names joined as the language joins alternatives. */
    TemplateMethodModelEx either() {
        return arguments -> wording.tongue().either(names(arguments));
    }

    /** The texts {@code prefix.1}, {@code prefix.2} and so on, each as escaped markup. */
    TemplateMethodModelEx steps() {
        return placed(arguments -> {
            List<String> keys = wording.numbered(key(arguments));
            Map<String, String> gaps = gaps(arguments);
            return new TemplateSequenceModel() {
                @Override
                public TemplateModel get(int index) throws TemplateModelException {
                    return index < keys.size() ? markup(keys.get(index), gaps) : null;
                }

                @Override
                public int size() {
                    return keys.size();
                }
            };
        });
    }

    /** A text that is missing is told with the place in the template that asks for it. */
    private static TemplateMethodModelEx placed(TemplateMethodModelEx method) {
        return arguments -> {
            try {
                return method.exec(arguments);
            } catch (TemplateFault missing) {
                throw new TemplateModelException(missing.finding().text(), missing);
            }
        };
    }

    /** A star that a value brings, in a phone number for example, is a star and never markup. */
    private TemplateModel markup(String key, Map<String, String> gaps) throws TemplateModelException {
        Map<String, String> values = new TreeMap<>(gaps);
        values.replaceAll((name, value) -> value.replace('*', KEPT_STAR));
        String escaped = HTMLOutputFormat.INSTANCE.escapePlainText(wording.fill(key, values));
        String strong =
                escaped.replaceAll("\\*([^*]+)\\*", "<strong>$1</strong>").replace(KEPT_STAR, '*');
        return HTMLOutputFormat.INSTANCE.fromMarkup(wording.foreign(key)
                .map(language -> "<span lang=\"" + language + "\" xml:lang=\"" + language + "\">" + strong + "</span>")
                .orElse(strong));
    }

    private static List<String> names(List<?> arguments) throws TemplateModelException {
        List<String> names = new ArrayList<>();
        if (!arguments.isEmpty() && arguments.get(0) instanceof TemplateSequenceModel list) {
            for (int index = 0; index < list.size(); index++) {
                names.add(((TemplateScalarModel) list.get(index)).getAsString());
            }
        }
        return names;
    }

    private static String key(List<?> arguments) throws TemplateModelException {
        if (!arguments.isEmpty() && arguments.get(0) instanceof TemplateScalarModel key) {
            return key.getAsString();
        }
        throw new TemplateModelException("the first argument is the key of a text");
    }

    private static Map<String, String> gaps(List<?> arguments) throws TemplateModelException {
        Map<String, String> gaps = new TreeMap<>();
        if (arguments.size() > 1 && arguments.get(1) instanceof TemplateHashModelEx values) {
            for (TemplateModelIterator names = values.keys().iterator(); names.hasNext(); ) {
                String name = ((TemplateScalarModel) names.next()).getAsString();
                if (!(values.get(name) instanceof TemplateScalarModel value)) {
                    throw new TemplateModelException("the gap {" + name + "} takes a text");
                }
                gaps.put(name, value.getAsString());
            }
        }
        return gaps;
    }
}
