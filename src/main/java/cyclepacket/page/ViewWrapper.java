package cyclepacket.page;

import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Shows templates the components of this package's records and nothing else; an empty Optional reads as missing. The
 * library's own way looks four times on the class path for companions of each record that nobody wrote.
 */
final class ViewWrapper extends DefaultObjectWrapper {
    private static final ClassValue<Map<String, Method>> COMPONENTS = new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
            Map<String, Method> components = new HashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                component.getAccessor().setAccessible(true);
                components.put(component.getName(), component.getAccessor());
            }
            return components;
        }
    };

    ViewWrapper() {
        super(Configuration.VERSION_2_3_35);
    }

    @Override
    protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? wrap(optional.get()) : null;
        }
        if (value instanceof Record view && view.getClass().getPackage() == ViewWrapper.class.getPackage()) {
            return new Components(view);
        }
        throw new TemplateModelException("a template may not see a " + value.getClass());
    }

    /** One record. */
    private final class Components implements TemplateHashModel {
        private final Record view;
        private final Map<String, Method> components;

        Components(Record view) {
            this.view = view;
            this.components = COMPONENTS.get(view.getClass());
        }

        @Override
        public TemplateModel get(String name) throws TemplateModelException {
            Method component = components.get(name);
            try {
                return component == null ? null : wrap(component.invoke(view));
            } catch (IllegalAccessException | InvocationTargetException unreadable) {
                throw new TemplateModelException("the component " + name + " cannot be read", unreadable);
            }
        }

        @Override
        public boolean isEmpty() {
            return components.isEmpty();
        }
    }
}
