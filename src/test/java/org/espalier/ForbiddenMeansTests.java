package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Means that the page on security says this program does without: a file that takes one up is named here with its
 * reason.
 */
class ForbiddenMeansTests {

    private static final Pattern SENT_CALL = Pattern.compile("executeJs\\((?!\"[^\"]*\"\\))");

    private static List<Path> sources() {
        try (var house = Files.walk(Path.of("src/main/java"));
                var page = Files.walk(Path.of("frontend"));
                var assets = Files.walk(Path.of("src/main/resources/META-INF/resources"))) {
            return Stream.of(house, page, assets)
                    .flatMap(files -> files)
                    .filter(file -> file.toString().matches("(?!.*(node_modules|generated)).*[.](java|ts|js)"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> filesWith(Pattern means) {
        return sources().stream()
                .filter(file -> means.matcher(text(file)).find())
                .map(file -> file.getFileName().toString())
                .collect(Collectors.toSet());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "commands of the operating system ; ProcessBuilder[(]|getRuntime[(][)][.]exec ; LeftoverServer.java",
                "objects from bytes ; ObjectInputStream|readObject[(] ;",
                "directories and names ; javax[.]naming|InitialContext|LdapTemplate ;",
                "paths in XML ; javax[.]xml[.]xpath ;",
                "expressions as text ; ScriptEngine|SpelExpressionParser|MVEL|GroovyShell ;",
                "markup or script from text ; innerHTML|outerHTML|insertAdjacentHTML|document[.]write|unsafeHTML ;",
                "evaluating ; [^.\\w]eval[(]|new Function[(] ;",
                "messages between windows ; postMessage[(]|addEventListener[(]'message' ;",
                "calls between browsers ; RTCPeerConnection ;",
                "answers for other origins ; @CrossOrigin|Access-Control-Allow ;",
                "certificates of anybody ; TrustManager|HostnameVerifier|setHostnameVerifier|trustAll ;",
                "old hashes ; \"MD5\"|\"SHA-1\"|\"SHA1\" ;",
                "other ciphers ; \"AES/CBC|\"AES/ECB|\"DES|\"RC4 ;",
                "SQL put together from a value ; [.]sql[(][^)\"]*\" ?[+] ?(value|typed|text|query|search)[.\\w]*[)] ;",
                "a store of the browser ; localStorage|sessionStorage|indexedDB ; keeping.ts",
            })
    void areNotTakenUp(String means, String words, String allowed) {
        var files = allowed == null ? Set.of() : Set.of(allowed);
        assertThat(filesWith(Pattern.compile(words))).as(means).isEqualTo(files);
    }

    /** Whatever could be guessed is never drawn from a predictable source. */
    @Test
    void chanceOfSecretsIsTheSecureOneAlone() {
        assertThat(filesWith(Pattern.compile("java[.]util[.]Random|ThreadLocalRandom|Math[.]random")))
                .isSubsetOf("DemoReader.java");
        assertThat(filesWith(Pattern.compile("SecureRandom")))
                .contains("SecretBox.java", "FirstPassword.java", "SiteTokenSecret.java", "ContentPolicy.java");
    }

    /** What the server has the page do is a text that was written, never one that was put together. */
    @Test
    void callsSentToThePageAreWrittenOut() {
        assertThat(sources().stream().filter(file -> text(file).contains("executeJs(")))
                .isNotEmpty();
        assertThat(filesWith(SENT_CALL)).isEmpty();
        assertThat(SENT_CALL.matcher("executeJs(\"go(\" + where + \")\")").find())
                .isTrue();
    }
}
