package dev.treen.house;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.house.Repository.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What no file of the project may hold. */
class HygieneTest {

    /** Written by others and taken as they are. */
    private static final Set<String> NOT_OURS = Set.of("LICENSE", "mvnw", "mvnw.cmd");

    private static List<Text> texts = List.of();

    @BeforeAll
    static void read() throws Exception {
        texts = Repository.texts();
        assertThat(texts).extracting(Text::path).contains("pom.xml", "README.md");
    }

    @Test
    void noTestIsSwitchedOff() {
        assertThat(places(each -> each.path().endsWith(".java"), "@(Disabled|Ignore)\\b")).isEmpty();
    }

    @Test
    void noLineEndsInBlanks() {
        // A tree dump shows text of several lines as it is, blanks and all.
        assertThat(places(each -> ours(each) && !each.path().endsWith(".tree"), "[ \\t]+$")).isEmpty();
    }

    @Test
    void everyFileEndsWithALineEnd() {
        assertThat(texts.stream().filter(HygieneTest::ours)
                .filter(each -> !each.content().isEmpty() && !each.content().endsWith("\n"))
                .map(Text::path)).isEmpty();
    }

    @Test
    void onlyWindowsScriptsHaveWindowsLineEnds() {
        assertThat(texts.stream().filter(each -> each.content().contains("\r") && !each.path().endsWith(".cmd"))
                .map(Text::path)).isEmpty();
    }

    /** The project is built anywhere, so no file may know the machine that it was written on. */
    @Test
    void noFileKnowsTheMachineItWasWrittenOn() {
        assertThat(places(each -> true, "(?<![\\w.}])/(work|root|home/\\w+|Users/\\w+)/")).isEmpty();
    }

    /** Where packages come from is for each tool's own settings to say; the wrapper's file is the one exception. */
    @Test
    void noFileNamesAPackageRegistry() {
        assertThat(places(each -> !each.path().equals(".mvn/wrapper/maven-wrapper.properties"),
                "//(registry|repo\\d?|deb|security|mirrors?|packages|artifacts|proxy|plugins|pypi|static)\\."))
                .isEmpty();
    }

    private static boolean ours(Text text) {
        return !NOT_OURS.contains(text.path());
    }

    private static List<String> places(Predicate<Text> where, String regex) {
        Predicate<String> bad = Pattern.compile(regex).asPredicate();
        List<String> places = new ArrayList<>();
        for (Text text : texts) {
            if (where.test(text)) {
                int line = 0;
                for (String each : text.lines().toList()) {
                    line++;
                    if (bad.test(each)) {
                        places.add(text.path() + ":" + line + ": " + each.strip());
                    }
                }
            }
        }
        return places;
    }
}
