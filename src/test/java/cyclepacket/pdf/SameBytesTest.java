package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class SameBytesTest {
    @Test
    void sameBytesInAnyZoneAndLocale() throws IOException {
        byte[] first = make(Typesetter.open(Samples.TEMPLATES));
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, make(Typesetter.open(Samples.TEMPLATES.toAbsolutePath())));
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertArrayEquals(first, make(Typesetter.open(Samples.TEMPLATES)));
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }

    @Test
    void sameBytesFromSeveralThreadsAndAfterOtherPages() throws IOException, InterruptedException, ExecutionException {
        Typesetter typesetter = Typesetter.open(Samples.TEMPLATES);
        byte[] first = make(typesetter);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<byte[]>> results = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                String other = "<h1>Other " + i + " \u2610 \u03AE</h1>";
                results.add(threads.submit(() -> {
                    typesetter.typeset(Samples.page(other));
                    return make(typesetter);
                }));
            }
            for (Future<byte[]> result : results) {
                assertArrayEquals(first, result.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void otherBytesForAnotherIdentifier() throws IOException {
        Typesetter typesetter = Typesetter.open(Samples.TEMPLATES);
        DocumentFacts facts = Samples.facts();
        Sheet other = new Sheet(
                Samples.withAttachments().xhtml(),
                new DocumentFacts(facts.title(), facts.subject(), facts.language(), facts.dated(), "OTHER"),
                Samples.withAttachments().attachments());
        assertFalse(Arrays.equals(
                make(typesetter), typesetter.typeset(other).value().orElseThrow()));
    }

    private static byte[] make(Typesetter typesetter) {
        return typesetter.typeset(Samples.withAttachments()).value().orElseThrow();
    }
}
