package cyclepacket.intake;

import com.networknt.schema.ExecutionContext;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaContext;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.keyword.BaseKeywordValidator;
import com.networknt.schema.keyword.Keyword;
import com.networknt.schema.keyword.KeywordValidator;
import com.networknt.schema.path.NodePath;
import java.util.HashSet;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/**
 * The {@code enum} keyword of JSON Schema for words. The library's own one builds its message when the schema is loaded,
 * and so starts the whole JSON writer at every cold start; we never use that message.
 */
final class EnumKeyword implements Keyword {
    @Override
    public String getValue() {
        return "enum";
    }

    @Override
    public KeywordValidator newValidator(
            SchemaLocation location, JsonNode words, Schema parent, SchemaContext context) {
        return new OneOfWords(this, words, location, parent, context);
    }

    private static final class OneOfWords extends BaseKeywordValidator {
        private final Set<JsonNode> words = new HashSet<>();

        private OneOfWords(
                Keyword keyword, JsonNode words, SchemaLocation location, Schema parent, SchemaContext context) {
            super(keyword, words, location, parent, context);
            words.forEach(this.words::add);
        }

        @Override
        public void validate(ExecutionContext context, JsonNode node, JsonNode root, NodePath where) {
            if (!words.contains(node)) {
                context.addError(error().instanceNode(node)
                        .instanceLocation(where)
                        .evaluationPath(context.getEvaluationPath())
                        .locale(context.getExecutionConfig().getLocale())
                        .build());
            }
        }
    }
}
