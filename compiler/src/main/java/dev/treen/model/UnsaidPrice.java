package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.List;

/** A sum of money of which nobody said for how much of a thing it is: only who paid knows, so each way is offered. */
final class UnsaidPrice {
    /**
     * By what a thing is sold.
     *
     * @param word how the language writes it
     * @param phrase how a sentence says it
     */
    record Way(String word, String phrase) {}

    private UnsaidPrice() {
    }

    /**
     * That a price is no one sum for so much of a thing, as {@code example} is.
     *
     * @param said whether it says for how much of it, and then more than once
     */
    static Finding finding(Statement.Property price, boolean said, String example, List<Way> ways) {
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND,
                price.name().span(),
                said ? "This `price` says more than one sum" : "This `price` does not say for how much of it")
                .found("Write one, as `" + example + "`.");
        remedies(price, ways).forEach(finding::remedy);
        return finding.build();
    }

    /** What may have been meant by {@code price}; nothing where it holds no sum of its own. */
    private static List<Remedy> remedies(Statement.Property price, List<Way> ways) {
        if (price.values().size() != 1 || price.body().isPresent()) {
            return List.of();
        }
        Value value = price.values().getFirst();
        String sum = value.expr().span().text();
        List<String> said = value.tails().stream().map(tail -> tail.word().text()).toList();
        return ways.stream()
                .filter(way -> said.isEmpty() || said.equals(List.of(way.word())))
                .map(way -> {
                    String written = price.name().text() + " { " + way.word() + " " + sum + " }";
                    return Remedy
                            .choice("say that it is " + (way.word().equals("each") ? "for each" : "for " + way.phrase())
                                    + ": `" + written + "`", new Edit(price.span(), written));
                })
                .toList();
    }
}
