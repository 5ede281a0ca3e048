package dev.treen.cli;

import dev.treen.finding.FindingKind;
import dev.treen.finding.FindingPage;
import dev.treen.plan.Compilation;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** All kinds of finding that Treen has, with their pages: what {@code treen explain} and {@code FINDINGS.md} show. */
final class FindingCatalogue {
    private FindingCatalogue() {
    }

    /** Every kind, by code. */
    static List<FindingKind> kinds() {
        return Stream.concat(Compilation.kinds().stream(), CommandFindings.all().stream())
                .sorted(Comparator.comparing(FindingKind::code))
                .toList();
    }

    /** The page of a kind, which has one: a test looks. */
    static FindingPage page(FindingKind kind) {
        return FindingPage.of(kind)
                .orElseThrow(() -> new IllegalStateException(
                        "the finding " + kind.code() + " has no page: add " + FindingPage.file(kind)));
    }

    /** The catalogue as one document. */
    static String markdown() {
        StringBuilder out = new StringBuilder("""
                # The findings of Treen

                All that Treen may say of a project, by its code. `treen explain CODE` prints one page of this list. The examples
                are invented and are compiled by the tests: the first gives the finding and no other, the second gives none.
                This file is made from the pages beside the code; `-Dtreen.update=true` makes it anew.

                | code | how bad | what it is about |
                | --- | --- | --- |
                """);
        for (FindingKind kind : kinds()) {
            out.append(
                    String.format(Locale.ROOT, "| [`%1$s`](#%1$s) | %2$s | %3$s |%n".replace("%n", "\n"), kind.code(),
                            kind.severity().word(), kind.title()));
        }
        kinds().forEach(kind -> out.append('\n').append(page(kind).markdown()));
        return out.toString();
    }
}
