package cyclepacket.page;

import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.DefaultObjectWrapperConfiguration;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Optional;

/** Shows templates the components of this package's records and nothing else; an empty Optional reads as missing. */
final class ViewWrapper extends DefaultObjectWrapper {
    ViewWrapper() {
        super(new Settings(), true);
    }

    @Override
    protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? wrap(optional.get()) : null;
        }
        if (value instanceof Record && isView(value.getClass())) {
            return super.handleUnknownType(value);
        }
        throw new TemplateModelException("a template may not see a " + value.getClass());
    }

    private static boolean isView(Class<?> type) {
        return type.isRecord() && type.getPackage() == ViewWrapper.class.getPackage();
    }

    private static final class Settings extends DefaultObjectWrapperConfiguration {
        Settings() {
            super(Configuration.VERSION_2_3_35);
            setMemberAccessPolicy(new ComponentsOnly());
            setExposeFields(false);
        }
    }

    private static final class ComponentsOnly implements MemberAccessPolicy {
        @Override
        public ClassMemberAccessPolicy forClass(Class<?> type) {
            return new ClassMemberAccessPolicy() {
                @Override
                public boolean isMethodExposed(Method method) {
                    return isView(type) && method.getParameterCount() == 0 && isComponent(type, method.getName());
                }

                @Override
                public boolean isConstructorExposed(Constructor<?> constructor) {
                    return false;
                }

                @Override
                public boolean isFieldExposed(Field field) {
                    return false;
                }
            };
        }

        @Override
        public boolean isToStringAlwaysExposed() {
            return false;
        }

        private static boolean isComponent(Class<?> type, String name) {
            for (var component : type.getRecordComponents()) {
                if (component.getName().equals(name)) {
                    return true;
                }
            }
            return false;
        }
    }
}
