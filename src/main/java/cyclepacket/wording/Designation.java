package cyclepacket.wording;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * A way to write an amount or a time that is known to be misread.
 *
 * @param isOnDoNotUseList whether the Joint Commission's "Do Not Use" list has it, so that no paper may show it; the
 *     others come from the ISMP list and are stopped in patients' texts
 * @param instead what to write
 */
public record Designation(String key, Pattern bad, boolean isOnDoNotUseList, String instead) {
    public Designation {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(bad, "bad");
        Objects.requireNonNull(instead, "instead");
    }
}
