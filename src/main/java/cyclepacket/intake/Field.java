package cyclepacket.intake;

import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** One value of a file as the builders of the records see it: with its pointer, present or not. */
record Field(Sheet sheet, String pointer, Optional<Tree> tree) {

    Field at(String key) {
        Optional<Tree> child = tree.filter(Tree.Mapping.class::isInstance)
                .map(t -> ((Tree.Mapping) t).entries().get(key))
                .map(Tree.Entry::value);
        return new Field(sheet, Pointers.child(pointer, key), child);
    }

    /** Whether something about this very value has been reported. */
    boolean isRefused() {
        return sheet.hasRefused(pointer);
    }

    boolean isWritten() {
        return tree.isPresent();
    }

    List<Field> items() {
        List<Field> items = new ArrayList<>();
        if (tree.isPresent() && tree.get() instanceof Tree.Sequence sequence) {
            for (Tree item : sequence.items()) {
                items.add(new Field(sheet, pointer + "/" + items.size(), Optional.of(item)));
            }
        }
        return items;
    }

    /** The values of a group of keys, in the order of the file. */
    Map<String, Field> entries() {
        Map<String, Field> entries = new LinkedHashMap<>();
        if (tree.isPresent() && tree.get() instanceof Tree.Mapping mapping) {
            mapping.entries().keySet().forEach(key -> entries.put(key, at(key)));
        }
        return entries;
    }

    boolean isText() {
        return scalar(Tree.Kind.TEXT).isPresent();
    }

    Part<String> text() {
        return new Part<>(scalar(Tree.Kind.TEXT).map(Tree.Scalar::written));
    }

    Part<BigDecimal> number() {
        return new Part<>(scalar(Tree.Kind.NUMBER).map(Tree.Scalar::number));
    }

    Part<Integer> count() {
        return new Part<>(number().value().map(BigDecimal::intValueExact));
    }

    Part<Boolean> truth() {
        return new Part<>(scalar(Tree.Kind.TRUTH).map(scalar -> scalar.written().equals("true")));
    }

    /** A constant whose name is written in small letters with hyphens. */
    <E extends Enum<E>> Part<E> word(Class<E> constants) {
        return new Part<>(text().value()
                .map(w -> Enum.valueOf(constants, w.toUpperCase(Locale.ROOT).replace('-', '_'))));
    }

    /** Text turned into a value; a refusal becomes a finding here. */
    <T> Part<T> parsed(String code, Function<String, T> parse) {
        return attempt(code, text(), parse);
    }

    <S, T> Part<T> attempt(String code, Part<S> part, Function<S, T> parse) {
        try {
            return new Part<>(part.value().map(parse));
        } catch (Refusal refusal) {
            stop(code, refusal.getMessage(), refusal.mend());
            return Part.absent();
        }
    }

    /** An optional key: nothing when it is not written. */
    <T> Part<Optional<T>> ifWritten(Function<Field, Part<T>> read) {
        return isWritten() ? new Part<>(read.apply(this).value().map(Optional::of)) : Part.of(Optional.empty());
    }

    /** All lines of a list, each read even when one before it is broken. */
    <T> Part<List<T>> each(Function<Field, Part<T>> read) {
        if (isRefused()) {
            return Part.absent();
        }
        List<Part<T>> parts = items().stream().map(read).toList();
        return parts.stream().allMatch(Part::isPresent)
                ? Part.of(parts.stream().map(Part::get).toList())
                : Part.absent();
    }

    /** A list of exactly two. */
    <T> Part<List<T>> pair(Function<Field, Part<T>> read) {
        Part<List<T>> both = each(read);
        return items().size() == 2 ? both : Part.absent();
    }

    /** All values of a group, each read even when one before it is broken. */
    <T> Part<Map<String, T>> byName(Function<Field, Part<T>> read) {
        Map<String, T> values = new LinkedHashMap<>();
        boolean complete = true;
        for (Map.Entry<String, Field> entry : entries().entrySet()) {
            Part<T> part = read.apply(entry.getValue());
            part.value().ifPresent(value -> values.put(entry.getKey(), value));
            complete &= part.isPresent();
        }
        return complete ? Part.of(values) : Part.absent();
    }

    void stop(String code, String text, String mend) {
        sheet.stop(code, sheet.place(pointer), text, mend);
    }

    void stopAtKey(String code, String text, String mend) {
        sheet.stop(code, sheet.placeOfKey(pointer), text, mend);
    }

    private Optional<Tree.Scalar> scalar(Tree.Kind kind) {
        if (isRefused()) {
            return Optional.empty();
        }
        return tree.filter(Tree.Scalar.class::isInstance)
                .map(Tree.Scalar.class::cast)
                .filter(s -> s.kind() == kind);
    }
}
