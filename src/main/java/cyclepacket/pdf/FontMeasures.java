package cyclepacket.pdf;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;

/** The heights of each font, measured once and kept for later documents. */
final class FontMeasures implements FSCacheEx<String, FSCacheValue> {
    private final Map<String, FSCacheValue> kept = new ConcurrentHashMap<>();

    @Override
    public void put(String key, FSCacheValue value) {
        kept.put(key, value);
    }

    @Override
    public FSCacheValue get(String key) {
        return kept.get(key);
    }

    @Override
    public FSCacheValue get(String key, Callable<? extends FSCacheValue> loader) {
        FSCacheValue known = kept.get(key);
        if (known != null) {
            return known;
        }
        FSCacheValue made = call(loader);
        kept.put(key, made);
        return made;
    }

    private static FSCacheValue call(Callable<? extends FSCacheValue> loader) {
        try {
            return loader.call();
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("a font cannot be measured", e);
        }
    }
}
